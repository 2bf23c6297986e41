/**
 * The herd file while it is open: its facts in memory, and the recording of new ones. A fact counts as recorded
 * only when it is on the disk itself; until then it stands apart as not saved.
 */
import { isDeepStrictEqual } from 'node:util'
import type { Low } from 'lowdb'
import type { Fact, NewFact } from '../breeding/facts.ts'
import { notice, type Outcome, type Problem } from '../breeding/problem.ts'
import { breathe } from './breathe.ts'
import { Gate } from './gate.ts'
import { type HerdFile, Refusal } from './herd-file.ts'
import { asOutcome } from './outcome.ts'
import { asFacts } from './recording.ts'
import type { HerdState } from './state.ts'
import type { DurableFile } from './store/adapter.ts'
import { saveCopyTo } from './store/copy.ts'
import type { Environment } from './store/environment.ts'
import type { Paths } from './store/paths.ts'
import { whyReadOnly } from './store/permission.ts'
import { CopiesBeside } from './store/siblings.ts'

/** Up to so many facts everything stays quick. */
export const comfortable = 100_000

/** One action waiting for its turn to be saved. */
interface Action {
  readonly facts: readonly Fact[]
  outcome: Outcome<readonly Fact[]>
}

/** What an open herd stands on; put together by `openHerdFile`. */
export interface HerdParts {
  readonly world: Environment
  readonly paths: Paths
  readonly path: string
  readonly low: Low<HerdFile>
  readonly durable: DurableFile
  readonly readOnly: readonly Problem[]
}

/** An open herd file. Made by `openHerdFile`. */
export class HerdStore {
  readonly #parts: HerdParts
  readonly #copies: CopiesBeside
  readonly #gate = new Gate()
  readonly #listeners = new Set<() => void>()
  #readOnly: readonly Problem[]
  #state: HerdState
  #waiting: Action[] = []
  #queue: Promise<unknown> = Promise.resolve()

  constructor(parts: HerdParts) {
    this.#parts = parts
    this.#copies = new CopiesBeside(parts.world, parts.paths)
    this.#readOnly = parts.readOnly
    const { facts, revision } = parts.low.data
    const mode = parts.readOnly.length > 0 ? 'read-only' : 'writable'
    const problems = [...parts.readOnly, ...this.#manyFacts(facts.length)]
    this.#state = { facts, revision, mode, saving: 'saved', unsaved: [], trouble: [], problems }
  }

  get path(): string {
    return this.#parts.path
  }
  get herdId(): string {
    return this.#parts.low.data.herdId
  }
  get state(): HerdState {
    return this.#state
  }
  get facts(): readonly Fact[] {
    return this.#state.facts
  }
  get revision(): number {
    return this.#state.revision
  }
  get mode(): HerdState['mode'] {
    return this.#state.mode
  }
  get problems(): readonly Problem[] {
    return this.#state.problems
  }

  /** Calls back after every change of `state`. @returns ends it */
  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /**
   * Loads what the first tick needs (the schema, the lock), so that it is as quick as the others: to be called when
   * the first frame stands.
   */
  async prepare(): Promise<void> {
    await this.#gate.refusals(this.#parts.low.data, [], [])
    await breathe()
    try {
      this.#parts.world.lock.prepare()
    } catch {
      // The first save meets the same trouble, and says so.
    }
  }

  /**
   * Records what one action of the user says. Calls are saved in order, those that wait together in one save.
   *
   * @param newFacts what happened; what `asFacts` made of it already is kept as it is
   * @param by initials of the person
   * @returns the recorded facts once they are on the disk; or why not: then they are refused where they are wrong
   *   or the file is read-only, and otherwise kept in `state.unsaved` and tried again by the next record, retry
   *   or poll
   */
  async record(newFacts: readonly NewFact[], by?: string): Promise<Outcome<readonly Fact[]>> {
    if (this.mode === 'read-only') return { ok: false, problems: this.#readOnly.map(asFault) }
    const facts = asFacts(newFacts, { at: this.#parts.world.now(), by })
    const action: Action = { facts, outcome: { ok: true, value: facts } }
    this.#waiting.push(action)
    await this.#inTurn(() => this.#saveWaiting())
    return action.outcome
  }

  /**
   * Tries again to save what is not saved.
   *
   * @param overOlder also where an older copy stands in the place of the file; the user has been asked
   * @returns whether everything is saved now, or why not
   */
  async retry(overOlder = false): Promise<Outcome<null>> {
    if (this.mode === 'read-only') return { ok: false, problems: this.#readOnly.map(asFault) }
    return this.#inTurn(async () => {
      const needed = this.#state.unsaved.length > 0 || overOlder
      const problems = needed ? await this.#save(overOlder) : []
      return problems.length > 0 ? { ok: false, problems } : { ok: true, value: null }
    })
  }

  /** Tries again what is not saved; else looks for what other programs recorded and takes it in. */
  poll(): Promise<void> {
    return this.#inTurn(async () => {
      if (this.#state.unsaved.length > 0) await this.#save(false)
      else await this.#look()
      await this.#copies.look(this.#parts.low.data)
      this.#change({})
    })
  }

  /**
   * Writes the whole herd, the facts not saved included, to another new file: a stick, another folder.
   *
   * @param path a file that does not exist
   */
  saveCopy(path: string): Promise<Outcome<null>> {
    const { world, low } = this.#parts
    return this.#inTurn(() =>
      asOutcome(async () => {
        await saveCopyTo(world, path, low.data, this.#state.unsaved)
        return null
      }),
    )
  }

  /** Waits for what is being saved. Between two saves nothing is open. */
  async close(): Promise<void> {
    await this.#queue
    this.#listeners.clear()
  }

  #inTurn<T>(work: () => Promise<T>): Promise<T> {
    const turn = this.#queue.then(work)
    this.#queue = turn.catch(() => undefined)
    return turn
  }

  async #saveWaiting(): Promise<void> {
    const added: Action[] = []
    for (const action of this.#waiting.splice(0)) {
      const pending = [...this.#state.unsaved, ...added.flatMap((each) => each.facts)]
      const problems = await this.#gate.refusals(this.#parts.low.data, pending, action.facts)
      if (problems.length > 0) action.outcome = { ok: false, problems }
      else added.push(action)
    }
    if (added.length === 0) return
    this.#change({
      saving: 'saving',
      unsaved: [...this.#state.unsaved, ...added.flatMap((each) => each.facts)],
    })
    const problems = await this.#save(false)
    if (problems.length > 0) for (const action of added) action.outcome = { ok: false, problems }
  }

  async #save(overOlder: boolean): Promise<readonly Problem[]> {
    const { low, durable } = this.#parts
    const before = low.data
    try {
      durable.overOlder = overOlder
      low.data = { ...before, facts: before.facts.concat(this.#state.unsaved) }
      await low.write()
      low.data = durable.saved
      this.#change({ saving: 'saved', unsaved: [], trouble: [] })
      return []
    } catch (error) {
      low.data = before
      const trouble = refused(error)
      this.#change({ saving: this.#state.unsaved.length > 0 ? 'not-saved' : 'saved', trouble })
      return trouble
    }
  }

  async #look(): Promise<void> {
    const { world, paths, path, low, durable } = this.#parts
    try {
      const lost = (await durable.look()) ?? []
      low.data = durable.saved
      if (this.mode === 'read-only') this.#readOnly = await whyReadOnly(world, paths, path, durable.edited)
      this.#change({ unsaved: lost, trouble: [] })
      if (lost.length > 0) await this.#save(false)
    } catch (error) {
      this.#change({ trouble: refused(error) })
    }
  }

  #manyFacts(facts: number): readonly Problem[] {
    return facts > comfortable ? [notice('herd-large', this.#parts.path, { facts, limit: comfortable })] : []
  }

  /** Makes the next state and tells of it, where anything is different. */
  #change(change: Partial<HerdState>): void {
    const { facts, revision } = this.#parts.low.data
    const before = this.#state
    const next: HerdState = {
      ...before,
      facts,
      revision,
      mode: this.#readOnly.length > 0 ? 'read-only' : 'writable',
      problems: [
        ...this.#readOnly,
        ...this.#manyFacts(facts.length),
        ...this.#parts.durable.notices,
        ...this.#copies.notices,
      ],
      ...change,
    }
    if (next.facts === before.facts && isDeepStrictEqual({ ...next, facts: [] }, { ...before, facts: [] }))
      return
    this.#state = next
    for (const listener of this.#listeners) listener()
  }
}

const asFault = (problem: Problem): Problem => ({ ...problem, severity: 'fault' })

function refused(error: unknown): readonly Problem[] {
  if (error instanceof Refusal) return error.problems
  throw error
}
