/** Key dates as a calendar file. Source: RFC 5545, Internet Calendaring and Scheduling (iCalendar), 2009. */
import { type Day, dayIso, plusDays } from '../../breeding/day.ts'
import { keyDateName, keyDateTodo } from '../../words/key-dates.ts'
import type { CalendarEvent } from './events.ts'
import { escaped, folded } from './lines.ts'

interface CalendarOptions {
  readonly farm: string
  /** Counts the saves of the herd: a later one replaces the events of an earlier one. */
  readonly revision: number
  /** When the herd was last changed, `2026-05-28T04:15:09.120Z`. */
  readonly changed: string
}

/**
 * A calendar of all-day events. The same herd always makes the same bytes, and each event keeps its name, so that
 * reading the file into a calendar twice changes nothing.
 *
 * @returns text in UTF-8 with CRLF
 */
export function calendarText(events: readonly CalendarEvent[], options: CalendarOptions): string {
  const stamp = `${options.changed.slice(0, 19).replace(/[-:]/g, '')}Z`
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//dawnlist//key dates//EN',
    'CALSCALE:GREGORIAN',
    ...events.flatMap(({ date, uid }) => [
      'BEGIN:VEVENT',
      `UID:${uid}`,
      `DTSTAMP:${stamp}`,
      `SEQUENCE:${options.revision}`,
      `DTSTART;VALUE=DATE:${basicDate(date.day)}`,
      `DTEND;VALUE=DATE:${basicDate(plusDays(date.day, 1))}`,
      `SUMMARY:${escaped(keyDateName(date))}`,
      `DESCRIPTION:${escaped(keyDateTodo(date))}`,
      ...(options.farm === '' ? [] : [`LOCATION:${escaped(options.farm)}`]),
      'TRANSP:TRANSPARENT',
      'END:VEVENT',
    ]),
    'END:VCALENDAR',
  ]
  return lines.map(folded).join('')
}

const basicDate = (day: Day): string => dayIso(day).replaceAll('-', '')
