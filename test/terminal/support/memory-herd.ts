/** An open herd without a disk, for tests of the screen alone: saves when it is told to, or at once. */
import type { Fact, NewFact } from '../../../source/breeding/facts.ts'
import type { Outcome, Problem } from '../../../source/breeding/problem.ts'
import { asFacts } from '../../../source/herd/recording.ts'
import type { Herd, HerdState } from '../../../source/screens/herd.ts'

export class MemoryHerd implements Herd {
  state: HerdState
  /** What stands in the way of saving. */
  trouble: readonly Problem[] = []
  /** Refuses what is recorded. */
  refusal: readonly Problem[] = []
  /** Saves wait for `save()`. */
  slow = false
  polls = 0
  prepared = 0
  copies: string[] = []
  overOlder = false
  #listeners = new Set<() => void>()

  readonly #instant: () => Date

  constructor(
    facts: readonly Fact[],
    instant: () => Date,
    mode: HerdState['mode'] = 'writable',
    problems: readonly Problem[] = [],
  ) {
    this.#instant = instant
    this.state = { facts, unsaved: [], mode, saving: 'saved', trouble: [], problems }
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  async record(newFacts: readonly NewFact[], by?: string): Promise<Outcome<readonly Fact[]>> {
    if (this.refusal.length > 0) return { ok: false, problems: this.refusal }
    const facts = asFacts(newFacts, { at: this.#instant(), ...(by === undefined ? {} : { by }) })
    await Promise.resolve()
    this.#change({ unsaved: [...this.state.unsaved, ...facts], saving: 'saving' })
    if (!this.slow) this.save()
    return this.trouble.length > 0 ? { ok: false, problems: this.trouble } : { ok: true, value: facts }
  }

  async prepare(): Promise<void> {
    this.prepared += 1
  }

  async poll(): Promise<void> {
    this.polls += 1
    if (this.state.unsaved.length > 0 && !this.slow) this.save()
  }

  async retry(overOlder = false): Promise<Outcome<null>> {
    this.overOlder ||= overOlder
    this.save()
    return { ok: true, value: null }
  }

  async saveCopy(path: string): Promise<Outcome<null>> {
    if (this.trouble.length > 0 && path.startsWith('/full')) return { ok: false, problems: this.trouble }
    this.copies.push(path)
    return { ok: true, value: null }
  }

  /** Saves what is waiting, or fails. */
  save(): void {
    if (this.trouble.length > 0) this.#change({ saving: 'not-saved', trouble: this.trouble })
    else
      this.#change({
        facts: [...this.state.facts, ...this.state.unsaved],
        unsaved: [],
        saving: 'saved',
        trouble: [],
      })
  }

  /** Another program has recorded something. */
  merge(facts: readonly Fact[]): void {
    this.#change({ facts: [...this.state.facts, ...facts] })
  }

  #change(change: Partial<HerdState>): void {
    this.state = { ...this.state, ...change }
    for (const listener of this.#listeners) listener()
  }
}
