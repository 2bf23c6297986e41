/** What the morning list says of a cow, day by day, one line a change. */
import { openBook } from '../../../source/breeding/book.ts'
import { calendarOf, type Day, isoDay, plusDays } from '../../../source/breeding/day.ts'
import type { Fact } from '../../../source/breeding/facts.ts'
import type { Row } from '../../../source/breeding/list.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'

const MATING_START = isoDay('2026-05-01')
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

/** Where she stands: section, reasons, session, warnings, the section otherwise, and whether it is done. */
function place(row: Row | undefined): string {
  if (row === undefined) return '-'
  const session = row.session === undefined ? '' : ` ${row.session}`
  const warned = row.warnings.length === 0 ? '' : ` ! ${row.warnings.join(' ')}`
  const also = row.also === undefined ? '' : `; else ${row.also}`
  return `${row.section} ${row.reasons.join(' ')}${session}${warned}${also}${row.done ? ', done' : ''}`
}

/**
 * Her lines from a day to another.
 *
 * @example seasonOf(facts, isoDay('2026-03-27'), isoDay('2026-04-20'))[0] // '27 Mar -35 heat-record none-seen'
 */
export function seasonOf(facts: readonly Fact[], from: Day, to: Day): string[] {
  const book = openBook(facts)
  const lines: string[] = []
  let before: string | undefined
  for (let day = from; day <= to; day = plusDays(day, 1)) {
    const now = place(morningList(book, day).rows.find((row) => row.number === '1'))
    if (now !== before) {
      const { month, dayOfMonth } = calendarOf(day)
      lines.push(`${dayOfMonth} ${months[month - 1]} ${day - MATING_START} ${now}`)
    }
    before = now
  }
  return lines
}
