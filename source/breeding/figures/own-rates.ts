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
import type { Cycle, Heat, Service } from '../cycle.ts'
import { type Day, plusDays } from '../day.ts'
import { PRE_MATING, type Season, seasonDay } from '../season.ts'
import type { Standing } from '../standing.ts'
import { watchedDays } from '../watched-weeks.ts'
import { resultsSince } from './service-results.ts'

/** Services of the last 24 months count, once they are 42 days old. */
export const DAYS_BACK = 730
const DAYS_OLD = 42
/** A heat that was not served is seen again on these days after it. */
const AGAIN_FROM = 15
const AGAIN_TO = 29

/** The class of a service; AI without a kind of straw counts as conventional. */
const classOf = (service: Service): ServiceClass =>
  serviceClass(service.maiden, service.ai ? (service.straw ?? 'conventional') : 'natural')

interface ClassCount extends ServiceResults {
  /** Services of the same time whose end is not known; they are left out. */
  readonly unknown: number
}

/**
 * Services held and failed by class: those of the last 24 months, 42 days old or more.
 *
 * @param standings of all animals on one day, those that left too
 * @example countServices(standings, book).cowSexed // { held: 31, failed: 36, unknown: 2 }
 */
function countServices(standings: readonly Standing[], book: HerdBook): Record<ServiceClass, ClassCount> {
  const counts = Object.fromEntries(
    serviceClasses.map((name) => [name, { held: 0, failed: 0, unknown: 0 }]),
  ) as Record<ServiceClass, { held: number; failed: number; unknown: number }>
  for (const standing of standings) {
    for (const { service, end } of resultsSince(standing, book, standing.today - DAYS_BACK)) {
      const age = standing.today - service.day
      if (age >= DAYS_OLD && age <= DAYS_BACK) counts[classOf(service)][end] += 1
    }
  }
  return counts
}

/** A sure heat that was not served and no service came before, in a cycle that went on. */
interface Unserved {
  readonly heat: Heat
  readonly cycle: Cycle
  readonly standing: Standing
}

/** Such heats of the last 24 months whose days 15-29 are over, by block. */
function unservedHeats(standings: readonly Standing[], today: Day): Map<string, Unserved[]> {
  const byBlock = new Map<string, Unserved[]>()
  for (const standing of standings) {
    const { block, cycles, leftOn } = standing
    if (block === undefined) continue
    for (const [i, cycle] of cycles.entries()) {
      const served = cycle.services[0]?.day ?? today
      const closed = Math.min(cycles[i + 1]?.opened ?? today, leftOn ?? today)
      for (const heat of cycle.heats) {
        if (heat.day > served || heat.day + AGAIN_TO >= closed) break
        if (!heat.sure || heat.service !== undefined || today - heat.day > DAYS_BACK) continue
        const ofBlock = byBlock.get(block)
        if (ofBlock === undefined) byBlock.set(block, [{ heat, cycle, standing }])
        else ofBlock.push({ heat, cycle, standing })
      }
    }
  }
  return byBlock
}

/** Whether the days 15-29 after a heat lay in the pre-mating or AI weeks. */
const isFollowed = (heat: Heat, season: Season): boolean =>
  seasonDay(season, heat.day) + AGAIN_FROM >= PRE_MATING &&
  seasonDay(season, heat.day) + AGAIN_TO <= season.aiEnd

/** Whether each of the days 15-29 after a heat was watched. */
function watchedAfter(heat: Heat, season: Season, watched: (day: Day) => boolean): boolean {
  const [from, to] = [plusDays(heat.day, AGAIN_FROM), plusDays(heat.day, AGAIN_TO)]
  for (let day = from; day <= to && day < season.matingStart; day = plusDays(day, 1))
    if (!watched(day)) return false
  return true
}

/**
 * Sure heats that were not served, and whether they were seen again 15-29 days later. Only where each of those days was
 * watched, lay in the pre-mating or AI weeks, and her cycle went on; not in calf, not after a service.
 *
 * @returns heats seen again, and not
 * @example countHeats(standings, book, today) // { again: 41, notAgain: 6 }
 */
function countHeats(
  standings: readonly Standing[],
  book: HerdBook,
  today: Day,
): { again: number; notAgain: number } {
  const counted = { again: 0, notAgain: 0 }
  for (const [block, heats] of unservedHeats(standings, today)) {
    const seasons = (book.seasons.get(block) ?? []).filter(
      ({ matingStart }) => today - matingStart <= DAYS_BACK,
    )
    const ofBlock = standings.filter((standing) => standing.block === block)
    for (const season of seasons) {
      const inSeason = heats.filter(({ heat }) => isFollowed(heat, season))
      if (inSeason.length === 0) continue
      const watched = watchedDays(season, ofBlock, today)
      for (const { heat, cycle } of inSeason) {
        if (!watchedAfter(heat, season, watched)) continue
        const again = cycle.heats.some(
          ({ day }) => day >= heat.day + AGAIN_FROM && day <= heat.day + AGAIN_TO,
        )
        counted[again ? 'again' : 'notAgain'] += 1
      }
    }
  }
  return counted
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
