/**
 * The herd's own rates, counted from its book.
 */
import type { HerdBook } from '../book.ts'
import {
  type OwnConception,
  ownConception,
  ownHeatSeen,
  type ServiceResults,
} from '../chances/own-results.ts'
import { type Rates, type ServiceClass, serviceClass, serviceClasses } from '../chances/rates.ts'
import type { Heat, Service } from '../cycle.ts'
import { type Day, plusDays } from '../day.ts'
import { PRE_MATING, type Season } from '../season.ts'
import type { Standing } from '../standing.ts'
import { watchedDays } from '../watched-weeks.ts'
import { serviceResults } from './service-results.ts'

/** Services of the last 24 months count, once they are 42 days old. */
const DAYS_BACK = 730
const DAYS_OLD = 42
/** A heat that was not served is seen again on these days after it. */
const AGAIN_FROM = 15
const AGAIN_TO = 29

/** The class of a service; AI without a kind of straw counts as conventional. */
export const classOf = (service: Service): ServiceClass =>
  serviceClass(service.maiden, service.ai ? (service.straw ?? 'conventional') : 'natural')

export interface ClassCount extends ServiceResults {
  /** Services of the same time whose end is not known; they are left out. */
  readonly unknown: number
}

/**
 * Services held and failed by class: those of the last 24 months, 42 days old or more.
 *
 * @param standings of all animals on one day, those that left too
 * @example countServices(standings, book).cowSexed // { held: 31, failed: 36, unknown: 2 }
 */
export function countServices(
  standings: readonly Standing[],
  book: HerdBook,
): Record<ServiceClass, ClassCount> {
  const counts = Object.fromEntries(
    serviceClasses.map((name) => [name, { held: 0, failed: 0, unknown: 0 }]),
  ) as Record<ServiceClass, { held: number; failed: number; unknown: number }>
  for (const standing of standings) {
    for (const { service, end } of serviceResults(standing, book)) {
      const age = standing.today - service.day
      if (age >= DAYS_OLD && age <= DAYS_BACK) counts[classOf(service)][end] += 1
    }
  }
  return counts
}

/** Whether a heat was seen again; undefined where it could not have been, or its time is not over. */
function seenAgain(
  standing: Standing,
  heats: readonly Heat[],
  heat: Heat,
  watched: (day: Day) => boolean,
): boolean | undefined {
  const [from, to] = [plusDays(heat.day, AGAIN_FROM), plusDays(heat.day, AGAIN_TO)]
  if (to >= standing.today || (standing.leftOn !== undefined && standing.leftOn <= to)) return undefined
  for (let day = from; day <= to; day = plusDays(day, 1)) if (!watched(day)) return undefined
  return heats.some((other) => other.day >= from && other.day <= to)
}

/**
 * Sure heats that were not served, and whether they were seen again 15-29 days later. Only where each of those days was
 * watched, lay in the pre-mating or AI weeks, and her cycle went on; not in calf, not after a service.
 *
 * @returns heats seen again, and not
 * @example countHeats(standings, book, today) // { again: 41, notAgain: 6 }
 */
export function countHeats(
  standings: readonly Standing[],
  book: HerdBook,
  today: Day,
): { again: number; notAgain: number } {
  const counted = { again: 0, notAgain: 0 }
  const seasons = book.allSeasons.filter(({ matingStart }) => today - matingStart <= DAYS_BACK)
  for (const season of seasons) {
    const ofBlock = standings.filter(({ block }) => block === season.block)
    const watched = watchedInSeason(season, ofBlock, today)
    for (const standing of ofBlock) {
      for (const [i, cycle] of standing.cycles.entries()) {
        const closed = standing.cycles[i + 1]?.opened
        for (const heat of cycle.heats) {
          if (!heat.sure || heat.service !== undefined) continue
          if (cycle.services.some((service) => service.day < heat.day)) continue
          if (closed !== undefined && closed <= plusDays(heat.day, AGAIN_TO)) continue
          const again = seenAgain(standing, cycle.heats, heat, watched)
          if (again !== undefined) counted[again ? 'again' : 'notAgain'] += 1
        }
      }
    }
  }
  return counted
}

function watchedInSeason(season: Season, ofBlock: readonly Standing[], today: Day): (day: Day) => boolean {
  const watched = watchedDays(season, ofBlock, today)
  return (day) => {
    const s = day - season.matingStart
    return s >= PRE_MATING && s <= season.aiEnd && watched(day)
  }
}

/** The herd's own rates and the counts that they rest on. */
export interface OwnRates {
  readonly conception: OwnConception
  /** Chance that a heat is seen, 0 to 1. */
  readonly heatSeen: number
  readonly services: Readonly<Record<ServiceClass, ClassCount>>
  readonly heats: { readonly again: number; readonly notAgain: number }
}

/**
 * The herd's own rates on a day.
 *
 * @param standings of all animals on the day, @param rates the policy's, as the guess beforehand
 * @example ownRates(standings, book, today, ratesOfPolicy(book.policy)).conception.cowConventional.mean // 0.531
 */
export function ownRates(standings: readonly Standing[], book: HerdBook, today: Day, rates: Rates): OwnRates {
  const services = countServices(standings, book)
  const heats = countHeats(standings, book, today)
  return { conception: ownConception(rates, services), heatSeen: ownHeatSeen(rates, heats), services, heats }
}
