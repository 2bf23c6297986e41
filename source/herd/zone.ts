import type { IsoDate } from '../breeding/day.ts'
import type { Fact, FarmFact } from '../breeding/facts.ts'

const formats = new Map<string, Intl.DateTimeFormat>()

/**
 * The calendar date of an instant in a time zone; in UTC where the zone is unknown to this computer.
 *
 * @param zone IANA name
 * @example dateInZone(new Date('2026-05-28T13:00:00Z'), 'Pacific/Auckland') // '2026-05-29'
 */
export function dateInZone(instant: Date, zone: string): IsoDate {
  const parts = new Map(
    formatFor(zone)
      .formatToParts(instant)
      .map((part) => [part.type, part.value]),
  )
  return `${parts.get('year')?.padStart(4, '0')}-${parts.get('month')}-${parts.get('day')}`
}

/**
 * The clock on the wall at an instant in a time zone; in UTC where the zone is unknown to this computer.
 *
 * @example timeInZone(new Date('2026-05-28T04:15:00Z'), 'Europe/Dublin') // '05:15'
 */
export const timeInZone = (instant: Date, zone: string): string =>
  instant.toLocaleTimeString('en-GB', {
    hour: '2-digit',
    minute: '2-digit',
    timeZone: isZone(zone) ? zone : 'UTC',
  })

function formatFor(zone: string): Intl.DateTimeFormat {
  const found = formats.get(zone)
  if (found !== undefined) return found
  const format = makeFormat(zone)
  formats.set(zone, format)
  return format
}

function makeFormat(zone: string): Intl.DateTimeFormat {
  const style = {
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    calendar: 'iso8601',
    numberingSystem: 'latn',
  } as const
  try {
    return new Intl.DateTimeFormat('en-US', { ...style, timeZone: zone })
  } catch {
    return new Intl.DateTimeFormat('en-US', { ...style, timeZone: 'UTC' })
  }
}

const zones = new Map<string, boolean>()

/** Whether this computer knows a time zone of that name. A damaged file may name thousands: each is asked once. */
export function isZone(name: string): boolean {
  const known = zones.get(name)
  if (known !== undefined) return known
  let exists = true
  try {
    new Intl.DateTimeFormat('en', { timeZone: name })
  } catch {
    exists = false
  }
  if (zones.size < 1000) zones.set(name, exists)
  return exists
}

/** The farm's time zone by its latest farm fact; `UTC` where none is told. */
export function zoneOf(facts: readonly Fact[]): string {
  const farm = facts.findLast((fact): fact is FarmFact => fact.kind === 'farm')
  return farm?.zone ?? 'UTC'
}
