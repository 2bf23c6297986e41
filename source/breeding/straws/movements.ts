/** What changes the stock of straws, in the order in which it happened. */
import type { HerdBook, StockFact } from '../book.ts'
import { type Day, isoDay } from '../day.ts'
import type { ServiceFact } from '../facts.ts'
import { Clock, type Minute } from '../moment.ts'

export interface Movement {
  readonly fact: StockFact | ServiceFact
  readonly day: Day
  readonly minute: Minute
}

/** At one moment: what is counted first, what comes next, what goes last. */
const kinds: readonly Movement['fact']['kind'][] = ['stock-take', 'delivery', 'spoiled', 'service']

/** A count without a time is the number in the morning, before anything of that day. */
const START_OF_DAY: Minute = 0

/** Of services at one moment those that name a batch come first: they must not find it taken by the others. */
const namesNoBatch = ({ fact }: Movement): number => Number(fact.batch === undefined)

const inOrder = (a: Movement, b: Movement): number =>
  a.day - b.day ||
  a.minute - b.minute ||
  kinds.indexOf(a.fact.kind) - kinds.indexOf(b.fact.kind) ||
  namesNoBatch(a) - namesNoBatch(b)

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
  let opened: Day | undefined
  for (const fact of book.stock) {
    const day = isoDay(fact.date)
    if (day > today) break
    opened ??= day
    const untimedCount = fact.kind === 'stock-take' && fact.time === undefined
    movements.push({ fact, day, minute: untimedCount ? START_OF_DAY : clock.minute(fact.time) })
  }
  if (opened === undefined) return movements
  for (const fact of book.services) {
    if (fact.natural === true) continue
    const day = isoDay(fact.date)
    if (day < opened || day > today) continue
    movements.push({ fact, day, minute: clock.minute(fact.time ?? fact.session) })
  }
  return movements.sort(inOrder)
}
