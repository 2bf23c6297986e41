import { expect, test } from 'vitest'
import type { HerdBook } from '../../../source/breeding/book.ts'
import { type BlockForecast, forecastBlock } from '../../../source/breeding/forecast/block.ts'
import type { Change } from '../../../source/breeding/forecast/what-if.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bookOf,
  calving,
  cow,
  dayAt,
  type Herd,
  heat,
  left,
  maiden,
  pregnant,
  service,
} from '../support.ts'

const herd: Animal[] = Array.from({ length: 12 }, (_, i) => {
  const number = String(i + 1)
  if (i % 6 === 5) return maiden({ number }, heat(-10 - (i % 15)))
  const calved = calving(-90 + i)
  return i % 2 === 0 ? cow({ number }, calved) : cow({ number }, calved, heat(-1 - (i % 20)))
})

function forecast(
  s: number,
  animals: readonly Animal[],
  change?: Change,
  herdSettings?: Herd,
): BlockForecast {
  const book: HerdBook = bookOf(animals, herdSettings)
  const [season] = book.allSeasons
  if (season === undefined) throw new Error('no season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  return forecastBlock(book, standings, season, dayAt(s), change)
}

test('a block at the mating start', () => {
  const ahead = forecast(0, herd)
  expect(ahead.animals).toBe(12)
  expect(ahead.inCalfSixWeeks.middle).toBeGreaterThan(6)
  expect(ahead.inCalfSixWeeks.low).toBeLessThan(ahead.inCalfSixWeeks.middle)
  expect(ahead.inCalf).toHaveLength(64)
  expect(ahead.own.heatSeen).toBeCloseTo(0.9, 12)
  expect([ahead.bullsNeeded, ahead.youngBullsNeeded]).toEqual([2, 2])
  expect([ahead.lastAiDay, ahead.lastBullDay]).toEqual([41, 62])
  const calves = ahead.calvings.at(-1)?.cumulative ?? 0
  expect(calves).toBeGreaterThan(0.85 * (12 - ahead.emptyAtEnd.expected) * 0.95)
  expect(calves).toBeLessThan(12 - ahead.emptyAtEnd.expected)
})

test('long before the season and long after it', () => {
  expect(forecast(-90, herd).inCalf).toHaveLength(99)
  expect(forecast(120, herd).inCalf).toHaveLength(1)
})

test('what if: more AI, a better watch, better conception, one bull', () => {
  const here = forecast(0, herd)
  const longer = forecast(0, herd, { aiWeeks: 2 })
  expect(longer.lastAiDay).toBe(55)
  expect(longer.inCalfSixWeeks.expected).toBeCloseTo(here.inCalfSixWeeks.expected, 9)
  expect(longer.straws.conventional.expected).toBeGreaterThan(here.straws.conventional.expected)
  expect(longer.inCalf).toHaveLength(64)
  expect(forecast(0, herd, { heatSeen: 0.7 }).inCalfSixWeeks.expected).toBeLessThan(
    here.inCalfSixWeeks.expected,
  )
  expect(forecast(0, herd, { cowConception: 0.65 }).inCalfSixWeeks.expected).toBeGreaterThan(
    here.inCalfSixWeeks.expected,
  )
  const short = forecast(0, herd, { bulls: 0 })
  expect(short.bulls).toBe(0)
  expect(short.emptyAtEnd.expected).toBeGreaterThan(here.emptyAtEnd.expected + 0.5)
  expect(forecast(0, herd, { heatSeen: 0.9 }).inCalfSixWeeks).toEqual(here.inCalfSixWeeks)
})

test('no bull weeks, no bulls', () => {
  const ahead = forecast(0, herd.slice(0, 4), {}, { bullWeeks: 0 })
  expect([ahead.bullsNeeded, ahead.youngBullsNeeded, ahead.lastBullDay]).toEqual([0, 0, 41])
})

test('bulls for the high end of those open at turn-out; young ones serve fewer', () => {
  // Calved on day 0, none can be served by AI: all are open on day 42.
  const open = Array.from({ length: 18 }, (_, i) => cow({ number: String(i + 1) }, calving(0)))
  const needed = (policy: Record<string, unknown>) => {
    const ahead = forecast(2, open, {}, { policy: { openPerBull: 6, openPerYoungBull: 5, ...policy } })
    expect(ahead.openAtTurnOut.high).toBe(18)
    return [ahead.bullsNeeded, ahead.youngBullsNeeded]
  }
  expect(needed({})).toEqual([3, 4])
  expect(needed({ bullsRotate: true })).toEqual([6, 8])
})

test('bulls on the farm are counted', () => {
  const bull: Animal = { record: { number: '900', sex: 'M', ready: true }, happenings: [] }
  const few = herd.slice(0, 4)
  expect(forecast(0, [...few, bull]).bulls).toBe(1)
  expect(forecast(0, [...few, bull], { bulls: 3 }).bulls).toBe(3)
  expect(forecast(0, [...few, { ...bull, happenings: [left(-9)] }]).bulls).toBeUndefined()
})

test('a bull that leaves by the day of turn-out is not reckoned with; a day later he is', () => {
  const leaves = (s: number): Animal => ({
    record: { number: '900', sex: 'M', ready: true },
    happenings: [left(s)],
  })
  const few = herd.slice(0, 4)
  expect(forecast(45, [...few, leaves(42)]).bulls).toBeUndefined()
  expect(forecast(45, [...few, leaves(43)]).bulls).toBe(1)
})

test('a block that is all in calf', () => {
  const animals = herd
    .slice(0, 4)
    .map((_, i) => cow({ number: String(i + 1) }, calving(-90), service(i), pregnant(40)))
  const ahead = forecast(45, animals)
  expect(ahead.inCalfSixWeeks).toMatchObject({ middle: 4, high: 4 })
  expect(ahead.straws.conventional.high).toBe(0)
})
