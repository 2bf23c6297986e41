/** The key dates of a herd as events with names that stay the same. */
import { createHash } from 'node:crypto'
import { type KeyDate, keyDates, seasonDates } from '../../breeding/ahead/key-dates.ts'
import type { HerdBook } from '../../breeding/book.ts'
import { calendarOf, type Day, dayIso } from '../../breeding/day.ts'
import type { Standing } from '../../breeding/standing.ts'

export interface CalendarEvent {
  readonly date: KeyDate
  /** The same for the same date of the same season, also after the season was moved. */
  readonly uid: string
}

/** Codes of which a season has several: each day is a date of its own. */
const severalOf: readonly string[] = ['scanning-visit', 'dry-off-group']

/**
 * The key dates within a span of days, by date.
 *
 * @param standings of the animals on the day that is today
 * @param herdId keeps the events of two herds apart
 * @example calendarEvents(book, standings, from, to, 'k2m9').length // 27
 */
export function calendarEvents(
  book: HerdBook,
  standings: readonly Standing[],
  from: Day,
  to: Day,
  herdId: string,
): CalendarEvent[] {
  const ofSeasons = book.allSeasons.flatMap((season, place) =>
    seasonDates(season, book.policy.finalCheckDays).map((date) => ({
      date,
      season: seasonName(book, place),
    })),
  )
  const ofAnimals = keyDates({ ...book, allSeasons: [] }, standings, from, to).map((date) => ({
    date,
    season: `${calendarOf(date.day).year}`,
  }))
  return [...ofSeasons, ...ofAnimals]
    .filter(({ date: { day } }) => day >= from && day <= to)
    .sort((a, b) => a.date.day - b.date.day)
    .map(({ date, season }) => ({ date, uid: uidOf(date, season, herdId) }))
}

/** The year of a season's mating start, and which of the block's seasons in that year it is. */
function seasonName(book: HerdBook, place: number): string {
  const season = book.allSeasons[place]
  if (season === undefined) return ''
  const { year } = calendarOf(season.matingStart)
  const before = book.allSeasons
    .slice(0, place)
    .filter((other) => other.block === season.block && calendarOf(other.matingStart).year === year)
  return `${year}.${before.length}`
}

function uidOf({ code, block, day }: KeyDate, season: string, herdId: string): string {
  const parts = [herdId, block, season, code, severalOf.includes(code) ? dayIso(day) : '']
  const name = createHash('sha256').update(JSON.stringify(parts)).digest('hex').slice(0, 32)
  return `${name}@dawnlist`
}
