/** The flask as a screen asks for it: counted once for a book and day, and kept. */
import type { HerdBook } from '../breeding/book.ts'
import type { Day } from '../breeding/day.ts'
import { type Movement, movementsUntil } from '../breeding/straws/movements.ts'
import { type NitrogenLevel, nitrogenLevels } from '../breeding/straws/nitrogen.ts'
import { type Lot, type Stock, stockOn } from '../breeding/straws/stock.ts'

interface Flask {
  readonly stock: Stock
  readonly nitrogen: readonly NitrogenLevel[]
  /** Counts, deliveries, spoiled straws and services, the oldest first. */
  readonly movements: readonly Movement[]
}

const known = new WeakMap<HerdBook, { readonly day: Day; readonly flask: Flask }>()

/**
 * Stock and nitrogen at the end of a day.
 *
 * @example flaskOn(book, today).stock.left('S17', 'sexed') // 12
 */
export function flaskOn(book: HerdBook, day: Day): Flask {
  const kept = known.get(book)
  if (kept?.day === day) return kept.flask
  const flask = {
    stock: stockOn(book, day),
    nitrogen: nitrogenLevels(book, day),
    movements: movementsUntil(book, day),
  }
  known.set(book, { day, flask })
  return flask
}

/** What changed the number of a lot, the newest first: facts that name no batch may have been about it too. */
export const movementsOf = ({ movements }: Flask, lot: Lot): readonly Movement[] =>
  movements
    .filter(({ fact }) => {
      if (fact.sire !== lot.sire || fact.straw !== lot.straw) return false
      if (fact.batch !== undefined && fact.batch !== lot.batch) return false
      return fact.kind === 'service' || (fact.flask === lot.flask && fact.canister === lot.canister)
    })
    .toReversed()
