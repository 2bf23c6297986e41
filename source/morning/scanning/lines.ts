/** The lines below the one that is typed: what is to settle, and the last results. */
import type { AnimalRecord } from '../../breeding/book.ts'
import type { CheckFact, KeptResultFact } from '../../breeding/facts.ts'
import { bookNow } from '../book-now.ts'
import type { Desk } from '../desk.ts'
import type { ScanningPlace } from '../place.ts'
import { type VisitSoFar, visitSoFar } from './awaited.ts'

/** Results in sight. */
const LAST_RESULTS = 10

/** How far the visit has got, what was just recorded included. */
export const visitOf = (desk: Desk, place: ScanningPlace): VisitSoFar => visitSoFar(bookNow(desk), place)

/** What the pointer is on: a result kept to be settled, of whichever visit, or one of the last recorded. */
export type ScanLine =
  | { readonly is: 'kept'; readonly fact: KeptResultFact }
  | { readonly is: 'result'; readonly check: CheckFact; readonly animal: AnimalRecord }

/** The lines below the one that is typed, in order: those kept, then the last results, newest first. */
export function scanLines(desk: Desk, place: ScanningPlace): readonly ScanLine[] {
  const book = bookNow(desk)
  const results = visitOf(desk, place).results.flatMap((check): readonly ScanLine[] => {
    const animal = book.animals.get(check.about)
    return animal === undefined ? [] : [{ is: 'result', check, animal }]
  })
  return [
    ...book.keptResults.map((fact): ScanLine => ({ is: 'kept', fact })),
    ...results.slice(0, LAST_RESULTS),
  ]
}
