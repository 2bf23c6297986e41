/** Facts that come after those of a file, and all that a book says. */
import type { HerdBook } from '../../source/breeding/book.ts'
import { type Fact, HERD } from '../../source/breeding/facts.ts'
import { type Happening, on } from './support.ts'

/** A fact as the next one in a file. */
export const fact = (told: Happening, about: string, id = told.id ?? 'next'): Fact =>
  ({ at: '2026-07-01T05:00:00Z', ...told, about, id }) as unknown as Fact
export const correction = (voids: string, id: string): Fact =>
  fact({ kind: 'correction', date: on(0), voids }, HERD, id)

/** All that a book says, the order of its maps included. */
export const told = (book: HerdBook) => ({
  ...book,
  seasons: [...book.seasons],
  animals: [...book.animals],
  byNumber: [...book.byNumber].sort(([a], [b]) => (a < b ? -1 : 1)),
  byInternationalId: [...book.byInternationalId].sort(([a], [b]) => (a < b ? -1 : 1)),
  records: [...book.records],
  voided: [...book.voided].sort(),
})
