/**
 * What a screen shows that takes longer to reckon than a key may wait. It is reckoned in small steps between keys; the
 * screen shows what is known so far, and what was known before the last fact was recorded.
 */
import type { HerdBook } from '../breeding/book.ts'
import type { Day } from '../breeding/day.ts'
import { type Part, type SeasonView, seasonView } from '../breeding/figures/season-view.ts'
import type { BlockForecast } from '../breeding/forecast/block.ts'
import type { BlockDay } from '../breeding/list.ts'
import { dayOfSeason, type Season } from '../breeding/season.ts'
import { type Standing, standingOn } from '../breeding/standing.ts'
import { mapInSteps, type Steps } from '../breeding/steps.ts'
import { aheadReckoning } from './ahead.ts'
import { type Desk, placeOf } from './desk.ts'
import type { Reckoning } from './to-reckon.ts'

/** A part of a season's view that the screen shown needs. */
interface Wanted {
  readonly season: Season
  readonly part: Part
}

const standings = new WeakMap<HerdBook, Map<Day, readonly Standing[]>>()
/** Days of one book whose standings are kept. */
const DAYS_KEPT = 4

function keep(book: HerdBook, day: Day, all: readonly Standing[]): readonly Standing[] {
  const ofBook = standings.get(book) ?? new Map<Day, readonly Standing[]>()
  if (ofBook.size >= DAYS_KEPT) ofBook.clear()
  standings.set(book, ofBook.set(day, all))
  return all
}

/** The view of a season for a book and day, once the standings that it rests on are known. */
function viewOf(book: HerdBook, season: Season, day: Day): SeasonView | undefined {
  const known = standings.get(book)?.get(day)
  return known === undefined ? undefined : seasonView(book, known, season, day)
}

/** The blocks that a screen of the season ahead looks at: those whose AI or bull weeks are to come or on. */
export const blocksAhead = (desk: Desk): readonly BlockDay[] =>
  desk.page.list.blocks.filter(({ phase }) => phase === 'before' || phase === 'ai' || phase === 'bull')

/** Straws for a season are ordered so many days before it begins. */
const ORDERED_BEFORE = 120

/** The seasons that straws are needed for: of each block the next whose AI is not over, where it begins soon. */
export const seasonsOfStraws = (desk: Desk): readonly Season[] => {
  const { day } = desk.page.list
  return [...desk.book.seasons.values()].flatMap((seasons) => {
    const next = seasons.find((season) => dayOfSeason(season, season.aiEnd) >= day)
    return next === undefined || next.matingStart - day > ORDERED_BEFORE ? [] : [next]
  })
}

/** The blocks whose season is on or begins soon, and that have bull weeks. */
export const blocksWithBull = (desk: Desk): readonly BlockDay[] =>
  desk.page.list.blocks.filter(({ phase, season }) => phase !== 'closed' && season.bullEnd > season.aiEnd)

/** The block that the season's screen shows, with its season. */
export const blockShown = (desk: Desk, block: string | undefined): BlockDay | undefined =>
  desk.page.list.blocks.find((one) => one.block === block) ?? desk.page.list.blocks[0]

/** What the screen shown needs, the most wanted first. */
function wantedBy(desk: Desk): readonly Wanted[] {
  const place = placeOf(desk)
  switch (place.at) {
    case 'straws':
      return seasonsOfStraws(desk).map((season) => ({ season, part: {} }))
    case 'bulls':
      return blocksWithBull(desk).flatMap(({ season }) => [
        { season, part: {} },
        { season, part: 'figures' },
      ])
    case 'turn-out': {
      const season = desk.page.list.blocks.find(({ block }) => block === place.block)?.season
      return season === undefined ? [] : [{}, { aiWeeks: 1 }].map((part) => ({ season, part }))
    }
    case 'season': {
      const season = blockShown(desk, place.block)?.season
      if (season === undefined) return []
      const view = viewOf(desk.book, season, desk.page.list.day)
      const aiOn = desk.page.list.day <= dayOfSeason(season, season.aiEnd)
      const worth = view?.knows({}) === true ? view.changes : []
      const parts: Readonly<Record<typeof place.part, readonly Part[]>> = {
        answers: ['figures', {}, ...(aiOn ? [{ aiWeeks: 1 }] : [])],
        figures: ['figures'],
        pictures: ['figures', {}],
        forecast: [{}, place.change, ...worth],
        empties: ['figures'],
        earlier: ['figures', 'earlier'],
      }
      return parts[place.part].map((part) => ({ season, part }))
    }
    default:
      return []
  }
}

/**
 * The first part that the screen shown needs and that is not known yet; undefined where all is known.
 *
 * @example reckoningOf(deskOfMorningList) // undefined
 */
export function reckoningOf(desk: Desk): Reckoning | undefined {
  if (placeOf(desk).at === 'ahead') return aheadReckoning(desk)
  const { book, page } = desk
  const { day } = page.list
  const missing = wantedBy(desk).find(
    ({ season, part }) => !(viewOf(book, season, day)?.knows(part) ?? false),
  )
  if (missing === undefined) return undefined
  const name = JSON.stringify([missing.season.factId, day, missing.part])
  return { book, name, begin: () => reckon(book, day, missing) }
}

function* reckon(book: HerdBook, day: Day, { season, part }: Wanted): Steps<void> {
  const all =
    standings.get(book)?.get(day) ??
    keep(book, day, yield* mapInSteps(book.animals.values(), (animal) => standingOn(book, animal, day)))
  yield
  const view = seasonView(book, all, season, day)
  void view.rates
  yield
  yield* view.reckon(part)
}

/**
 * The book that stands in for the one that the next fact makes: this one, where all that the screen shows is known of
 * it; on a screen that nothing is reckoned for, the one that stood in before.
 */
export function bookToStandIn(desk: Desk): HerdBook | undefined {
  const reckons = placeOf(desk).at === 'ahead' || wantedBy(desk).length > 0
  return reckons && reckoningOf(desk) === undefined ? desk.book : desk.reckoned
}

/** A view that knows a part, and whether something was recorded since that it does not know of. */
interface Known {
  readonly view: SeasonView
  readonly stale: boolean
}

/** The view that knows a part: of the book as it is, else as it was before the last fact. */
export function knownView(desk: Desk, season: Season, part: Part): Known | undefined {
  const { day } = desk.page.list
  const now = viewOf(desk.book, season, day)
  if (now?.knows(part) === true) return { view: now, stale: false }
  const before = desk.reckoned === undefined ? undefined : viewOf(desk.reckoned, season, day)
  return before?.knows(part) === true ? { view: before, stale: true } : undefined
}

/** The forecast of a season as planned; undefined while it is being reckoned, and where nothing lies ahead. */
export const forecastOf = (desk: Desk, season: Season): BlockForecast | undefined =>
  knownView(desk, season, {})?.view.forecast
