import { describe, expect, test } from 'vitest'
import { blocksOn } from '../../source/breeding/blocks.ts'
import { dayIso } from '../../source/breeding/day.ts'
import { SIX_WEEKS } from '../../source/breeding/season.ts'
import {
  block,
  bookOf,
  calving,
  cow,
  dayAt,
  type Herd,
  heat,
  listAt,
  maiden,
  on,
  placed,
  service,
  standingAt,
  table,
} from './support.ts'

const phaseAt = (s: number, herd: Herd): string => {
  const shown = blocksOn(bookOf([], herd), dayAt(s))[0]
  return `${shown?.phase} ${shown?.closes === undefined ? '-' : shown.closes - dayAt(0)}`
}

describe('phases and the last day of each', () => {
  test.each([
    ['6+3 weeks', 6, 3, 41, 62],
    ['5+4 weeks', 5, 4, 34, 62],
    ['9+0 weeks', 9, 0, 62, 62],
    ['12+0 weeks', 12, 0, 83, 83],
    ['1+20 weeks', 1, 20, 6, 146],
    ['20+0 weeks', 20, 0, 139, 139],
  ])('%s', (_, aiWeeks, bullWeeks, a, b) => {
    const at = (s: number): string => phaseAt(s, { aiWeeks, bullWeeks })
    expect([-36, -35, -28, -14, -1].map(at)).toEqual([
      'closed -',
      'before -1',
      'before -1',
      'before -1',
      'before -1',
    ])
    expect([at(0), at(a)]).toEqual([`ai ${a}`, `ai ${a}`])
    expect(at(a + 1)).toBe(bullWeeks === 0 ? `closing ${b + 84}` : `bull ${b}`)
    if (bullWeeks > 0) expect(at(b)).toBe(`bull ${b}`)
    expect([b + 1, b + 42, b + 84].map(at)).toEqual(Array(3).fill(`closing ${b + 84}`))
    expect(at(b + 85)).toBe('closed -')
  })
})

test('six weeks are the season days 0 to 41', () => {
  expect(SIX_WEEKS + 1).toBe(6 * 7)
})

describe('the season of a block: the last whose s -35 has come, else the first to come', () => {
  const seasons = [{}, { matingStart: on(365) }]
  const seasonAt = (s: number): string | undefined => {
    const season = standingAt(s, cow(), { seasons }).season
    return season === undefined ? undefined : dayIso(season.matingStart)
  }
  test.each([
    [-400, on(0)],
    [-36, on(0)],
    [0, on(0)],
    [329, on(0)],
    [330, on(365)],
    [900, on(365)],
  ])('s %i', (s, expected) => {
    expect(seasonAt(s)).toBe(expected)
  })

  test('of two with the same block and mating start the latest counts', () => {
    expect(phaseAt(40, { seasons: [{ aiWeeks: 6 }, { aiWeeks: 5 }] })).toBe('bull 55')
  })
})

describe('blocks in the order of their mating start, each with the season live, else next, else last', () => {
  const seasons = [
    { block: 'spring' },
    { block: 'spring', matingStart: on(365) },
    { block: 'autumn', matingStart: on(200) },
  ]
  const shown = (s: number) =>
    blocksOn(bookOf([], { seasons }), dayAt(s)).map((one) => `${one.block} ${one.phase} ${one.day}`)
  test.each([
    [-50, ['spring closed -50', 'autumn closed -250']],
    [10, ['spring ai 10', 'autumn closed -190']],
    [146, ['spring closing 146', 'autumn closed -54']],
    [147, ['autumn closed -53', 'spring closed -218']],
    [330, ['autumn closing 130', 'spring before -35']],
    [700, ['autumn closed 500', 'spring closed 335']],
  ])('s %i', (s, expected) => {
    expect(shown(s)).toEqual(expected)
  })

  test('two live at once', () => {
    const both = [{ block: 'spring' }, { block: 'autumn', matingStart: on(30) }]
    const rows = listAt(
      40,
      [
        cow({ number: '1', block: 'autumn' }, calving(-60), heat(40)),
        cow({ number: '2', block: 'spring' }, calving(-60), heat(40)),
        cow({ number: '3', block: 'spring' }, calving(-60), service(19)),
        cow({ number: '4', block: 'autumn' }, calving(-60), service(19)),
      ],
      { seasons: both },
    ).rows
    expect(rows.map((row) => `${row.number} ${row.section} ${row.block}`)).toEqual([
      '2 serve spring',
      '1 serve autumn',
      '3 repeat-heat-watch spring',
      '4 repeat-heat-watch autumn',
    ])
  })
})

describe('block of an animal', () => {
  const seasons = [{ block: 'spring' }, { block: 'autumn', matingStart: on(200) }]
  const blockAt = (s: number, one: ReturnType<typeof cow>): string | undefined =>
    standingAt(s, one, { seasons }).block
  const unstated = { block: undefined }
  test.each([
    ['stated', cow({ block: 'autumn' }, calving(-60)), 0, 'autumn'],
    ['changed', cow({ block: 'autumn' }, block(-5, 'spring')), 0, 'spring'],
    ['changed today', cow({ block: 'autumn' }, block(0, 'spring')), 0, 'spring'],
    ['to be changed tomorrow', cow({ block: 'autumn' }, block(1, 'spring')), 0, 'autumn'],
    ['changed twice', cow({ block: 'autumn' }, block(-5, 'spring'), block(-4, 'autumn')), 0, 'autumn'],
    // Day B of the spring season is s 62, of the autumn season s 262.
    ['calved 42 days before B', cow(unstated, calving(20)), 30, 'spring'],
    ['calved 41 days before B', cow(unstated, calving(21)), 30, 'autumn'],
    ['calved long ago: the first in the file', cow(unstated, calving(-500)), 30, 'spring'],
    ['calved again', cow(unstated, calving(-200), calving(100)), 150, 'autumn'],
    ['calved after every season', cow(unstated, calving(221)), 250, undefined],
    ['no calving date', cow(unstated), 30, undefined],
    ['a maiden’s is stated', maiden(unstated), 30, undefined],
  ])('%s', (_, one, s, expected) => {
    expect(blockAt(s, one)).toBe(expected)
  })
})

describe('who moves between blocks takes facts and chances along', () => {
  const seasons = [{ block: 'spring' }, { block: 'autumn', matingStart: on(30) }]
  table([
    // Chances count from s -35 of the season that she stands in now.
    [
      'served on autumn’s s -30',
      cow(calving(-60), service(0), heat(35), block(34, 'autumn')),
      35,
      'second-service: on-heat (late-return)',
      { seasons },
    ],
    [
      'served on autumn’s s -36',
      cow(calving(-60), service(-6), heat(35), block(34, 'autumn')),
      35,
      'serve: on-heat (late-return)',
      { seasons },
    ],
  ])
  test('never two seasons at once', () => {
    expect(placed(cow(calving(-60), heat(35), block(35, 'autumn')), 35, { seasons })).toBe('serve: on-heat')
  })
})
