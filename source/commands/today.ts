/** The one place that decides which day it is. */
import { type Day, isoDay, readDay } from '../breeding/day.ts'
import { fault, type Outcome } from '../breeding/problem.ts'

/**
 * The day that it is now in a time zone.
 *
 * @param zone an IANA name, `Europe/Dublin`; one that this computer does not know counts as UTC
 * @example today('Pacific/Auckland', Date.UTC(2026, 4, 27, 12, 30)) // 28 May 2026
 */
export function today(zone: string, instant: number = Date.now()): Day {
  return isoDay(new Intl.DateTimeFormat('en-CA', { ...parts, timeZone: knownZone(zone) }).format(instant))
}

const parts = { year: 'numeric', month: '2-digit', day: '2-digit' } as const

function knownZone(zone: string): string {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone
  } catch {
    return 'UTC'
  }
}

/**
 * The day that a command works on: the one typed after `--date`, else today on the farm.
 *
 * @param typed the value of `--date`, if there was one
 * @param zone time zone of the farm
 * @returns the day, or the problem option-date
 */
export function dayAskedFor(typed: string | undefined, zone: string): Outcome<Day> {
  if (typed === undefined) return { ok: true, value: today(zone) }
  const day = readDay(typed)
  return day === undefined
    ? { ok: false, problems: [fault('option-date', '', { value: typed })] }
    : { ok: true, value: day }
}
