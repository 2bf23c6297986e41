/** The straws of a list: what is proposed for one row is set aside for it, what was used is shown. */
import type { HerdBook } from './book.ts'
import { serviceClass } from './chances/rates.ts'
import type { Day } from './day.ts'
import type { ServiceFact } from './facts.ts'
import type { Row } from './list.ts'
import { ratesOfHerd } from './rates-of-herd.ts'
import type { Warning } from './sections.ts'
import type { Serving } from './session.ts'
import type { Standing } from './standing.ts'
import { allotStraws } from './straws/choose.ts'
import { stockOn } from './straws/stock.ts'
import type { StrawChoice } from './straws/straws-of-day.ts'

/** An animal that is to be served, by her id. */
type ToServe = ReadonlyMap<string, { readonly standing: Standing; readonly serving: Serving }>

/**
 * Rows with their straws and the chance that each holds: proposed in the order of the rows, or the one that was used
 * once she is served.
 *
 * @param rows in screen order, @param toServe the animals of the rows that ask for a straw
 */
export function withStraws(
  book: HerdBook,
  today: Day,
  rows: readonly Row[],
  toServe: ToServe,
): readonly Row[] {
  const open = rows.flatMap((row) => (row.done ? [] : (toServe.get(row.animal) ?? [])))
  const proposed = allotStraws(book, today, open)
  const { conception } = ratesOfHerd(book, today).rates
  let next = 0
  return rows.map((row) => {
    const her = toServe.get(row.animal)
    if (her === undefined) return row
    const { straw, warnings } = row.done ? usedStraw(book, her.standing) : (proposed[next++] as StrawChoice)
    return {
      ...row,
      straw,
      chance: straw === undefined ? undefined : conception[serviceClass(her.standing.maiden, straw.straw)],
      warnings: [...row.warnings, ...warnings],
    }
  })
}

interface Shown {
  readonly straw: Row['straw']
  readonly warnings: readonly Warning[]
}

const nothing: Shown = { straw: undefined, warnings: [] }

/** The straw of today's service, with a warning where the book has none of it left. */
function usedStraw(book: HerdBook, standing: Standing): Shown {
  const used = standing.todays.findLast(
    (fact): fact is ServiceFact => fact.kind === 'service' && fact.natural !== true,
  )
  if (used?.sire === undefined || used.straw === undefined) return nothing
  const unaccounted = stockOn(book, standing.today).unaccounted.has(used.id)
  return { straw: { sire: used.sire, straw: used.straw }, warnings: unaccounted ? ['straw-out'] : [] }
}
