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
  for (const { id, voids } of facts.filter((fact) => fact.kind === 'correction').toReversed()) {
    if (!voided.has(id)) voided.add(voids)
  }
  return voided
}
