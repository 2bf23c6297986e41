/** The order in which the facts of an import are recorded: it does not depend on the order of the rows. */

import type { HerdBook } from '../../../breeding/book.ts'
import { compareTexts } from '../../../breeding/compare-texts.ts'
import type { NewFact } from '../../../breeding/facts.ts'
import { kindRank, momentOf } from '../../../breeding/moment.ts'
import { compareNumbers } from '../../../breeding/order.ts'
import type { PlannedFact } from './outcome.ts'

/** What is true without a date comes first, corrections come last: what they name is there by then. */
const timeless: readonly string[] = ['policy', 'season', 'animal']
const stageOf = ({ kind }: NewFact): number => (kind === 'correction' ? 2 : timeless.includes(kind) ? 0 : 1)

/**
 * Sorts facts for recording: date, the order that the rows told, minute, kind, number, then what they say.
 *
 * @param numberOf number of an animal by her id
 * @param milkings of the farm, for the times `morning` and `evening`
 */
export function inOrder(
  planned: readonly PlannedFact[],
  numberOf: ReadonlyMap<string, string>,
  milkings: HerdBook['farm']['milkings'],
): NewFact[] {
  const keyed = planned.map(({ fact, order = 0 }) => ({
    fact,
    stage: stageOf(fact),
    rank: kindRank(fact.kind),
    minute: momentOf(fact.time, milkings),
    number: numberOf.get(fact.about) ?? '',
    order,
    content: JSON.stringify({ ...fact, id: undefined }),
  }))
  return keyed
    .sort(
      (a, b) =>
        a.stage - b.stage ||
        (a.stage === 0
          ? timeless.indexOf(a.fact.kind) - timeless.indexOf(b.fact.kind)
          : compareTexts(a.fact.date, b.fact.date)) ||
        a.order - b.order ||
        a.minute - b.minute ||
        a.rank - b.rank ||
        compareNumbers(a.number, b.number) ||
        compareTexts(a.content, b.content),
    )
    .map(({ fact }) => fact)
}
