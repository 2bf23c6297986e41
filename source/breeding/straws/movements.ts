/** What changes the stock of straws, in the order in which it happened. */
import type { HerdBook, StockFact } from '../book.ts'
import { type Day, isoDay } from '../day.ts'
import type { ServiceFact } from '../facts.ts'
import { Clock, type Minute } from '../moment.ts'

export type Movement = { readonly day: Day; readonly minute: Minute } & (
  | { readonly kind: StockFact['kind']; readonly fact: StockFact }
  | { readonly kind: 'service'; readonly fact: ServiceFact }
)

/** At one moment: what is counted first, what comes next, what goes last. */
const kindsInOrder: readonly Movement['kind'][] = ['stock-take', 'delivery', 'spoiled', 'service']

/** A count without a time is the number in the morning, before anything of that day. */
const START_OF_DAY: Minute = -1

/**
 * Stock facts and AI services up to a day, that day included, in order of day, time and kind. Services before the
 * first stock fact are left out: no stock was kept then. Facts of one kind at the same moment run in the order of
 * recording.
 *
 * @param book the herd book, @param today the last day that counts
 * @example movementsUntil(book, isoDay('2026-05-28'))[0]?.kind // 'stock-take'
 */
export function movementsUntil(book: HerdBook, today: Day): readonly Movement[] {
  const clock = new Clock(book.farm.milkings)
  const stock: Movement[] = book.stock.flatMap((fact) => {
    const day = isoDay(fact.date)
    const untimedCount = fact.kind === 'stock-take' && fact.time === undefined
    const minute = untimedCount ? START_OF_DAY : clock.minute(fact.time)
    return day > today ? [] : [{ day, minute, kind: fact.kind, fact }]
  })
  const opened = stock.reduce((first, movement) => Math.min(first, movement.day), Infinity)
  const services: Movement[] = []
  for (const fact of book.live) {
    if (fact.kind !== 'service' || fact.natural === true) continue
    const day = isoDay(fact.date)
    if (day < opened || day > today) continue
    services.push({ day, minute: clock.minute(fact.time ?? fact.session), kind: 'service', fact })
  }
  return [...stock, ...services].sort(byMoment)
}

/** Of services at one moment those that name a batch come first: they must not find it taken by the others. */
const byMoment = (a: Movement, b: Movement): number =>
  a.day - b.day ||
  a.minute - b.minute ||
  kindsInOrder.indexOf(a.kind) - kindsInOrder.indexOf(b.kind) ||
  Number(a.fact.batch === undefined) - Number(b.fact.batch === undefined)
