/** Dates as people write them in spreadsheets. They are read only in the form that the user named, never guessed. */
import { dayIso, type IsoDate, readDay } from '../../breeding/day.ts'

/** `day-first`: 28/05/2026. `month-first`: 05/28/2026. */
export type DateForm = 'day-first' | 'month-first'
export const dateForms: readonly DateForm[] = ['day-first', 'month-first']

const otherForm = /^(\d{1,2})([/.-])(\d{1,2})\2(\d{4})$/

/** Whether a text looks like a date in another form than YYYY-MM-DD: two short numbers and a year of four digits. */
export const isOtherForm = (text: string): boolean => otherForm.test(text)

/**
 * Reads a date: always as YYYY-MM-DD, and in the named form where one is named.
 *
 * @returns the date, or undefined where there is no such date in the calendar
 * @example readDate('28/05/2026', 'day-first') // '2026-05-28'
 */
export function readDate(text: string, form: DateForm | undefined): IsoDate | undefined {
  const parts = form === undefined ? null : otherForm.exec(text)
  const [, first = '', , second = '', year = ''] = parts ?? []
  const [month, day] = form === 'day-first' ? [second, first] : [first, second]
  const day8601 = readDay(parts === null ? text : `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`)
  return day8601 === undefined ? undefined : dayIso(day8601)
}
