import type { Fact } from '../breeding/facts.ts'
import type { Problem } from '../breeding/problem.ts'
import { inSlices } from './breathe.ts'
import { KnownFacts } from './known-facts.ts'
import { beginsWith } from './union.ts'

const slice = 2000

/**
 * Lets only right facts into the file: a right sum promises that they were checked. Remembers the herd between two
 * records, so that a tick costs no more in a large herd.
 */
export class Gate {
  #known = new KnownFacts()
  #facts: readonly Fact[] = []

  /**
   * What speaks against new facts, by the whole schema, which is loaded now.
   *
   * @param saved facts of the file, @param pending facts let in and not saved yet, @param added the new ones
   */
  async refusals(
    saved: readonly Fact[],
    pending: readonly Fact[],
    added: readonly Fact[],
  ): Promise<Problem[]> {
    const { checkAdded } = await import('./check.ts')
    await this.#follow(saved)
    const all = new KnownFacts(this.#known)
    for (const fact of pending) all.add(fact)
    return checkAdded(all, added)
  }

  async #follow(saved: readonly Fact[]): Promise<void> {
    const grew = beginsWith(saved, this.#facts)
    const known = grew ? this.#known : new KnownFacts()
    await inSlices(grew ? saved.slice(this.#facts.length) : saved, slice, (fact) => known.add(fact))
    this.#known = known
    this.#facts = saved
  }
}
