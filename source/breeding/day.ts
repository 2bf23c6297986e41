/**
 * Day arithmetic. A day is a calendar date on the farm, held as the count of days since 1970-01-01.
 * Days are counted on the calendar and never by subtracting timestamps: clocks change twice a year.
 */

/** A calendar day: whole days since 1970-01-01 (proleptic Gregorian). Never a timestamp. */
export type Day = number & { readonly day: unique symbol }

/** A calendar date as text, `YYYY-MM-DD`. */
export type IsoDate = string

const daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334]

const isLeapYear = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0

const daysInMonth = (year: number, month: number): number =>
  month === 2
    ? isLeapYear(year)
      ? 29
      : 28
    : month === 4 || month === 6 || month === 9 || month === 11
      ? 30
      : 31

/**
 * The day of a year, month and day of the month that are known to exist.
 *
 * @param year 1-9999, @param month 1-12, @param dayOfMonth 1 to the length of the month
 * @example dayOf(1970, 1, 2) // 1
 */
export function dayOf(year: number, month: number, dayOfMonth: number): Day {
  const before = year - 1
  const leapDays = Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400)
  const monthDays = (daysBeforeMonth[month - 1] ?? 0) + (month > 2 && isLeapYear(year) ? 1 : 0)
  return (before * 365 + leapDays + monthDays + dayOfMonth - 719163) as Day
}

/**
 * Reads a date as text, strictly.
 *
 * @param text any text
 * @returns the day, or undefined where the text is not a date of the calendar written `YYYY-MM-DD`
 * @example readDay('2026-02-30') // undefined
 */
export function readDay(text: string): Day | undefined {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined
  const year = Number(text.slice(0, 4))
  const month = Number(text.slice(5, 7))
  const dayOfMonth = Number(text.slice(8))
  if (year < 1 || month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > daysInMonth(year, month))
    return undefined
  return dayOf(year, month, dayOfMonth)
}

const known = new Map<IsoDate, Day>()

/**
 * The day of a date that has been checked before (a date in the herd file). A herd has few different
 * dates and asks for each many times, so they are kept.
 *
 * @param iso a date of the calendar, `YYYY-MM-DD`
 * @throws RangeError where the text is no date: a programming error, the edge checks dates first
 * @example isoDay('2026-05-28') - isoDay('2026-05-01') // 27
 */
export function isoDay(iso: IsoDate): Day {
  const found = known.get(iso)
  if (found !== undefined) return found
  const day = readDay(iso)
  if (day === undefined) throw new RangeError(`not a date: ${iso}`)
  if (known.size > 50_000) known.clear()
  known.set(iso, day)
  return day
}

/** Year, month (1-12) and day of the month of a day. */
export function calendarOf(day: Day): { year: number; month: number; dayOfMonth: number } {
  // By the mean year, which is never too late, and too early on a few days around the turn of the year.
  let year = Math.floor((day + 719162) / 365.2425) + 1
  while (dayOf(year + 1, 1, 1) <= day) year += 1
  let month = 12
  while (dayOf(year, month, 1) > day) month -= 1
  return { year, month, dayOfMonth: day - dayOf(year, month, 1) + 1 }
}

/**
 * A day as text.
 *
 * @example dayIso(isoDay('2026-05-28')) // '2026-05-28'
 */
export function dayIso(day: Day): IsoDate {
  const { year, month, dayOfMonth } = calendarOf(day)
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`
}

/**
 * The day so many days later (earlier when negative). Service day is day 0: day 21 is `plusDays(service, 21)`.
 *
 * @example dayIso(plusDays(isoDay('2026-05-28'), 21)) // '2026-06-18'
 */
export const plusDays = (day: Day, days: number): Day => (day + days) as Day

/**
 * The same date so many years later; 29 February becomes 28 February in a common year.
 *
 * @example dayIso(plusYears(isoDay('2024-02-29'), 1)) // '2025-02-28'
 */
export function plusYears(day: Day, years: number): Day {
  const { year, month, dayOfMonth } = calendarOf(day)
  return dayOf(year + years, month, Math.min(dayOfMonth, daysInMonth(year + years, month)))
}

/** Day of the week, 0 Sunday to 6 Saturday. */
export const weekday = (day: Day): number => (((day + 4) % 7) + 7) % 7

/**
 * Mating start that makes calving begin on a planned day: planned start + 1 year - gestation days where the
 * planned start is this year's; in other words the planned calving start less the days of gestation.
 *
 * @param plannedCalvingStart the day calving should begin
 * @param gestationDays days, 260-300
 * @example dayIso(matingStartFor(isoDay('2026-08-01'), 282)) // '2025-10-23'
 */
export const matingStartFor = (plannedCalvingStart: Day, gestationDays: number): Day =>
  plusDays(plannedCalvingStart, -gestationDays)

/**
 * Planned calving start that follows from a mating start.
 *
 * @example dayIso(calvingStartFor(isoDay('2025-10-23'), 282)) // '2026-08-01'
 */
export const calvingStartFor = (matingStart: Day, gestationDays: number): Day =>
  plusDays(matingStart, gestationDays)
