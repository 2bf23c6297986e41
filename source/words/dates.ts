/** Dates in words, the month always written out. */
import { format } from 'date-fns/format'
import { calendarOf, type Day } from '../breeding/day.ts'

const inWords = (day: Day, pattern: string): string => {
  const { year, month, dayOfMonth } = calendarOf(day)
  return format(new Date(year, month - 1, dayOfMonth, 12), pattern)
}

/** @example dateInWords(isoDay('2026-05-28')) // 'Thu 28 May 2026' */
export const dateInWords = (day: Day): string => inWords(day, 'EEE d MMM yyyy')

/** @example shortDate(isoDay('2026-06-11')) // 'Thu 11 Jun' */
export const shortDate = (day: Day): string => inWords(day, 'EEE d MMM')

/** @example dayAndMonth(isoDay('2026-06-11')) // '11 Jun' */
export const dayAndMonth = (day: Day): string => inWords(day, 'd MMM')
