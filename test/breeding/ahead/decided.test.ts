import { describe, expect, test } from 'vitest'
import { asUndecided, decidedOf, isOut } from '../../../source/breeding/ahead/decided.ts'
import { lastChances, timeLeft } from '../../../source/breeding/ahead/last-chances.ts'
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay } from '../../../source/breeding/day.ts'
import type { Fact } from '../../../source/breeding/facts.ts'
import { cohortOf } from '../../../source/breeding/figures/cohort.ts'
import { standingOn } from '../../../source/breeding/standing.ts'

let made = 0
const fact = (about: string, kind: string, date: string, more: object = {}): Fact => {
  made += 1
  return { id: `x${made}`, about, kind, date, at: '2026-01-01T00:00:00.000Z', ...more } as unknown as Fact
}
const cow = (number: string, calved: string, ...more: readonly Fact[]): Fact[] => [
  fact(number, 'animal', '2026-01-01', {
    number,
    sex: 'F',
    born: '2020-03-01',
    block: 'spring',
    lactation: 3,
  }),
  fact(number, 'calving', calved),
  ...more,
]
const seasons = [
  fact('herd', 'season', '2026-01-01', {
    block: 'spring',
    matingStart: '2026-05-01',
    aiWeeks: 6,
    bullWeeks: 3,
  }),
  fact('herd', 'season', '2026-01-01', {
    block: 'autumn',
    matingStart: '2026-11-20',
    aiWeeks: 6,
    bullWeeks: 3,
  }),
]

function on(day: string, facts: readonly Fact[]) {
  const book = openBook([...seasons, ...facts])
  const today = isoDay(day)
  const season = book.seasons.get('spring')?.[0]
  if (season === undefined) throw new Error('no season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, today))
  const members = cohortOf(book, season, standings, today)
  return { book, season, today, standings, chances: lastChances(book, standings, members, season, today) }
}
const decided = (day: string, ...facts: readonly Fact[]) => {
  const { book, season, today } = on(day, cow('1', '2026-04-20', ...facts))
  const animal = book.animals.get('1')
  return animal && decidedOf(animal, season, today)?.fact.kind
}

describe('what was decided', () => {
  test.each([
    ['nothing', [], undefined],
    ['a bar', [fact('1', 'bar', '2026-05-08')], 'bar'],
    ['a bar that was lifted', [fact('1', 'bar', '2026-05-06'), fact('1', 'unbar', '2026-05-08')], undefined],
    ['another block', [fact('1', 'block', '2026-05-08', { block: 'autumn' })], 'block'],
    [
      'another block, and back',
      [
        fact('1', 'block', '2026-05-06', { block: 'autumn' }),
        fact('1', 'block', '2026-05-08', { block: 'spring' }),
      ],
      undefined,
    ],
    ['left to the bull', [fact('1', 'to-bull', '2026-05-08')], 'to-bull'],
    ['the last of two', [fact('1', 'to-bull', '2026-05-06'), fact('1', 'left', '2026-05-08')], 'left'],
    ['of today', [fact('1', 'bar', '2026-05-10')], 'bar'],
    ['not of tomorrow', [fact('1', 'bar', '2026-05-11')], undefined],
    ['from season day -35 on', [fact('1', 'bar', '2026-03-27')], 'bar'],
    ['not of the day before', [fact('1', 'bar', '2026-03-26')], undefined],
  ] as const)('%s', (_, facts, kind) => expect(decided('2026-05-10', ...facts)).toBe(kind))

  test('that she was left to the bull counts to his last day', () => {
    const toBull = fact('1', 'to-bull', '2026-05-08')
    expect(decided('2026-07-02', toBull)).toBe('to-bull')
    expect(decided('2026-07-03', toBull)).toBeUndefined()
  })
})

describe('the list of late calvers and empties', () => {
  const late = (...more: readonly Fact[]) => cow('1', '2026-04-20', ...more)
  test('who was decided about stays on it with the decision, the day after too', () => {
    for (const kind of ['bar', 'block', 'left', 'to-bull']) {
      const { chances } = on('2026-05-11', late(fact('1', kind, '2026-05-10', { block: 'autumn' })))
      expect(chances.map((one) => [one.standing.animal.number, one.reason, one.decided?.fact.kind])).toEqual([
        ['1', 'calved-late', kind],
      ])
    }
  })

  test('an animal of another block does not come onto it by leaving that block', () => {
    const { book, season, today, standings } = on('2026-05-11', [
      fact('2', 'animal', '2026-01-01', {
        number: '2',
        sex: 'F',
        born: '2020-03-01',
        block: 'autumn',
        lactation: 3,
      }),
      fact('2', 'calving', '2026-04-20'),
      fact('2', 'block', '2026-05-10', { block: 'winter' }),
    ])
    const [standing] = standings
    const one = standing && decidedOf(standing.animal, season, today)
    expect(isOut(one)).toBe(true)
    expect(standing && asUndecided(standing, one, book, season)).toBe(standing)
  })

  test('nothing changes for one that was left to the bull, or of whom nothing was decided', () => {
    for (const more of [[], [fact('1', 'to-bull', '2026-05-10')]]) {
      const { book, season, today, standings } = on('2026-05-11', late(...more))
      const [standing] = standings
      const one = standing && decidedOf(standing.animal, season, today)
      expect(isOut(one)).toBe(false)
      expect(standing && asUndecided(standing, one, book, season)).toBe(standing)
    }
  })

  test('who came into the block the day before she was barred is asked about', () => {
    const came = [
      fact('1', 'block', '2026-04-25', { block: 'autumn' }),
      fact('1', 'block', '2026-05-09', { block: 'spring' }),
      fact('1', 'bar', '2026-05-10'),
    ]
    expect(on('2026-05-11', late(...came)).chances.map((one) => one.decided?.fact.kind)).toEqual(['bar'])
  })

  test('found empty at the final check: the other block is named, and what was decided stands with her', () => {
    const empty = cow(
      '3',
      '2026-02-20',
      fact('3', 'service', '2026-05-05', { sire: 'S1', straw: 'conventional' }),
      fact('3', 'check', '2026-08-20', { method: 'ultrasound', result: 'empty' }),
    )
    const [one] = on('2026-08-21', empty).chances
    expect(one).toMatchObject({ reason: 'empty', becomes: 'other-block', otherBlock: { block: 'autumn' } })
    const [gone] = on('2026-08-22', [...empty, fact('3', 'bar', '2026-08-21')]).chances
    expect(gone).toMatchObject({ reason: 'empty', decided: { fact: { kind: 'bar' } } })
  })
})

test.each([
  ['2026-07-02', {}, [undefined, '2026-07-02']],
  ['2026-05-20', {}, ['2026-06-11', '2026-07-02']],
  ['2026-06-11', {}, ['2026-06-11', '2026-07-02']],
  ['2026-06-12', {}, [undefined, '2026-07-02']],
  ['2026-07-03', {}, [undefined, undefined]],
  ['2026-05-20', { chancesUsed: 2 }, [undefined, '2026-07-02']],
  ['2026-05-20', { leftToBull: true }, [undefined, '2026-07-02']],
] as const)('until when she can be served, on %s %o', (day, more, [lastAi, last]) => {
  const { standings, season } = on(day, cow('1', '2026-03-01'))
  const [standing] = standings
  if (standing === undefined) throw new Error('no cow')
  const withoutBull = { ...season, bullEnd: season.aiEnd }
  expect(timeLeft({ ...standing, ...more }, withoutBull, 2)).toEqual({
    lastAi: lastAi && isoDay(lastAi),
    last: lastAi && isoDay(lastAi),
  })
  expect(timeLeft({ ...standing, ...more }, season, 2)).toEqual({
    lastAi: lastAi && isoDay(lastAi),
    last: last && isoDay(last),
  })
})
