import { describe, expect, test } from 'vitest'
import { keyDates, seasonDates } from '../../../source/breeding/ahead/key-dates.ts'
import { dayIso } from '../../../source/breeding/day.ts'
import type { Season } from '../../../source/breeding/season.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bookOf,
  calving,
  cow,
  dayAt,
  type Happening,
  type Herd,
  left,
  matingStart,
  pregnant,
  service,
} from '../support.ts'

/** Six weeks of AI, three of the bull: `code` by season day. */
const datesOf = (herd: Herd = {}): Record<string, number> =>
  Object.fromEntries(
    seasonDates(bookOf([], herd).allSeasons[0] as Season, 42).map(({ code, day }) => [
      code,
      day - matingStart,
    ]),
  )

describe('the dates of a season', () => {
  test('by season day', () => {
    expect(datesOf({ scans: [80] })).toEqual({
      'pre-mating-start': -35,
      'bull-soundness-check': -18,
      'mating-start': 0,
      'bull-on-farm': 32,
      'ai-end': 41,
      'bull-in': 42,
      'bull-out': 63,
      'scan-tells-sires-from': 76,
      'scanning-visit': 80,
      'scan-tells-sires-to': 98,
      'final-check-from': 104,
      'season-end': 146,
    })
  })

  test('by date', () => {
    const season = bookOf([], { scans: [20, 80] }).allSeasons[0] as Season
    const days = seasonDates(season, 42).map(({ day }) => day)
    expect(days).toEqual(days.toSorted((a, b) => a - b))
  })

  test('none of a bull without bull weeks', () => {
    const codes = Object.keys(datesOf({ bullWeeks: 0 }))
    expect(codes.filter((code) => code.startsWith('bull'))).toEqual([])
    expect(codes).toContain('final-check-from')
  })
})

/** `code date count` of the dates of animals within a span of season days. */
function ofAnimals(animals: readonly Animal[], from: number, to: number): string[] {
  const book = bookOf(animals)
  const standings = Array.from(book.animals.values(), (animal) => standingOn(book, animal, dayAt(50)))
  return keyDates(book, standings, dayAt(from), dayAt(to))
    .filter(({ count }) => count !== undefined)
    .map(({ code, day, count }) => `${code} ${dayIso(day)} ${count}`)
}

describe('the dates of animals', () => {
  // Conceived on 1 May, carried 282 days: due on 7 February 2027, dried off 60 days before, on 9 December 2026.
  const inCalf = (number: string, s: number, ...more: readonly Happening[]): Animal =>
    cow({ number }, calving(-60), service(s), pregnant(s + 35), ...more)

  test('the first due date of the block and the Mondays of the weeks to dry off', () => {
    const herd = [inCalf('1', 4), inCalf('2', 0), inCalf('3', 5), inCalf('4', 6), cow({ number: '5' })]
    expect(ofAnimals(herd, 0, 300)).toEqual([
      'dry-off-group 2026-12-07 2',
      'dry-off-group 2026-12-14 2',
      'first-due 2027-02-07 4',
    ])
  })

  test('named with their block', () => {
    const book = bookOf([inCalf('1', 0)])
    const standings = Array.from(book.animals.values(), (animal) => standingOn(book, animal, dayAt(50)))
    const dates = keyDates(book, standings, dayAt(0), dayAt(300))
    expect(new Set(dates.map(({ block }) => block))).toEqual(new Set(['spring']))
  })

  test('not of those that left', () => {
    expect(ofAnimals([inCalf('1', 0, left(40)), inCalf('2', 3)], 0, 300)).toEqual([
      'dry-off-group 2026-12-07 1',
      'first-due 2027-02-10 1',
    ])
  })

  test('within the span, both days included', () => {
    const herd = [inCalf('1', 0)]
    expect(ofAnimals(herd, 282, 282)).toEqual(['first-due 2027-02-07 1'])
    expect(ofAnimals(herd, 283, 400)).toEqual([])
    expect(ofAnimals(herd, 0, 281)).toEqual(['dry-off-group 2026-12-07 1'])
  })
})
