/** The next two weeks, scanning visits and key dates: what the screen of the days ahead points at. */
import { type DayAhead, daysAheadInSteps } from '../breeding/ahead/ahead.ts'
import { type KeyDate, keyDates } from '../breeding/ahead/key-dates.ts'
import {
  bestScanningDays,
  type ScanningDay,
  scanningDays,
  tellsSires,
} from '../breeding/ahead/scanning-days.ts'
import type { HerdBook } from '../breeding/book.ts'
import { type Day, plusDays } from '../breeding/day.ts'
import { standingOn } from '../breeding/standing.ts'
import { mapInSteps, type Steps } from '../breeding/steps.ts'
import type { Desk } from './desk.ts'
import type { Reckoning } from './to-reckon.ts'

const DAYS_AHEAD = 14
/** Days within which a scanning visit is looked for: to the last on which foetal age tells the sires, and more. */
const SCANNING_AHEAD = 120
const DATES_AHEAD = 120

/** A line that can be pointed at; each is about a day. */
export type AheadLine =
  | { readonly is: 'day'; readonly day: Day; readonly ahead: DayAhead | undefined }
  /** A scanning visit that is planned. */
  | ({ readonly is: 'visit' } & ScanningDay)
  /** A good day for one. */
  | ({ readonly is: 'scan' } & ScanningDay)
  | { readonly is: 'date'; readonly day: Day; readonly date: KeyDate }

/** What is known of the days ahead. */
interface Known {
  readonly days: readonly DayAhead[]
  readonly scanning: readonly ScanningDay[]
  readonly dates: readonly KeyDate[]
}

const known = new WeakMap<HerdBook, Map<Day, Known>>()

const knownOf = (book: HerdBook | undefined, today: Day): Known | undefined =>
  book === undefined ? undefined : known.get(book)?.get(today)

/** The days ahead are reckoned between keys; undefined where they are known. */
export function aheadReckoning(desk: Desk): Reckoning | undefined {
  const { book } = desk
  const today = desk.now.day
  return knownOf(book, today) === undefined
    ? { book, name: `ahead ${today}`, begin: () => reckon(book, today) }
    : undefined
}

function* reckon(book: HerdBook, today: Day): Steps<void> {
  const standings = yield* mapInSteps(book.animals.values(), (animal) => standingOn(book, animal, today))
  const scanning = scanningDays(book, standings, today, plusDays(today, SCANNING_AHEAD))
  const dates = keyDates(book, standings, today, plusDays(today, DATES_AHEAD))
  yield
  const days = yield* daysAheadInSteps(book, today, DAYS_AHEAD)
  known.set(book, new Map([[today, { days, scanning, dates }]]))
}

/** What is known: of the book as it is, else as it was before the last fact; undefined while it is reckoned. */
const shownOf = (desk: Desk): Known | undefined =>
  knownOf(desk.book, desk.now.day) ?? knownOf(desk.reckoned, desk.now.day)

/** Whether all is known. */
export const aheadIsKnown = (desk: Desk): boolean => knownOf(desk.book, desk.now.day) !== undefined

/**
 * Scanning visits planned from today on, with how many are ready on the day as far as is known: those of the next four
 * months, and the first of each block.
 */
export function plannedVisits(desk: Desk): readonly ScanningDay[] {
  const { book, now } = desk
  return book.allSeasons
    .flatMap((season) =>
      season.scanDays
        .filter((day) => day >= now.day)
        .map((day) => ({
          day,
          block: season.block,
          ready: readyOn(desk, season.block, day),
          tellsSires: tellsSires(season, day),
        })),
    )
    .sort((a, b) => a.day - b.day)
    .filter(
      ({ day, block }, index, all) =>
        day <= now.day + SCANNING_AHEAD || all.findIndex((one) => one.block === block) === index,
    )
}

/** Animals of a block that are ready for a check on a day, as far as is known today. */
export const readyOn = (desk: Desk, block: string, day: Day): number =>
  shownOf(desk)?.scanning.find((one) => one.block === block && one.day === day)?.ready ?? 0

/** The lines that can be pointed at, in the order they are shown. */
export function aheadLines(desk: Desk): readonly AheadLine[] {
  const shown = shownOf(desk)
  const days = Array.from({ length: DAYS_AHEAD }, (_, index): AheadLine => {
    const day = plusDays(desk.now.day, index + 1)
    return { is: 'day', day, ahead: shown?.days.find((one) => one.day === day) }
  })
  return [
    ...days,
    ...plannedVisits(desk).map((visit): AheadLine => ({ is: 'visit', ...visit })),
    ...bestScanningDays(shown?.scanning ?? []).map((scan): AheadLine => ({ is: 'scan', ...scan })),
    ...(shown?.dates ?? [])
      .filter(({ code }) => code !== 'scanning-visit')
      .map((date): AheadLine => ({ is: 'date', day: date.day, date })),
  ]
}
