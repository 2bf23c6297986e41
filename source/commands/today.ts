/** The one place that decides which day it is. */
import { type Day, isoDay, plusDays, readDay } from '../breeding/day.ts'
import { minuteOf } from '../breeding/moment.ts'
import { fault, type Outcome } from '../breeding/problem.ts'
import { dateInZone, timeInZone } from '../herd/zone.ts'
import type { Now } from '../morning/now.ts'

/**
 * The day that it is now in a time zone.
 *
 * @param zone an IANA name, `Europe/Dublin`; one that this computer does not know counts as UTC
 * @example today('Pacific/Auckland', new Date('2026-05-27T12:30:00Z')) // 28 May 2026
 */
export const today = (zone: string, now: Date = new Date()): Day => isoDay(dateInZone(now, zone))

/**
 * The day and the wall time that it is now in a time zone.
 *
 * @example nowOn('Europe/Dublin', new Date('2026-05-28T04:15:00Z')) // { day: 28 May 2026, time: '05:15' }
 */
export const nowOn = (zone: string, now: Date = new Date()): Now => ({
  day: today(zone, now),
  time: timeInZone(now, zone),
})

/**
 * A clock that begins at a moment of the past and goes on from there, for the sample herd.
 *
 * @param start the moment at which the program opened
 * @example clockFrom({ day: isoDay('2026-05-28'), time: '05:15' })('UTC').time // '05:15', a minute later '05:16'
 */
export function clockFrom(start: Now): () => Now {
  const opened = Date.now()
  return () => {
    const minutes = minuteOf(start.time) + Math.floor((Date.now() - opened) / 60_000)
    const ofDay = minutes % 1440
    const two = (count: number): string => String(count).padStart(2, '0')
    return {
      day: plusDays(start.day, Math.floor(minutes / 1440)),
      time: `${two(Math.floor(ofDay / 60))}:${two(ofDay % 60)}`,
    }
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
