/** The hours after a heat at which a sexed straw may be used. */
import type { Policy } from '../policy.ts'
import type { Serving } from '../session.ts'

/** Hours after the onset that suit a sexed straw. */
export const SEXED_FROM_HOUR = 14
export const SEXED_TO_HOUR = 20

/**
 * Whether a session suits a sexed straw: by the hour, and where the policy is strict, 14 to 20 hours after the
 * heat's moment; at the next milking at most 20 hours, because the moment seen is later than the onset. A service
 * without a heat (fixed time) has no such hours and does not suit.
 * Source: agriland.co.uk, Sexed semen: what time is optimal.
 *
 * @example sexedHoursFit({ session: 'evening', hours: 9, fromOnset: false }, standardPolicy) // true
 */
export function sexedHoursFit(serving: Serving, policy: Policy): boolean {
  const { hours } = serving
  if (hours === undefined || hours > SEXED_TO_HOUR) return false
  const strict = policy.sexedHoursStrict || policy.servingTime === 'by-the-hour'
  return hours >= (strict ? SEXED_FROM_HOUR : 0)
}

/** Whether a session lies in the best hours after an onset: 14 to 20. */
export const sexedHoursBest = (serving: Serving): boolean =>
  serving.fromOnset &&
  serving.hours !== undefined &&
  serving.hours >= SEXED_FROM_HOUR &&
  serving.hours <= SEXED_TO_HOUR
