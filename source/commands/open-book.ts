/** Opens a herd file to be looked at: its book, and the day the command works on. */
import { archiveOf } from '../breeding/archive.ts'
import { type HerdBook, openBook } from '../breeding/book.ts'
import { type Day, dayIso } from '../breeding/day.ts'
import { notice, type Outcome, type Problem } from '../breeding/problem.ts'
import { openHerdFile } from '../herd/open.ts'
import type { Given, Shell } from './command.ts'
import { dayAskedFor } from './today.ts'

interface OpenedBook {
  readonly book: HerdBook
  readonly day: Day
}

/**
 * The book of the file that was named, and the day of `--date` or today on the farm. Notices are told.
 *
 * @returns the book and the day, or the faults of the file or of the date
 */
export async function openForReading(given: Given, shell: Shell): Promise<Outcome<OpenedBook>> {
  const opened = await openHerdFile(given.args.FILE ?? '')
  if (!opened.ok) return opened
  shell.tell(opened.value.problems.filter((problem) => problem.code !== 'herd-read-only'))
  const book = openBook(opened.value.facts)
  const day = dayAskedFor(given.options.date, book.farm.zone)
  if (!day.ok) return day
  shell.tell(archivedBefore(book, day.value))
  return { ok: true, value: { book, day: day.value } }
}

/** A notice where facts that a day rests on have gone to an archive since. */
function archivedBefore(book: HerdBook, day: Day): Problem[] {
  const archive = archiveOf(book)
  if (archive === undefined || dayIso(day) >= archive.date) return []
  const { before, file, date } = archive
  return [notice('archive-there', '', { before, archive: file, day: date })]
}

/** Exit status of problems with the words that were typed, rather than with the file. */
export const statusOf = (problems: readonly { readonly code: string }[]): number =>
  problems.some((problem) => problem.code.startsWith('option-')) ? 2 : 1
