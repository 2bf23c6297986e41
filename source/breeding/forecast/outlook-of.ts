/**
 * The animals of a block as the forecast sees them.
 */
import type { HerdBook } from '../book.ts'
import { cycleMean } from '../chances/cycle.ts'
import type { Rates } from '../chances/rates.ts'
import { contradictionsOf } from '../contradictions.ts'
import type { Day } from '../day.ts'
import { gestationDays } from '../gestation.ts'
import { placeOf } from '../places.ts'
import type { Policy } from '../policy.ts'
import { checkCountsFrom } from '../pregnancy.ts'
import { PRE_MATING, type Season, seasonDay } from '../season.ts'
import { sireOf } from '../sire.ts'
import type { Standing } from '../standing.ts'
import { plannedKinds } from '../straws/ahead.ts'
import { watchedDays } from '../watched-weeks.ts'
import { anchorOf } from './anchor-of.ts'
import { holdEnd } from './hold.ts'
import type { AnimalOutlook, SeasonDays, ServedBy } from './outlook.ts'

/** An animal of the forecast. */
interface OutlookOf {
  readonly standing: Standing
  readonly outlook: AnimalOutlook
}

/** Anchors may lie so many days before the mating start. */
const DAYS_BACK = 500

/**
 * Whom a forecast of a block is about: the females here, not barred, ready if maidens, those still to calve too.
 *
 * @example standings.filter((standing) => isForecast(standing, season)).length // 146
 */
export const isForecast = (standing: Standing, season: Season): boolean =>
  standing.inHerd && standing.female && !standing.barred && standing.ready && standing.block === season.block

/** The days of a season for the forecast made on the morning of a day. */
export const seasonDaysOf = (season: Season, today: Day, policy: Policy): SeasonDays => ({
  today: Math.max(seasonDay(season, today), PRE_MATING),
  lastAiDay: season.aiEnd,
  lastBullDay: season.bullEnd,
  finalCheckDay: season.bullEnd + policy.finalCheckDays,
  returnsFrom: policy.watchFrom,
  chances: policy.chances,
})

/** What a kind of straw, or a bull, brings: mean gestation of the sires in stock of that kind, else by breed. */
function gestationBy(
  book: HerdBook,
): (breed: string | undefined, maiden: boolean) => Record<ServedBy, number> {
  const inStock = (straw: ServedBy, maiden: boolean): number | undefined => {
    const sires = new Set(book.stock.filter((fact) => fact.straw === straw).map((fact) => fact.sire))
    const days = [...sires].map((sire) => gestationDays(sireOf(book, sire), maiden, book.policy))
    return days.length === 0 ? undefined : Math.round(days.reduce((a, b) => a + b, 0) / days.length)
  }
  const natural = book.policy.defaultGestation
  const means = (maiden: boolean) => ({
    conventional: inStock('conventional', maiden),
    sexed: inStock('sexed', maiden),
    beef: inStock('beef', maiden),
  })
  const [ofCow, ofMaiden] = [means(false), means(true)]
  return (breed, maiden) => {
    const own = gestationDays({ breed }, maiden, book.policy)
    const { conventional = own, sexed = own, beef = natural } = maiden ? ofMaiden : ofCow
    return { conventional, sexed, beef, natural }
  }
}

/** Season days on which a heat would not have been seen. */
interface Watch {
  /** Before the mating start. */
  readonly before: ReadonlySet<number>
  /** In the bull weeks: those without a heat or a looked fact in the block. */
  readonly bull: ReadonlySet<number>
  readonly from: number
}

function watchOf(season: Season, block: readonly Standing[], today: Day): Watch {
  const watched = watchedDays(season, block, today)
  const dayOf = (s: number): Day => (season.matingStart + s) as Day
  const before = new Set<number>()
  for (let s = -DAYS_BACK; s < 0; s += 1) if (!watched(dayOf(s))) before.add(s)
  const bull = seasonDay(season, today) > season.aiEnd ? notLookedIn(season, block) : new Set<number>()
  let from = PRE_MATING
  while (before.has(from)) from += 1
  return { before, bull, from: Math.min(from, Math.max(PRE_MATING, seasonDay(season, today))) }
}

function notLookedIn(season: Season, block: readonly Standing[]): ReadonlySet<number> {
  const looked = new Set<number>()
  for (const { animal } of block)
    for (const { fact, day } of animal.happenings)
      if (fact.kind === 'heat' || fact.kind === 'looked') looked.add(Math.floor(seasonDay(season, day) / 7))
  const days = new Set<number>()
  for (let s = season.aiEnd + 1; s <= season.bullEnd; s += 1) if (!looked.has(Math.floor(s / 7))) days.add(s)
  return days
}

/** In the bull weeks only the repeat-heat watch goes on: 18-24 days after a service, in weeks that were watched. */
function unwatchedFor(
  anchor: AnimalOutlook['anchor'],
  season: SeasonDays,
  watch: Watch,
): ReadonlySet<number> {
  if (season.today <= season.lastAiDay + 1) return watch.before
  const unwatched = new Set(watch.before)
  for (let s = season.lastAiDay + 1; s <= season.lastBullDay; s += 1) {
    const awaited = anchor.kind === 'served' && s - anchor.day >= 18 && s - anchor.day <= 24
    if (!awaited || watch.bull.has(s)) unwatched.add(s)
  }
  return unwatched
}

/** Her last check, where it said empty: it counts for what is old enough for its method. */
function emptyCheckOf(
  { lastCheck, maiden }: Standing,
  season: Season,
  policy: Policy,
): AnimalOutlook['emptyCheck'] {
  if (lastCheck?.fact.result !== 'empty') return undefined
  const on = seasonDay(season, lastCheck.day)
  return { on, rulesOutTo: on - checkCountsFrom(lastCheck.fact.method, maiden, policy) }
}

/** First season day on which she can be served; after the bull's last day where she cannot be in this season. */
function earliestDay(
  standing: Standing,
  season: Season,
  calved: Day | undefined,
  calvedToServe: number,
): number {
  const hold = holdEnd(standing)
  if (hold === 'open') return season.bullEnd + 1
  const afterHold = hold === undefined ? 0 : seasonDay(season, hold) + 1
  const afterCalving = calved === undefined ? 0 : seasonDay(season, calved) + calvedToServe
  // Without a calving date no AI is allowed; the bull asks for none.
  const unknown = calved === undefined && !standing.maiden ? season.aiEnd + 1 : 0
  return Math.max(0, afterHold, afterCalving, unknown)
}

/**
 * The animals of a block as the forecast sees them on the morning of a day.
 *
 * @param standings of all animals on that day; those not of the forecast are left out
 * @param season the season to look at, in its own or a changed length; may be one to come
 * @param rates for the length of cycles
 * @example outlooksOf(book, standings, season, today, rates)[0]?.outlook.anchor // { kind: 'heat', day: -7 }
 */
export function outlooksOf(
  book: HerdBook,
  standings: readonly Standing[],
  season: Season,
  today: Day,
  rates: Rates,
): OutlookOf[] {
  const { policy } = book
  const block = standings.filter((standing) => isForecast(standing, season))
  const days = seasonDaysOf(season, today, policy)
  const watch = watchOf(season, block, today)
  const kindsOf = plannedKinds(book, today)
  const gestationOf = gestationBy(book)
  const setting = {
    policy,
    milkings: book.farm.milkings,
    contradicted: (standing: Standing) => contradictionsOf(book, standing).length > 0,
  }
  return block.map((standing) => {
    const place = placeOf(standing, setting)
    const section = place.takeCare === undefined ? place.further?.section : undefined
    const servedToday = section === 'serve' || section === 'second-service'
    const { anchor, calves } = anchorOf(standing, season, book, servedToday, watch.from)
    const parity = standing.parity + (calves === undefined ? 0 : 1)
    const now = standing.season?.matingStart === season.matingStart
    const emptyCheck = emptyCheckOf(standing, season, policy)
    return {
      standing,
      outlook: {
        anchor,
        chancesUsed: now ? standing.chancesUsed : 0,
        earliestDay: earliestDay(standing, season, calves ?? standing.waitFrom, policy.calvedToServe),
        leftToBull: now && standing.leftToBull,
        unwatched: unwatchedFor(anchor, days, watch),
        ...(emptyCheck === undefined ? {} : { emptyCheck }),
        maiden: parity === 0,
        cycleMean: cycleMean(parity, rates),
        straws: kindsOf({ ...standing, season }),
        gestation: gestationOf(standing.animal.record.breed, parity === 0),
      },
    }
  })
}
