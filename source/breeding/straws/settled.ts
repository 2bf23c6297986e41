/** Services of the past that the stock of straws does not rest on any more, since it was counted later. */
import type { HerdBook } from '../book.ts'
import { type Day, isoDay } from '../day.ts'
import { type Movement, movementsUntil } from './movements.ts'
import { stockAfter } from './stock.ts'

/**
 * Services until a day without which the stock is the same, lot for lot, at its end and so on every day after it: those
 * of a bull, those before the first stock fact, and those before a count that made their straws certain again.
 *
 * @param until the last day whose facts are looked at
 * @returns ids of services
 * @example servicesSettled(book, isoDay('2024-03-26')).has(service.id) // true where the flask was counted since
 */
export function servicesSettled(book: HerdBook, until: Day): ReadonlySet<string> {
  const movements = movementsUntil(book, until)
  const moving = new Set(movements.map(({ fact }) => fact.id))
  const past = book.services.filter(({ date }) => isoDay(date) <= until)
  const settled = new Set(past.map(({ id }) => id).filter((id) => !moving.has(id)))
  // A service that names no sire is told of for ever: no count is of none.
  for (const ofSire of Map.groupBy(movements, ({ fact }) => fact.sire).values())
    for (const id of settledOf(book, ofSire)) settled.add(id)
  return settled
}

/** Of one sire: all services before the latest count that leaves the stock as it is without them. */
function settledOf(book: HerdBook, movements: readonly Movement[]): readonly string[] {
  const whole = stockText(book, movements)
  const counts = movements.filter(({ fact }) => fact.kind === 'stock-take').toReversed()
  for (const count of counts) {
    const before = movements.slice(0, movements.indexOf(count))
    const services = new Set(before.filter(({ fact }) => fact.kind === 'service'))
    const kept = movements.filter((one) => !services.has(one))
    if (stockText(book, kept) === whole) return Array.from(services, ({ fact }) => fact.id)
  }
  return []
}

function stockText(book: HerdBook, movements: readonly Movement[]): string {
  const { lots, pools, notices } = stockAfter(book, movements)
  return JSON.stringify({ lots, pools, notices })
}
