/** The morning list of a day: every animal in at most one section, in the order of the work. */
import { blocksOn } from './blocks.ts'
import type { HerdBook } from './book.ts'
import type { Day } from './day.ts'
import type { MorningList, Row, VisitAhead } from './list.ts'
import { compareRows } from './order.ts'
import { type Places, placesOn, type VisitAwaited } from './places.ts'
import { RowMaker } from './row-maker.ts'
import { type Section, sections } from './sections.ts'
import type { Serving } from './session.ts'
import type { Standing } from './standing.ts'
import { withStraws } from './straw-rows.ts'

/**
 * The morning list of a day, made from every fact dated before it and, of the day itself, heats, calvings, losses,
 * changed blocks and corrections; the other facts of the day tick their rows.
 *
 * @param book the herd book
 * @param today the list's day
 * @example morningList(book, isoDay('2026-05-28')).rows[0]?.section // 'take-care'
 */
export const morningList = (book: HerdBook, today: Day): MorningList => listAt(placesOn(book, today))

/**
 * The list of a day, of places that are known already.
 *
 * @example listAt(placesOn(book, tomorrow)).day // tomorrow
 */
export function listAt({ book, today, each }: Places): MorningList {
  const rows = new RowMaker(
    book,
    today,
    each.map(({ standing }) => standing),
  )
  const blocks = blocksOn(book, today)
  const made: Row[] = []
  const toServe = new Map<string, { standing: Standing; serving: Serving }>()
  const waiting = new Map<string, VisitAhead>()
  for (const { standing, takeCare, further, visit } of each) {
    if (visit !== undefined) waiting.set(visit.block, addedTo(waiting.get(visit.block), visit))
    const first = takeCare ?? further
    if (first !== undefined) {
      const also = takeCare === undefined ? undefined : further?.section
      made.push(rows.row(standing, first, also))
      if (first.serving !== undefined) toServe.set(standing.animal.id, { standing, serving: first.serving })
    }
  }
  const order = new Map(blocks.map((block, index) => [block.block, index]))
  const placeOf = (block: string): number => order.get(block) ?? 0
  return {
    day: today,
    blocks,
    rows: withStraws(book, today, made.sort(compareRows(order)), toServe),
    visits: [...waiting.values()].sort((a, b) => a.visit - b.visit || placeOf(a.block) - placeOf(b.block)),
  }
}

const addedTo = (before: VisitAhead | undefined, visit: VisitAwaited): VisitAhead => ({
  ...visit,
  ready: (before?.ready ?? 0) + 1,
})

/** Sections that hold a row, in screen order, with their rows. */
export const rowsBySection = (list: MorningList): ReadonlyMap<Section, readonly Row[]> =>
  new Map(
    sections
      .map((section) => [section, list.rows.filter((row) => row.section === section)] as const)
      .filter(([, rows]) => rows.length > 0),
  )
