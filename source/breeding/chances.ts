/**
 * What can be said of an animal some days after a service or a heat: is she in calf, will she come again today.
 */
import { type CycleStart, cycleKey, daysToHeat } from './chances/cycle.ts'
import type { Rates } from './chances/rates.ts'
import { keeping } from './kept.ts'

/** First returns seen, by days since the service or heat (entry 0 is that day itself). */
export interface Returns {
  /** Chance that an open animal's first return seen is on day k. */
  readonly onDay: readonly number[]
  /** Chance that it is on day k or before. */
  readonly byDay: readonly number[]
}

/** Days after which nothing changes any more. */
const horizon = 200

const kept = keeping<string, Returns>(200)

function compute(start: CycleStart, mean: number, rates: Rates, unwatched?: ReadonlySet<number>): Returns {
  const first = daysToHeat(start, mean, rates)
  const cycle = daysToHeat('heat', mean, rates)
  const missed: number[] = []
  const onDay: number[] = []
  const byDay: number[] = []
  for (let k = 0; k <= horizon; k += 1) {
    let heat = first[k] ?? 0
    for (let d = rates.cycle.from; d < cycle.length && d <= k; d += 1)
      heat += (missed[k - d] as number) * (cycle[d] as number)
    const seen = unwatched?.has(k) ? 0 : rates.heatSeen * heat
    missed.push(heat - seen)
    onDay.push(seen)
    byDay.push(Math.min(1, (byDay.at(-1) ?? 0) + seen))
  }
  return { onDay, byDay }
}

/**
 * Returns of an open animal. She comes again and again, seen or not, until one return is seen. Computed once for the
 * same rates and kept.
 *
 * @param start a service that failed, or a heat that was not served
 * @param mean mean days of her cycle
 * @param unwatched days since the start on which nobody watched (before the mating start); absent: none
 * @example returnsAfter('service', 22, defaultRates).byDay[24] // 0.6702
 */
export function returnsAfter(
  start: CycleStart,
  mean: number,
  rates: Rates,
  unwatched?: ReadonlySet<number>,
): Returns {
  if (unwatched && unwatched.size > 0) return compute(start, mean, rates, unwatched)
  const key = `${rates.heatSeen} ${cycleKey(start, mean, rates)} ${Object.values(rates.cycle).join(' ')}`
  return kept(key, () => compute(start, mean, rates))
}

const at = (values: readonly number[], day: number): number => values[Math.min(day, values.length - 1)] ?? 0

/**
 * Chance that she is in calf when no return was seen from the service through day k.
 *
 * @param conception chance that the service held, 0 to 1
 * @param k days since the service
 * @source Bayes; the same form as freedom from disease after negative tests
 * @example inCalfWithoutReturn(0.55, 24, returnsAfter('service', 22, defaultRates)) // 0.7875
 */
export function inCalfWithoutReturn(conception: number, k: number, returns: Returns): number {
  if (conception === 0) return 0
  return conception / (conception + (1 - conception) * (1 - at(returns.byDay, k)))
}

/**
 * Chance that a return is seen on day k when none was seen before.
 *
 * @param conception chance that the service held, 0 to 1; for a heat not served 0
 * @param k days since the service or heat
 * @param known the last day through which none was seen, up to k - 1; the day before k unless told
 * @example returnToday(0.55, 21, returnsAfter('service', 22, defaultRates)) // 0.0519
 */
export function returnToday(conception: number, k: number, returns: Returns, known = k - 1): number {
  const open = 1 - conception
  const unseen = conception + open * (1 - at(returns.byDay, known))
  return unseen <= 0 || k >= returns.onDay.length ? 0 : (open * at(returns.onDay, k)) / unseen
}

/**
 * Both chances as the morning list shows them, made before the day's heats are seen.
 *
 * @param k days from the service or heat to the list's day, 1 or more
 * @example morningChances(0.55, 22, returnsAfter('service', 22, defaultRates)) // { inCalf: 0.6614, returnToday: 0.0576 }
 */
export const morningChances = (
  conception: number,
  k: number,
  returns: Returns,
): { inCalf: number; returnToday: number } => ({
  inCalf: inCalfWithoutReturn(conception, k - 1, returns),
  returnToday: returnToday(conception, k, returns),
})
