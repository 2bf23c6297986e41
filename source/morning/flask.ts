/** The flask as a screen asks for it: counted once for a book and day, and kept. */
import type { HerdBook } from '../breeding/book.ts'
import type { Day } from '../breeding/day.ts'
import { type NitrogenLevel, nitrogenLevels } from '../breeding/straws/nitrogen.ts'
import { type Stock, stockOn } from '../breeding/straws/stock.ts'

export interface Flask {
  readonly stock: Stock
  readonly nitrogen: readonly NitrogenLevel[]
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
  const flask = { stock: stockOn(book, day), nitrogen: nitrogenLevels(book, day) }
  known.set(book, { day, flask })
  return flask
}
