/** Facts that were recorded here and that the herd has not shown in its state yet. */
import type { Fact } from '../breeding/facts.ts'

export class Sent {
  #facts: readonly Fact[] = []

  get count(): number {
    return this.#facts.length
  }

  add(facts: readonly Fact[]): void {
    this.#facts = [...this.#facts, ...facts]
  }

  /** The herd has answered for these, whether it took them or not. */
  answered(facts: readonly Fact[]): void {
    this.#facts = this.#facts.filter((fact) => !facts.includes(fact))
  }

  /** The log holds some of them by now. */
  arrived(log: readonly Fact[]): void {
    if (this.#facts.length === 0) return
    const sent = new Set(this.#facts.map((fact) => fact.id))
    const there = new Set(log.flatMap((fact) => (sent.has(fact.id) ? [fact.id] : [])))
    this.#facts = this.#facts.filter((fact) => !there.has(fact.id))
  }

  /** The log with what it lacks; the log itself where that is nothing. */
  behind(log: readonly Fact[]): readonly Fact[] {
    return this.#facts.length === 0 ? log : [...log, ...this.#facts]
  }
}
