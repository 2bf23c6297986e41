import { isDeepStrictEqual } from 'node:util'
import type { Low } from 'lowdb'
import { notice, type Problem } from '../breeding/problem.ts'
import type { HerdFile } from './herd-file.ts'
import type { HerdState } from './state.ts'
import type { DurableFile } from './store/adapter.ts'
import type { Environment } from './store/environment.ts'
import type { Paths } from './store/paths.ts'
import { CopiesBeside } from './store/siblings.ts'

/** Up to so many facts everything stays quick. */
export const comfortable = 100_000

/** What an open herd stands on; put together by `openHerdFile`. */
export interface HerdParts {
  readonly world: Environment
  readonly paths: Paths
  readonly path: string
  readonly low: Low<HerdFile>
  readonly durable: DurableFile
  readonly readOnly: readonly Problem[]
}

/** What the store tells of its work; all else follows from the file and the copies beside it. */
type Told = Pick<HerdState, 'saving' | 'unsaved' | 'trouble'> & {
  /** Why the herd may be looked at only; empty where it may be written. */
  readonly readOnly: readonly Problem[]
}

/** The state of an open herd: made anew, and told of, where anything in it is different. */
export class LiveState {
  readonly #parts: HerdParts
  readonly #copies: CopiesBeside
  readonly #listeners = new Set<() => void>()
  #told: Told
  #now: HerdState

  constructor(parts: HerdParts) {
    this.#parts = parts
    this.#copies = new CopiesBeside(parts.world, parts.paths)
    this.#told = { readOnly: parts.readOnly, saving: 'saved', unsaved: [], trouble: [] }
    this.#now = this.#next()
  }

  get now(): HerdState {
    return this.#now
  }

  /** Why nothing may be recorded, as faults; none where it may be. */
  get refusals(): readonly Problem[] {
    return this.#told.readOnly.map((problem) => ({ ...problem, severity: 'fault' }))
  }

  /** Calls back after every change. @returns ends it */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** Calls nobody back any more. */
  end(): void {
    this.#listeners.clear()
  }

  /** Takes in what came of the work of the store. */
  change(told: Partial<Told>): void {
    this.#told = { ...this.#told, ...told }
    const before = this.#now
    const next = this.#next()
    if (next.facts === before.facts && isDeepStrictEqual({ ...next, facts: [] }, { ...before, facts: [] }))
      return
    this.#now = next
    for (const listener of this.#listeners) listener()
  }

  /** Looks for copies beside the herd, and takes in what they hold more. */
  async lookBeside(): Promise<void> {
    await this.#copies.look(this.#parts.low.data)
    this.change({})
  }

  #next(): HerdState {
    const { low, path, durable } = this.#parts
    const { readOnly, ...told } = this.#told
    const { facts, revision } = low.data
    return {
      facts,
      revision,
      mode: readOnly.length > 0 ? 'read-only' : 'writable',
      ...told,
      problems: [...readOnly, ...tooMany(facts.length, path), ...durable.notices, ...this.#copies.notices],
    }
  }
}

const tooMany = (facts: number, path: string): readonly Problem[] =>
  facts > comfortable ? [notice('herd-large', path, { facts, limit: comfortable })] : []
