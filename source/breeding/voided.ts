/** Which facts are void. */
import type { Fact } from './facts.ts'

/**
 * Ids of the facts that corrections void. A correction that is itself voided voids nothing: so an undo can be
 * taken back. A voided fact counts as never recorded, on every date.
 *
 * @param facts in the order they were recorded
 * @example voidedBy([heat, { ...correction, voids: heat.id }]).has(heat.id) // true
 */
export function voidedBy(facts: readonly Fact[]): Set<string> {
  const voided = new Set<string>()
  for (let i = facts.length - 1; i >= 0; i -= 1) {
    const fact = facts[i]
    if (fact?.kind === 'correction' && !voided.has(fact.id)) voided.add(fact.voids)
  }
  return voided
}
