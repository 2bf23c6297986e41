import { describe, expect, test } from 'vitest'
import { calvingStartFor, dayIso, isoDay, matingStartFor } from '../../source/breeding/day.ts'
import { dayOfSeason, phaseOf, seasonFrom } from '../../source/breeding/season.ts'
import { cow, type Happening, pregnant, service, standingAt } from '../breeding/support.ts'

/** The date she is due by the program when served on a date. */
function due(served: string, gestation: number): string {
  const found: Happening[] = [
    { ...service(0), date: served },
    { ...pregnant(0), date: dayIso(calvingStartFor(isoDay(served), 40)) },
  ]
  const s = isoDay(served) + 41 - isoDay('2026-05-01')
  const day = standingAt(s, cow(...found), { policy: { defaultGestation: gestation } }).due
  return day === undefined ? 'unknown' : dayIso(day)
}

// Clemson University extension, bulletin BC-1001, 2006: gestation table and examples of 283 days, the day of service not
// counted. The years of the table's rows are ours, without a 29 February in between.
describe('due dates of a published table, 283 days', () => {
  test.each([
    ['1995-02-10', '1995-11-20'],
    ['1995-05-27', '1996-03-05'],
    ['2025-01-01', '2025-10-11'],
    ['2025-02-05', '2025-11-15'],
    ['2025-03-01', '2025-12-09'],
    ['2025-06-01', '2026-03-11'],
    ['2025-12-01', '2026-09-10'],
    ['2023-06-01', '2024-03-10'],
  ])('served %s: due %s', (served, expected) => {
    expect(due(served, 283)).toBe(expected)
  })
})

// NZ veterinary group, BCS and mating, 2021: mating starts on 23 October for a calving start on 1 August.
test('282 days: the mating start of a planned calving start, and back', () => {
  expect(dayIso(matingStartFor(isoDay('2022-08-01'), 282))).toBe('2021-10-23')
  expect(dayIso(calvingStartFor(isoDay('2021-10-23'), 282))).toBe('2022-08-01')
  expect(due('2021-10-23', 282)).toBe('2022-08-01')
})

// agriland.ie, Breeding season: pulling the bull, 2021: bull out after 10 and 12 weeks.
describe('the end of a mating season', () => {
  test.each([
    ['2021-04-20', 10, '2021-06-29'],
    ['2021-04-20', 12, '2021-07-13'],
    ['2021-05-01', 10, '2021-07-10'],
    ['2021-05-01', 12, '2021-07-24'],
  ])('started %s, after %i weeks: %s', (matingStart, weeks, out) => {
    const season = seasonFrom({
      kind: 'season',
      id: 'season',
      about: 'herd',
      at: '2021-04-01T00:00:00Z',
      date: '2021-04-01',
      block: 'spring',
      matingStart,
      aiWeeks: 6,
      bullWeeks: weeks - 6,
    })
    // The last day belongs to the season; the bull goes out on the day after it.
    expect(dayIso(dayOfSeason(season, season.bullEnd + 1))).toBe(out)
    expect(phaseOf(season, isoDay(out))).toBe('closing')
    expect(phaseOf(season, dayOfSeason(season, season.bullEnd))).toBe('bull')
  })
})
