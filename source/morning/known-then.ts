/** A past morning as it was known then, beside what is known of it now. */
import { openBook } from '../breeding/book.ts'
import { knownOn } from '../herd/known-on.ts'
import { type Desk, withDay } from './desk.ts'
import { listNow } from './list-now.ts'
import { pageOf } from './page.ts'

/** The list of the day shown by what was recorded by its end; the other way round where it is shown so already. */
export function turnKnownThen(desk: Desk): Desk {
  const { page, book, log } = desk
  const { day } = page.list
  if (page.knownThen === true) return withDay(desk, day)
  const then = openBook(knownOn(log, day, book.farm.zone))
  const before = { ...page, items: [], pointer: 0 }
  return { ...desk, page: { ...pageOf(listNow(then, day), then, before), knownThen: true } }
}
