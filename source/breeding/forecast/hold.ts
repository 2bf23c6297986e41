import { type Day, isoDay } from '../day.ts'
import type { Standing } from '../standing.ts'

/**
 * The last day of the hold that an animal is on: undefined where she is on none, `open` where no end is known.
 *
 * @example holdEnd(standing) // the day of '2026-06-12'
 */
export function holdEnd(standing: Standing): Day | 'open' | undefined {
  if (!standing.onHold) return undefined
  let end: Day | 'open' | undefined
  for (const { fact, day } of standing.animal.happenings) {
    if (fact.kind !== 'hold' || day >= standing.today) continue
    const until = fact.until === undefined ? 'open' : isoDay(fact.until)
    if (until === 'open' || end === undefined || end === 'open' || until > end) end = until
  }
  return end
}
