/** What changes the stock of straws, in the order in which it happened. */
import type { HerdBook, StockFact } from '../book.ts'
import { type Day, isoDay } from '../day.ts'
import type { ServiceFact } from '../facts.ts'
import { Clock, type Minute } from '../moment.ts'

export interface Movement {
  readonly fact: StockFact | ServiceFact
  readonly day: Day
  /** Place among all movements: day, minute, kind. */
  readonly order: number
}

/** At one moment: what is counted first, what comes next, what goes last. */
const ranks = { 'stock-take': 0, delivery: 1, spoiled: 2, service: 3 }

/** A count without a time is the number in the morning, before anything of that day. */
const START_OF_DAY: Minute = -1

/** Of services at one moment those that name a batch come first: they must not find it taken by the others. */
const orderOf = (fact: StockFact | ServiceFact, day: Day, minute: Minute): number =>
  (day * 1441 + minute + 1) * 8 + ranks[fact.kind] * 2 + (fact.batch === undefined ? 1 : 0)

/**
 * Stock facts and AI services up to a day, that day included, in order of day, time and kind. Services before the
 * first stock fact are left out: no stock was kept then. Facts of one kind at the same moment run in the order of
 * recording.
 *
 * @param book the herd book, @param today the last day that counts
 * @example movementsUntil(book, isoDay('2026-05-28'))[0]?.fact.kind // 'stock-take'
 */
export function movementsUntil(book: HerdBook, today: Day): readonly Movement[] {
  const clock = new Clock(book.farm.milkings)
  const movements: Movement[] = []
  const add = (fact: StockFact | ServiceFact, day: Day, minute: Minute): void => {
    movements.push({ fact, day, order: orderOf(fact, day, minute) })
  }
  let opened: Day | undefined
  for (const fact of book.stock) {
    const day = isoDay(fact.date)
    if (day > today) break
    opened ??= day
    const untimedCount = fact.kind === 'stock-take' && fact.time === undefined
    add(fact, day, untimedCount ? START_OF_DAY : clock.minute(fact.time))
  }
  if (opened === undefined) return movements
  for (const fact of book.services) {
    if (fact.natural === true) continue
    const day = isoDay(fact.date)
    if (day >= opened && day <= today) add(fact, day, clock.minute(fact.time ?? fact.session))
  }
  return movements.sort((a, b) => a.order - b.order)
}
