/** `dawnlist sheet`: the sheet of a day, for print. */
import { morningList } from '../breeding/morning-list.ts'
import { sheetContent } from '../exchange/sheet/content.ts'
import { sheetHtml } from '../exchange/sheet/html.ts'
import { sheetText } from '../exchange/sheet/text.ts'
import { safeText } from '../words/safe.ts'
import type { Run } from './command.ts'
import { openForReading, statusOf } from './open-book.ts'
import { writeOut } from './write-out.ts'

export const run: Run = async (given, shell) => {
  const opened = await openForReading(given, shell)
  if (!opened.ok) {
    shell.tell(opened.problems)
    return statusOf(opened.problems)
  }
  const { book, day } = opened.value
  const content = sheetContent(book, morningList(book, day))
  const sheet = given.switches.has('text') ? sheetText(content) : sheetHtml(content)
  if (given.options.out === undefined) {
    shell.print(sheet)
    return 0
  }
  const written = await writeOut(given, given.options.out, sheet)
  if (!written.ok) {
    shell.tell(written.problems)
    return 1
  }
  shell.say(safeText(given.options.out))
  return 0
}
