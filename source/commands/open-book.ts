/** Opens a herd file to be looked at: its book, and the day the command works on. */
import { type HerdBook, openBook } from '../breeding/book.ts'
import type { Day } from '../breeding/day.ts'
import type { Outcome } from '../breeding/problem.ts'
import { openHerdFile } from '../herd/open.ts'
import type { Given, Shell } from './command.ts'
import { dayAskedFor } from './today.ts'

export interface OpenedBook {
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
  return day.ok ? { ok: true, value: { book, day: day.value } } : day
}

/** Exit status of problems with the words that were typed, rather than with the file. */
export const statusOf = (problems: readonly { readonly code: string }[]): number =>
  problems.some((problem) => problem.code.startsWith('option-')) ? 2 : 1
