/** `dawnlist list`: the morning list of a day as text, JSON or CSV. */
import { type HerdBook, openBook } from '../breeding/book.ts'
import type { Day } from '../breeding/day.ts'
import { morningList } from '../breeding/morning-list.ts'
import { listCsv } from '../exchange/list/csv.ts'
import { listJson } from '../exchange/list/json.ts'
import { listText } from '../exchange/list/text.ts'
import { knownOn } from '../herd/known-on.ts'
import type { Run } from './command.ts'
import { openForReading, statusOf } from './open-book.ts'

/** The book of what was recorded by the end of a day. */
const bookKnownOn = (book: HerdBook, day: Day): HerdBook => openBook(knownOn(book.facts, day, book.farm.zone))

export const run: Run = async (given, shell) => {
  const opened = await openForReading(given, shell)
  if (!opened.ok) {
    shell.tell(opened.problems)
    return statusOf(opened.problems)
  }
  const { day } = opened.value
  const book = given.switches.has('known-then') ? bookKnownOn(opened.value.book, day) : opened.value.book
  const list = morningList(book, day)
  if (given.switches.has('json')) shell.print(`${JSON.stringify(listJson(list), null, 1)}\n`)
  else if (given.switches.has('csv')) shell.print(listCsv(list))
  else shell.print(listText(book, list))
  return 0
}
