/** Which straw an animal is served with. */
import type { HerdBook } from '../book.ts'
import { type Day, isoDay } from '../day.ts'
import type { StrawKind } from '../facts.ts'
import type { Warning } from '../list.ts'
import type { Serving } from '../session.ts'
import type { Standing } from '../standing.ts'
import { sexedHoursFit } from './sexed-hours.ts'

export interface StrawChoice {
  /** Undefined where nothing in stock fits; the warnings then say so. */
  readonly straw: { readonly sire: string; readonly straw: StrawKind } | undefined
  readonly warnings: readonly Warning[]
}

/**
 * One chooser for the list of a day: stock and use are counted once, when the first animal asks.
 *
 * @param book the herd book, @param today the list's day
 * @returns the choice for an animal at the session where she is served
 * @example strawChooser(book, today)(standing, serving).straw // { sire: 'S17', straw: 'sexed' }
 */
export function strawChooser(
  book: HerdBook,
  today: Day,
): (standing: Standing, serving: Serving) => StrawChoice {
  let counted: ReturnType<typeof countStraws> | undefined
  return (_standing, serving) => {
    counted ??= countStraws(book, today)
    const sexedFits = book.policy.useSexed && sexedHoursFit(serving, book.policy)
    const { used } = counted
    const fitting = [...counted.left.values()]
      .filter((one) => one.left > 0 && (one.straw !== 'sexed' || sexedFits))
      .sort((a, b) => (used.get(a.sire) ?? 0) - (used.get(b.sire) ?? 0) || (a.sire < b.sire ? -1 : 1))
    const best = fitting[0]
    if (best === undefined) return { straw: undefined, warnings: ['no-straw'] }
    return { straw: { sire: best.sire, straw: best.straw }, warnings: [] }
  }
}

function countStraws(book: HerdBook, today: Day) {
  const left = new Map<string, { sire: string; straw: StrawKind; left: number }>()
  const used = new Map<string, number>()
  const change = (sire: string, straw: StrawKind, by: number): void => {
    const key = `${straw} ${sire}`
    const one = left.get(key) ?? { sire, straw, left: 0 }
    one.left += by
    left.set(key, one)
  }
  for (const fact of book.stock) {
    if (isoDay(fact.date) <= today)
      change(fact.sire, fact.straw, fact.kind === 'spoiled' ? -fact.count : fact.count)
  }
  for (const fact of book.live) {
    if (
      fact.kind !== 'service' ||
      fact.natural === true ||
      fact.sire === undefined ||
      isoDay(fact.date) > today
    )
      continue
    used.set(fact.sire, (used.get(fact.sire) ?? 0) + 1)
    change(fact.sire, fact.straw ?? 'conventional', -1)
  }
  return { left, used }
}
