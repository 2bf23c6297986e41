import { type Day, dayIso, plusDays } from '../breeding/day.ts'
import type { Fact } from '../breeding/facts.ts'
import { dateInZone } from './zone.ts'

const quarter = 15 * 60_000

/**
 * The facts that were recorded by the end of a day on the farm: what was known then, corrections made since left out.
 *
 * @param facts in order of recording, @param zone IANA name
 * @example knownOn(facts, isoDay('2026-05-28'), 'Europe/Dublin') // without what was recorded on 29 May or later
 */
export function knownOn(facts: readonly Fact[], day: Day, zone: string): readonly Fact[] {
  const end = endOf(day, zone).toISOString().slice(0, 16)
  return facts.filter(({ at }) => at < end)
}

/** The instant a day ends at in a zone, which is a quarter of an hour of UTC everywhere: clocks are changed by such. */
function endOf(day: Day, zone: string): Date {
  const date = dayIso(day)
  const later = plusDays(day, 2)
  let end = Date.parse(`${dayIso(later)}T00:00:00Z`)
  while (dateInZone(new Date(end - quarter), zone) > date) end -= quarter
  return new Date(end)
}
