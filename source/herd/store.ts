/**
 * The herd file while it is open: its facts in memory, and the recording of new ones. A fact counts as recorded
 * only when it is on the disk itself; until then it stands apart as not saved.
 */
import type { Fact, NewFact } from '../breeding/facts.ts'
import type { Outcome, Problem } from '../breeding/problem.ts'
import { breathe } from './breathe.ts'
import { Gate } from './gate.ts'
import { Refusal } from './herd-file.ts'
import { type HerdParts, LiveState } from './live-state.ts'
import { asOutcome } from './outcome.ts'
import { asFacts } from './recording.ts'
import type { HerdState } from './state.ts'
import { saveCopyTo } from './store/copy.ts'
import { whyReadOnly } from './store/permission.ts'
import { Turns } from './turns.ts'

/** One action waiting for its turn to be saved. */
interface Action {
  readonly facts: readonly Fact[]
  outcome: Outcome<readonly Fact[]>
}

/** An open herd file. Made by `openHerdFile`. */
export class HerdStore {
  readonly #parts: HerdParts
  readonly #live: LiveState
  readonly #gate = new Gate()
  readonly #turns = new Turns()
  #waiting: Action[] = []

  constructor(parts: HerdParts) {
    this.#parts = parts
    this.#live = new LiveState(parts)
  }

  get path(): string {
    return this.#parts.path
  }
  get herdId(): string {
    return this.#parts.low.data.herdId
  }
  get state(): HerdState {
    return this.#live.now
  }
  get facts(): readonly Fact[] {
    return this.state.facts
  }
  get revision(): number {
    return this.state.revision
  }
  get mode(): HerdState['mode'] {
    return this.state.mode
  }
  get problems(): readonly Problem[] {
    return this.state.problems
  }

  /** Calls back after every change of `state`. @returns ends it */
  subscribe = (listener: () => void): (() => void) => this.#live.subscribe(listener)

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
    if (this.mode === 'read-only') return { ok: false, problems: this.#live.refusals }
    const facts = asFacts(newFacts, { at: this.#parts.world.now(), by })
    const action: Action = { facts, outcome: { ok: true, value: facts } }
    this.#waiting.push(action)
    await this.#turns.take(() => this.#saveWaiting())
    return action.outcome
  }

  /**
   * Tries again to save what is not saved.
   *
   * @param overOlder also where an older copy stands in the place of the file; the user has been asked
   * @returns whether everything is saved now, or why not
   */
  async retry(overOlder = false): Promise<Outcome<null>> {
    if (this.mode === 'read-only') return { ok: false, problems: this.#live.refusals }
    return this.#turns.take(async () => {
      const needed = this.state.unsaved.length > 0 || overOlder
      const problems = needed ? await this.#save(overOlder) : []
      return problems.length > 0 ? { ok: false, problems } : { ok: true, value: null }
    })
  }

  /** Tries again what is not saved; else looks for what other programs recorded and takes it in. */
  poll(): Promise<void> {
    return this.#turns.take(async () => {
      if (this.state.unsaved.length > 0) await this.#save(false)
      else await this.#look()
      await this.#live.lookBeside()
    })
  }

  /**
   * Writes the whole herd, the facts not saved included, to another new file: a stick, another folder.
   *
   * @param path a file that does not exist
   */
  saveCopy(path: string): Promise<Outcome<null>> {
    const { world, low } = this.#parts
    return this.#turns.take(() =>
      asOutcome(async () => {
        await saveCopyTo(world, path, low.data, this.state.unsaved)
        return null
      }),
    )
  }

  /** Waits for what is being saved. Between two saves nothing is open. */
  async close(): Promise<void> {
    await this.#turns.end()
    this.#live.end()
  }

  async #saveWaiting(): Promise<void> {
    const added: Action[] = []
    for (const action of this.#waiting.splice(0)) {
      const pending = [...this.state.unsaved, ...added.flatMap((each) => each.facts)]
      const problems = await this.#gate.refusals(this.#parts.low.data, pending, action.facts)
      if (problems.length > 0) action.outcome = { ok: false, problems }
      else added.push(action)
    }
    if (added.length === 0) return
    this.#live.change({
      saving: 'saving',
      unsaved: [...this.state.unsaved, ...added.flatMap((each) => each.facts)],
    })
    const problems = await this.#save(false)
    if (problems.length > 0) for (const action of added) action.outcome = { ok: false, problems }
  }

  async #save(overOlder: boolean): Promise<readonly Problem[]> {
    const { low, durable } = this.#parts
    const before = low.data
    try {
      durable.overOlder = overOlder
      low.data = { ...before, facts: before.facts.concat(this.state.unsaved) }
      await low.write()
      low.data = durable.saved
      this.#live.change({ saving: 'saved', unsaved: [], trouble: [] })
      return []
    } catch (error) {
      low.data = before
      const trouble = refused(error)
      this.#live.change({ saving: this.state.unsaved.length > 0 ? 'not-saved' : 'saved', trouble })
      return trouble
    }
  }

  async #look(): Promise<void> {
    const { world, paths, path, low, durable } = this.#parts
    try {
      const lost = (await durable.look()) ?? []
      low.data = durable.saved
      const readOnly = this.mode === 'read-only' ? await whyReadOnly(world, paths, path, durable.edited) : []
      this.#live.change({ readOnly, unsaved: lost, trouble: [] })
      if (lost.length > 0) await this.#save(false)
    } catch (error) {
      this.#live.change({ trouble: refused(error) })
    }
  }
}

function refused(error: unknown): readonly Problem[] {
  if (error instanceof Refusal) return error.problems
  throw error
}
