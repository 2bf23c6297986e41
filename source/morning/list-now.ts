import type { HerdBook } from '../breeding/book.ts'
import type { Day } from '../breeding/day.ts'
import type { MorningList } from '../breeding/list.ts'
import { listAt } from '../breeding/morning-list.ts'
import { type Places, placesOn } from '../breeding/places.ts'

/** Where the animals of a book stood on the day that was last shown. */
const known = new WeakMap<HerdBook, Places>()

/**
 * The morning list of a day. Where the book grew from another whose list was shown, only the animals that something
 * happened to are placed anew.
 *
 * @param before the book that the list was last made from
 */
export function listNow(book: HerdBook, day: Day, before: HerdBook = book): MorningList {
  const places = placesOn(book, day, known.get(before))
  known.set(book, places)
  return listAt(places)
}
