/** Wall times on the farm and instants in UTC, as the ICAR ADE standard wants them. */
import { type IsoDate, readDay } from '../../breeding/day.ts'
import { momentOf } from '../../breeding/moment.ts'

const formats = new Map<string, Intl.DateTimeFormat>()

function formatFor(zone: string): Intl.DateTimeFormat {
  const found = formats.get(zone)
  if (found !== undefined) return found
  const parts = {
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  } as const
  const style = { ...parts, hourCycle: 'h23', calendar: 'iso8601', numberingSystem: 'latn' } as const
  let format: Intl.DateTimeFormat
  try {
    format = new Intl.DateTimeFormat('en-US', { ...style, timeZone: zone })
  } catch {
    format = new Intl.DateTimeFormat('en-US', { ...style, timeZone: 'UTC' })
  }
  formats.set(zone, format)
  return format
}

/** The wall clock of an instant, as milliseconds of UTC that would show the same. */
function wallOf(instant: number, zone: string): number {
  const parts = new Map(
    formatFor(zone)
      .formatToParts(new Date(instant))
      .map(({ type, value }) => [type, Number(value)]),
  )
  const part = (name: Intl.DateTimeFormatPartTypes): number => parts.get(name) ?? 0
  return Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'), part('second'))
}

const MINUTE = 60_000
const text = (instant: number): string => `${new Date(instant).toISOString().slice(0, 19)}Z`

/**
 * A date and wall time on the farm as an instant. Without a time it is exactly 00:00:00Z of that date, which says
 * "no time"; so a time that falls on exactly that instant is written a second later. A time that the clock leaves out
 * in spring counts on from before: where it is left out at midnight it stays on its date.
 *
 * @param time `HH:MM`, `morning`, `evening` or nothing
 * @param milkings of the farm, @param zone its time zone
 * @example instantOf('2026-05-28', '06:10', farm) // '2026-05-28T05:10:00Z' in Dublin
 */
export function instantOf(
  date: IsoDate,
  time: string | undefined,
  farm: { readonly zone: string; readonly milkings: readonly string[] },
): string {
  const midnight = Date.parse(`${date}T00:00:00Z`)
  if (time === undefined) return text(midnight)
  const wall = midnight + momentOf(time, farm.milkings) * MINUTE
  const first = wall - (wallOf(wall, farm.zone) - wall)
  const second = wall - (wallOf(first, farm.zone) - first)
  const isLeftOut = wallOf(second, farm.zone) !== wall
  const instant = isLeftOut ? Math.max(first, second) : second
  return text(instant % (24 * 60 * MINUTE) === 0 ? instant + 1000 : instant)
}

/** A date, and a time where one was told. */
interface Moment {
  readonly date: IsoDate
  readonly time?: string
}

const dateOnly = /^\d{4}-\d{2}-\d{2}$/
const dateTime = /^(\d{4}-\d{2}-\d{2})[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?\s*(Z|[+-]\d{2}:?\d{2})?$/i

/**
 * Reads an instant as a date and wall time on the farm. A date alone, and exactly 00:00:00Z, is a date without a
 * time and takes no shift. A time without a zone counts as UTC, which the standard demands.
 *
 * @returns undefined where the text is no date and time of the calendar
 * @example momentIn('2026-05-28T05:10:00Z', 'Europe/Dublin') // { date: '2026-05-28', time: '06:10' }
 */
export function momentIn(typed: string, zone: string): Moment | undefined {
  const plain = typed.trim()
  if (dateOnly.test(plain)) return readDay(plain) === undefined ? undefined : { date: plain }
  const [, date = '', hour = '', minute = '', second = '00', offset = 'Z'] = dateTime.exec(plain) ?? []
  if (readDay(date) === undefined || Number(hour) > 23 || Number(minute) > 59 || Number(second) > 60)
    return undefined
  const utc = Date.parse(`${date}T${hour}:${minute}:00Z`) - minutesOf(offset) * MINUTE
  if (offset.toUpperCase() === 'Z' && `${hour}${minute}${second}` === '000000') return { date }
  const wall = new Date(wallOf(utc, zone)).toISOString()
  return { date: wall.slice(0, 10), time: wall.slice(11, 16) }
}

/** Minutes east of UTC. */
function minutesOf(offset: string): number {
  if (offset.toUpperCase() === 'Z') return 0
  const minutes = Number(offset.slice(1, 3)) * 60 + Number(offset.slice(-2))
  return offset.startsWith('-') ? -minutes : minutes
}
