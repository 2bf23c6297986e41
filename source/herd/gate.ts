import type { Fact } from '../breeding/facts.ts'
import { fault, type Problem } from '../breeding/problem.ts'
import { inSlices } from './breathe.ts'
import { harmlessJson } from './escape.ts'
import { fileLimit } from './format.ts'
import type { HerdFile } from './herd-file.ts'
import { KnownFacts } from './known-facts.ts'
import { beginsWith } from './union.ts'

const slice = 2000
const tooMuch = fault('herd-full', '', { limit: fileLimit / 2 ** 20 })

/** Size of the fact lines with new ones behind, bytes; a little more than they will have. */
function bytesOf(saved: HerdFile, pending: readonly Fact[], added: readonly Fact[]): number {
  let bytes = 0
  for (const piece of saved.lines) bytes += piece.length
  for (const fact of [...pending, ...added]) bytes += Buffer.byteLength(harmlessJson(fact)) + 2
  return bytes
}

/**
 * Lets only right facts into the file: a right sum promises that they were checked. Remembers the herd between two
 * records, so that a tick costs no more in a large herd.
 */
export class Gate {
  #known = new KnownFacts()
  #facts: readonly Fact[] = []

  /**
   * What speaks against new facts, by the whole schema, which is loaded now; or that the file would grow too large.
   *
   * @param saved what is in the file, @param pending facts let in and not saved yet, @param added the new ones
   */
  async refusals(saved: HerdFile, pending: readonly Fact[], added: readonly Fact[]): Promise<Problem[]> {
    const { checkAdded } = await import('./check.ts')
    await this.#follow(saved.facts)
    const all = new KnownFacts(this.#known)
    for (const fact of pending) all.add(fact)
    const problems = checkAdded(all, added)
    return problems.length === 0 && bytesOf(saved, pending, added) > fileLimit ? [tooMuch] : problems
  }

  async #follow(saved: readonly Fact[]): Promise<void> {
    const grew = beginsWith(saved, this.#facts)
    const known = grew ? this.#known : new KnownFacts()
    await inSlices(grew ? saved.slice(this.#facts.length) : saved, slice, (fact) => known.add(fact))
    this.#known = known
    this.#facts = saved
  }
}
