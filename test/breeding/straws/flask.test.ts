import { describe, expect, test } from 'vitest'
import { dayIso } from '../../../source/breeding/day.ts'
import { nitrogenLevels, nitrogenState } from '../../../source/breeding/straws/nitrogen.ts'
import { stockOn } from '../../../source/breeding/straws/stock.ts'
import { supplyOf } from '../../../source/breeding/straws/supply.ts'
import { thawingCard } from '../../../source/breeding/straws/thawing.ts'
import { cow, type Draft, dayOn, delivery, farm, herd, nitrogen, policy, service } from './herd.ts'

describe('nitrogen', () => {
  const levels = (s: number, ...drafts: Draft[]) => nitrogenLevels(herd(farm(), drafts), dayOn(s))
  const standard = { nitrogenOrder: 25, nitrogenAlarm: 15 }

  test.each([
    [25.5, 'enough'],
    [25, 'order'],
    [15.5, 'order'],
    [15, 'alarm'],
    [0, 'alarm'],
  ])('%d cm: %s', (depth, state) => expect(nitrogenState(depth, standard)).toBe(state))

  test('the farm sets its own levels', () => {
    const [level] = levels(0, policy({ nitrogenOrder: 30, nitrogenAlarm: 20 }), nitrogen(0, 28))
    expect(level?.state).toBe('order')
  })

  test('no reading, no flask; a reading of tomorrow is not known', () => {
    expect(levels(0)).toEqual([])
    expect(levels(0, nitrogen(1, 30))).toEqual([])
  })

  test('each flask has its own log, the latest reading counts whatever the order of the file', () => {
    const logs = levels(
      9,
      nitrogen(7, 31, { flask: 'B' }),
      nitrogen(7, 20, { flask: 'A' }),
      nitrogen(0, 24, { flask: 'A' }),
    )
    expect(logs.map(({ flask, latest, state }) => [flask, latest.depthCm, state])).toEqual([
      ['A', 20, 'order'],
      ['B', 31, 'enough'],
    ])
  })

  test('flasks stand in the order of their names, one without a name first', () => {
    const log = ['B', undefined, 'A', 'C'].map((flask) =>
      nitrogen(0, 30, flask === undefined ? {} : { flask }),
    )
    expect(levels(0, ...log).map(({ flask }) => flask)).toEqual([undefined, 'A', 'B', 'C'])
    expect(levels(0, ...log.toReversed()).map(({ flask }) => flask)).toEqual([undefined, 'A', 'B', 'C'])
  })

  test.each([
    ['of one day the later reading', { time: '07:00' }, { time: '16:00' }],
    [
      'of one milking the reading that was written down later',
      { at: '2026-05-01T05:00:00Z' },
      { at: '2026-05-01T06:00:00Z' },
    ],
    [
      'of two written down at once always the same',
      { id: 'a', at: '2026-05-01T05:00:00Z' },
      { id: 'b', at: '2026-05-01T05:00:00Z' },
    ],
  ])('%s counts, whatever the order of the file', (_, earlier, later) => {
    const pair = [nitrogen(0, 12, earlier), nitrogen(0, 40, later)]
    for (const inFile of [pair, pair.toReversed()])
      expect(levels(0, ...inFile)[0]?.readings.map(({ depthCm }) => depthCm)).toEqual([12, 40])
  })

  test('it falls by so much a day since it was filled, and reaches the order level on a day', () => {
    const [level] = levels(30, nitrogen(0, 20), nitrogen(10, 45), nitrogen(17, 41), nitrogen(24, 38))
    expect(level?.fallsBy).toBeCloseTo(7 / 14, 12)
    // 13 cm above the order level at half a centimetre a day: 26 days after the last reading.
    expect(level?.orderOn && dayIso(level.orderOn)).toBe(dayIso(dayOn(50)))
    // 12 cm at 9/14 of a centimetre: 18.7 days, so that the 18th is the last one before.
    // A day on which it did not fall is no filling.
    expect(levels(30, nitrogen(10, 45), nitrogen(12, 45), nitrogen(24, 38))[0]?.fallsBy).toBeCloseTo(0.5, 12)
    const [uneven] = levels(30, nitrogen(10, 46), nitrogen(24, 37))
    expect(uneven?.orderOn && dayIso(uneven.orderOn)).toBe(dayIso(dayOn(42)))
  })

  test('just filled, or read once, nothing is foretold; below the level the day has come', () => {
    expect(levels(1, nitrogen(0, 20), nitrogen(1, 45))[0]).toMatchObject({
      fallsBy: undefined,
      orderOn: undefined,
    })
    expect(levels(7, nitrogen(0, 24), nitrogen(7, 20))[0]).toMatchObject({
      state: 'order',
      orderOn: undefined,
    })
    expect(levels(7, nitrogen(0, 40), nitrogen(7, 40))[0]).toMatchObject({ fallsBy: 0, orderOn: undefined })
  })
})

describe('supply', () => {
  const book = herd(
    farm(),
    cow('1'),
    delivery(0, 'S1', 'sexed', 4),
    delivery(0, 'S2', 'sexed', 6),
    delivery(0, 'S3', 'beef', 1),
    service('1', 1, 'S3', 'beef'),
  )
  const stock = stockOn(book, dayOn(1))
  const supply = (needed: Partial<Record<string, number>>) =>
    supplyOf(stock, (straw) => needed[straw]).map(({ straw, left, missing, state }) =>
      [straw, left, missing, state].join(' '),
    )

  test('enough, low and out, by kind', () => {
    expect(supply({ sexed: 10, beef: 3, conventional: 2 })).toEqual([
      'conventional 0 2 out',
      'sexed 10 0 enough',
      'beef 0 3 out',
    ])
    expect(supply({ sexed: 11, beef: 0, conventional: 0 })).toEqual(['sexed 10 1 low', 'beef 0 0 enough'])
  })

  test('without a forecast only what was kept and is used up is out', () => {
    expect(supply({})).toEqual(['sexed 10 0 enough', 'beef 0 0 out'])
  })
})

describe('the thawing card', () => {
  test('a volume that the source does not name is left to the supplier', () => {
    expect(thawingCard('beef', 0.3).seconds).toBeUndefined()
    expect(thawingCard('beef', undefined).seconds).toBeUndefined()
  })

  test('the supplier comes first, serving soon last, and a sexed straw has its hours', () => {
    const steps = thawingCard('sexed', 0.25).steps
    expect([steps[0], steps.at(-1)]).toEqual(['supplier-card', 'serve-soon'])
    expect(steps).toContain('sexed-hours')
    expect(thawingCard('conventional', 0.25).steps).not.toContain('sexed-hours')
  })
})
