/** The chances of one animal on the morning of a day. */
import type { HerdBook } from './book.ts'
import { cycleMean } from './chances/cycle.ts'
import { type Rates, serviceClass } from './chances/rates.ts'
import { inCalfWithoutReturn, type Returns, returnsAfter, returnToday } from './chances.ts'
import type { Service } from './cycle.ts'
import type { Day } from './day.ts'
import type { Policy } from './policy.ts'
import { checkedEmpty, returned } from './questions.ts'
import type { Standing } from './standing.ts'

/** Chance that a service holds, by the class of animal and straw. */
export const conceptionOfService = (service: Service, rates: Rates): number =>
  rates.conception[serviceClass(service.maiden, service.ai ? (service.straw ?? 'conventional') : 'natural')]

/** Returns of an open animal after a service. */
export const returnsOf = (service: Service, rates: Rates): Returns =>
  returnsAfter('service', cycleMean(service.parity, rates), rates)

/**
 * Chance that she is in calf on the morning of the standing's day, before that day's heats are seen: what is known
 * where it is known, else from her last service and the days without a return.
 *
 * @returns 0-1; undefined where she has not been served in this cycle, and where she is known not to be in calf to her
 *   service but a bull was with her since
 */
export function chanceInCalf(standing: Standing, book: HerdBook, rates: Rates): number | undefined {
  if (standing.inCalf) return 1
  const service = standing.lastService
  if (service === undefined) return undefined
  if (checkedEmpty(standing) || returned(standing, book.policy.watchFrom))
    return perhapsByBull(standing, book) ? undefined : 0
  return inCalfWithoutReturn(
    conceptionOfService(service, rates),
    standing.today - service.day - 1,
    returnsOf(service, rates),
  )
}

/**
 * A bull was with her after her return, or too shortly before the empty result (42 days) for his calf to be found.
 * Source: DairyNZ, Pregnancy testing; Clutha Vets, Getting the most from pregnancy testing.
 */
function perhapsByBull(standing: Standing, book: HerdBook): boolean {
  const withBull = standing.lastWithBull
  if (withBull === undefined) return false
  const check = standing.countingCheck
  if (check?.fact.result === 'empty') return check.day - withBull < book.policy.finalCheckDays
  const heat = standing.latestSureHeat
  return heat !== undefined && withBull > heat.day
}

/**
 * Chance that her return to the last service is seen on a later day, as known on the morning of the standing's day.
 *
 * @param rates of the herd on the standing's day, @param day on which it would be seen, the standing's day or later
 * @returns 0-1; 0 where no return is awaited
 */
export function returnsExpected(standing: Standing, policy: Policy, rates: Rates, day: Day): number {
  const service = standing.lastService
  if (service === undefined || standing.inCalf || !standing.inHerd) return 0
  if (standing.countingCheck !== undefined || returned(standing, policy.watchFrom)) return 0
  const known = standing.today - service.day - 1
  return returnToday(conceptionOfService(service, rates), day - service.day, returnsOf(service, rates), known)
}
