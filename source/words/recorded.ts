/** Who recorded a fact, and when. */
import { isoDay } from '../breeding/day.ts'
import type { Fact } from '../breeding/facts.ts'
import { dateInZone, timeInZone } from '../herd/zone.ts'
import { dateInWords } from './dates.ts'
import { safeText } from './safe.ts'

/**
 * Who recorded a fact and when by the clock on the farm. Harmless for a terminal.
 *
 * @param zone time zone of the farm
 * @example recordedWords(heat, 'Europe/Dublin') // 'by MK, Thu 28 May 2026 05:15'
 */
export function recordedWords({ by, at }: Pick<Fact, 'by' | 'at'>, zone: string): string {
  const instant = new Date(at)
  const when = `${dateInWords(isoDay(dateInZone(instant, zone)))} ${timeInZone(instant, zone)}`
  return by === undefined || by === '' ? when : `by ${safeText(by)}, ${when}`
}
