/**
 * Ticks in sight at once. Making the list anew from all facts takes longer than a frame may; a fact that ticks its row
 * and moves nothing is shown on the row first, and the list is made anew when the keys rest (`settled`).
 */

import { bookAfter } from '../breeding/book-with.ts'
import { dayIso } from '../breeding/day.ts'
import { ticksRow } from '../breeding/done.ts'
import type { Fact } from '../breeding/facts.ts'
import type { Row } from '../breeding/list.ts'
import type { Desk } from './desk.ts'
import { historyOf } from './history.ts'
import { listNow } from './list-now.ts'
import { type Page, pageOf } from './page.ts'
import { bookToStandIn } from './reckoning.ts'

/**
 * The page with the rows ticked that the facts tick.
 *
 * @returns undefined where a fact does more than tick a row of the list shown: then the list must be made anew
 * @example tickedPage(desk, [looked])?.done // 1
 */
export function tickedPage(desk: Desk, facts: readonly Fact[]): Page | undefined {
  const { page, book } = desk
  const date = dayIso(page.list.day)
  const rows = new Map(page.list.rows.map((row) => [row.animal, row]))
  const ticked = new Map<string, Row>()
  for (const fact of facts) {
    const row = rows.get(fact.about)
    if (row === undefined || fact.date !== date || !ticksRow(row.section, fact.kind)) return undefined
    ticked.set(fact.about, { ...row, done: true })
  }
  const list = { ...page.list, rows: page.list.rows.map((row) => ticked.get(row.animal) ?? row) }
  return pageOf(list, book, page)
}

/** The desk with every fact in its book, list and history. */
export function settled(desk: Desk, log: readonly Fact[] = desk.log): Desk {
  const book = bookAfter(desk.book, log)
  const page = pageOf(listNow(book, desk.page.list.day, desk.book), book, desk.page)
  const reckoned = bookToStandIn(desk)
  return {
    ...desk,
    log,
    book,
    history: historyOf(log),
    page,
    unsettled: [],
    ...(reckoned === undefined ? {} : { reckoned }),
  }
}
