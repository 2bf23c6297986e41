import { describe, expect, test } from 'vitest'
import { unwatchedSince, watchedDays } from '../../source/breeding/watched-weeks.ts'
import {
  type Animal,
  bookOf,
  calving,
  cow,
  dayAt,
  type Happening,
  heat,
  listAt,
  looked,
  service,
  standingAt,
} from './support.ts'

const fresh = calving(-60)
/** Chance of the next heat today of a cow in heat on s -20, in a herd where others were seen or looked for. */
function chance(s: number, ...others: ReturnType<typeof cow>[]): number {
  const rows = listAt(s, [cow({ number: '1' }, fresh, heat(-20)), ...others]).rows
  return rows.find((row) => row.number === '1' && row.section === 'repeat-heat-watch')?.chance ?? Number.NaN
}
const other = (number: number, ...facts: Happening[]) => cow({ number: String(number) }, fresh, ...facts)
/** Someone of the block in heat in each of the weeks s -14..-8 and -7..-1. */
const watched = [other(2, heat(-13)), other(3, heat(-6))]

describe('before the mating start a week without a heat or a look in the block was not watched', () => {
  test('nobody watched: no heat of hers can have been seen, so the next is still ahead', () => {
    // Watched, four days of likely heats passed without one; unwatched they say nothing.
    expect(chance(0)).not.toBeCloseTo(chance(0, ...watched), 3)
    expect(chance(0, other(2, heat(-6)))).not.toBeCloseTo(chance(0), 4)
  })

  test('a heat of any animal of the block makes a week watched, and so does having looked', () => {
    expect(chance(0, other(2, looked(-14)), other(3, looked(-1)))).toBe(chance(0, ...watched))
  })

  test('a heat in another block does not', () => {
    const elsewhere = cow({ number: '2', block: 'autumn' }, fresh, heat(-13), heat(-6))
    expect(chance(0, elsewhere)).toBe(chance(0))
  })

  test('weeks count from the mating start', () => {
    // s -7 begins the last week, s -8 ends the one before.
    expect(chance(0, other(2, looked(-14)), other(3, looked(-7)))).toBe(chance(0, ...watched))
    expect(chance(0, other(2, looked(-14)), other(3, looked(-8)))).toBe(chance(0, other(2, looked(-14))))
  })

  test('from the mating start on every day is watched', () => {
    const cows = (served: number) => [cow({ number: '1' }, fresh, heat(served))]
    const chanceAt = (s: number, served: number): number | undefined =>
      listAt(s, cows(served)).rows[0]?.chance
    expect(chanceAt(24, 3)).toBe(chanceAt(30, 9))
  })

  test('after a service every day counts as watched', () => {
    const served = (s: number, day: number) => listAt(s, cow(fresh, service(day))).rows[0]?.chance
    expect(served(0, -20)).toBe(served(30, 10))
  })
})

describe('which days of a season are watched', () => {
  const [season] = bookOf([]).allSeasons
  /** Those of some season days that are, as known on the morning of s. */
  const watchedOn = (s: number, days: readonly number[], ...animals: Animal[]): number[] => {
    if (season === undefined) throw new Error('the herd has a season')
    const standings = animals.map((one) => standingAt(s, one))
    const watched = watchedDays(season, standings, dayAt(s))
    return days.filter((day) => watched(dayAt(day)))
  }
  const edges = [-22, -21, -15, -14, -8, -7, -1, 0, 1, 70]

  test('the week of today, and all from the mating start on', () => {
    expect(watchedOn(-10, edges)).toEqual([-14, -8, 0, 1, 70])
    expect(watchedOn(-7, edges)).toEqual([-7, -1, 0, 1, 70])
    expect(watchedOn(0, edges)).toEqual([0, 1, 70])
  })

  test('a week in which something was seen or looked for before today', () => {
    expect(watchedOn(5, edges, other(2, heat(-21)))).toEqual([-21, -15, 0, 1, 70])
    expect(watchedOn(5, edges, other(2, looked(-15), service(-3)))).toEqual([-21, -15, 0, 1, 70])
    expect(watchedOn(-10, edges, other(2, heat(-15), heat(-7)))).toEqual([-21, -15, -14, -8, 0, 1, 70])
    expect(watchedOn(5, edges, other(2), other(3, heat(-1)))).toEqual([-7, -1, 0, 1, 70])
  })

  test('days on which nobody watched, from the first to the last, both included', () => {
    const unwatched = (...days: number[]) => [
      ...unwatchedSince(dayAt(10), dayAt(13), (day) => !days.includes(day - dayAt(0))),
    ]
    expect(unwatched(10, 12, 13)).toEqual([0, 2, 3])
    expect(unwatched(9, 14)).toEqual([])
    expect(unwatched(11)).toEqual([1])
  })
})
