import type { HerdBook } from '../breeding/book.ts'
import { withFacts } from '../breeding/book-with.ts'
import type { Desk } from './desk.ts'

const known = new WeakMap<HerdBook, { readonly facts: Desk['unsettled']; readonly book: HerdBook }>()

/**
 * The book with the facts that were ticked a moment ago: for screens that count what has just been recorded.
 *
 * @example bookNow(desk) // desk.book, once the keys rest
 */
export function bookNow({ book, unsettled }: Pick<Desk, 'book' | 'unsettled'>): HerdBook {
  if (unsettled.length === 0) return book
  const found = known.get(book)
  if (found?.facts === unsettled) return found.book
  const made = withFacts(book, unsettled)
  known.set(book, { facts: unsettled, book: made })
  return made
}
