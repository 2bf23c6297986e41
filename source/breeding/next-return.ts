/** When an animal that is not in calf comes on heat again. */
import { type Day, plusDays } from './day.ts'
import type { Policy } from './policy.ts'
import type { Standing } from './standing.ts'

interface NextReturn {
  readonly from: Day
  readonly to: Day
  readonly likely: Day
}

/** The second round of returns after a service: days 36-48. */
const SECOND_FROM = 36
const SECOND_TO = 48

/**
 * The next days on which a return, or the next heat, is likely: 18-24 days after her latest sure heat or service,
 * then 36-48, the first of them that is not over.
 * Source: Remnant 2019, Measuring dairy herd heat detection (University of Nottingham), the classes of intervals.
 *
 * @returns undefined in calf, without a sure heat in this cycle, or when both rounds are over
 */
export function nextReturn(standing: Standing, policy: Policy): NextReturn | undefined {
  const heat = standing.latestSureHeat
  if (standing.inCalf || heat === undefined) return undefined
  const start = heat.service?.day ?? heat.day
  const mean = standing.parity <= 1 ? policy.returnMeanYoung : policy.returnMean
  const rounds = [
    { from: policy.watchFrom, to: policy.watchTo, likely: mean },
    { from: SECOND_FROM, to: SECOND_TO, likely: 2 * mean },
  ]
  const round = rounds.find((one) => plusDays(start, one.to) >= standing.today)
  if (round === undefined) return undefined
  return {
    from: plusDays(start, round.from),
    to: plusDays(start, round.to),
    likely: plusDays(start, Math.round(round.likely)),
  }
}
