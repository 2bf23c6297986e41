/**
 * How many days later an animal that is not in calf comes in heat again.
 */
import { keeping } from '../kept.ts'
import { normalDays } from '../statistics/normal.ts'
import type { Rates } from './rates.ts'

/** What the days are counted from: a service that failed, or a heat that was not served. */
export type CycleStart = 'service' | 'heat'

/** Chance by day: entry d is the chance that the next heat comes d days later; entries sum to 1. */
export type DaysToHeat = readonly number[]

const kept = keeping<string, DaysToHeat>(200)

function compute(start: CycleStart, mean: number, { cycle, lateReturn }: Rates): DaysToHeat {
  const late = start === 'service' ? lateReturn.share : 0
  const days = new Array<number>((late > 0 ? Math.max(cycle.to, lateReturn.to) : cycle.to) + 1).fill(0)
  const add = (share: number, first: number, chances: readonly number[]): void => {
    for (const [i, chance] of chances.entries())
      days[first + i] = (days[first + i] as number) + share * chance
  }
  add(1 - late, cycle.from, normalDays(mean, cycle.sd, cycle.from, cycle.to))
  if (late > 0)
    add(late, lateReturn.from, normalDays(lateReturn.mean, lateReturn.sd, lateReturn.from, lateReturn.to))
  return days
}

/** What the curves depend on, as a key. */
export const cycleKey = (start: CycleStart, mean: number, { cycle, lateReturn }: Rates): string =>
  [
    start,
    mean,
    cycle.sd,
    cycle.from,
    cycle.to,
    ...(start === 'service' ? Object.values(lateReturn) : []),
  ].join(' ')

/**
 * Days to the next heat. After a heat: the plain cycle. After a service that failed: a share comes late, its embryo
 * having died. Computed once for the same rates and kept.
 *
 * @param mean mean days of the cycle (22; first-calvers and maidens 21)
 * @returns entry d is the chance of d days, d from 0
 * @source Remnant et al., Variation in the inter-service intervals of UK dairy cows, J Dairy Sci 98, 2015; the late share
 *   is fitted to published shares of returns and of empty cows that did not return
 * @example daysToHeat('heat', 22, defaultRates)[22] // 0.1242
 */
export function daysToHeat(start: CycleStart, mean: number, rates: Rates): DaysToHeat {
  return kept(cycleKey(start, mean, rates), () => compute(start, mean, rates))
}

/**
 * Days to the next heat that is served, where a heat that comes too soon after a service is not: it passes, and the next
 * one comes a cycle later.
 *
 * @param days to the next heat after the service, @param cycle days from a heat to the next
 * @param from first day after the service that may be too soon, @param before the first that is not; 0 or more
 * @returns entry d is the chance of d days; entries sum to what `days` sums to
 * @example servedAfter(daysToHeat('service', 22, rates), daysToHeat('heat', 22, rates), 0, 18)[17] // 0
 */
export function servedAfter(days: DaysToHeat, cycle: DaysToHeat, from: number, before: number): DaysToHeat {
  if (from >= before) return days
  const served = [...days]
  for (let d = from; d < before; d += 1) {
    const share = served[d] as number
    served[d] = 0
    for (let e = 1; e < cycle.length; e += 1)
      served[d + e] = (served[d + e] ?? 0) + share * (cycle[e] as number)
  }
  return served
}

/**
 * Mean days of the cycle of an animal.
 *
 * @param parity calvings; 0 is a maiden
 * @example cycleMean(1, defaultRates) // 21
 */
export const cycleMean = (parity: number, { cycle }: Rates): number =>
  parity <= 1 ? cycle.meanYoung : cycle.mean
