/**
 * The cohort of a season: every animal of the block meant for breeding at the mating start, fixed from then on.
 */
import type { AnimalRecord, HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import { isForecast } from '../forecast/outlook-of.ts'
import { CLOSING_DAYS, dayOfSeason, PRE_MATING, type Season, seasonDay } from '../season.ts'
import { type Standing, standingOn } from '../standing.ts'
import { finished, mapInSteps, type Steps } from '../steps.ts'
import { type ServiceResult, serviceResults } from './service-results.ts'

export interface Member {
  readonly animal: AnimalRecord
  /** Her standing at the mating start, or on the day of the figures before it. */
  readonly then: Standing
  /** Her standing on the day of the figures. */
  readonly now: Standing
  /** Her standing at the end of the closing weeks, or on the day of the figures before it. */
  readonly end: Standing
  /** Her services from season day -35 to the last with the bull, in order, AI and natural. */
  readonly services: readonly ServiceResult[]
}

/** Services of a season from day -35 to the last day with the bull. */
export const servicesIn = (standing: Standing, book: HerdBook, season: Season): ServiceResult[] =>
  serviceResults(standing, book).filter(({ service }) => {
    const s = seasonDay(season, service.day)
    return s >= PRE_MATING && s <= season.bullEnd
  })

/** Maidens younger than this at the mating start are calves, whatever their record says today. */
const YOUNGEST_MAIDEN = 365

/** A maiden's record says ready, but not since when: old enough, or served in the season. */
function wasReady(then: Standing, services: readonly ServiceResult[]): boolean {
  if (!then.maiden || services.length > 0) return true
  const { born } = then.animal
  return then.ready && (born === undefined || then.today - born >= YOUNGEST_MAIDEN)
}

/**
 * The cohort of a season: not barred, maidens ready, those still to calve too. Who leaves or is barred later stays in
 * it; who comes later does not join it.
 *
 * @param standings of all animals on the day of the figures, those that left too
 * @example cohortOf(book, season, standings, today).length // 148
 */
export const cohortOf = (
  book: HerdBook,
  season: Season,
  standings: readonly Standing[],
  today: Day,
): Member[] => finished(cohortInSteps(book, season, standings, today))

/** The same in steps of a few animals each. */
export function* cohortInSteps(
  book: HerdBook,
  season: Season,
  standings: readonly Standing[],
  today: Day,
): Steps<Member[]> {
  const closed = dayOfSeason(season, season.bullEnd + CLOSING_DAYS)
  const found = yield* mapInSteps(standings, (now): readonly Member[] => {
    const { animal } = now
    const at = (day: Day): Standing => (day < today ? standingOn(book, animal, day) : now)
    const then = at(season.matingStart)
    if (!isForecast({ ...then, ready: true }, season)) return []
    const services = servicesIn(now, book, season)
    return wasReady(then, services) ? [{ animal, then, now, end: at(closed), services }] : []
  })
  return found.flat()
}
