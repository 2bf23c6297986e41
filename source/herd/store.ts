/**
 * The herd file while it is open: its facts in memory, and the recording of new ones. A fact counts as recorded
 * only when it is on the disk itself; until then it stands apart as not saved.
 */
import type { Low } from 'lowdb'
import type { Fact, NewFact } from '../breeding/facts.ts'
import type { Outcome, Problem } from '../breeding/problem.ts'
import { inSlices } from './breathe.ts'
import { type HerdFile, Refusal } from './herd-file.ts'
import { KnownFacts } from './known-facts.ts'
import { asFacts } from './recording.ts'
import type { DurableFile } from './store/adapter.ts'
import { saveCopyTo } from './store/copy.ts'
import type { Environment } from './store/environment.ts'

/** Pause between two looks at the file for what other programs recorded, milliseconds. */
export const pollEvery = 2000

/** What a screen shows of an open herd. Immutable: a change makes a new one. */
export interface HerdState {
  /** Facts on the disk, in order of recording. */
  readonly facts: readonly Fact[]
  readonly revision: number
  /** `read-only`: may be looked at only; `problems` says why. */
  readonly mode: 'writable' | 'read-only'
  /** `not-saved`: `unsaved` holds what was recorded and is not on the disk, `trouble` says why. */
  readonly saving: 'saved' | 'saving' | 'not-saved'
  readonly unsaved: readonly Fact[]
  /** What stands in the way of saving or of the file itself. */
  readonly trouble: readonly Problem[]
  /** What was noticed on opening and saving, and does not stand in the way. */
  readonly problems: readonly Problem[]
}

/** One action waiting for its turn to be saved. */
interface Action {
  readonly facts: readonly Fact[]
  outcome: Outcome<readonly Fact[]> | undefined
}

/** An open herd file. Made by `openHerdFile`. */
export class HerdStore {
  readonly path: string
  readonly herdId: string
  readonly #world: Environment
  readonly #low: Low<HerdFile>
  readonly #durable: DurableFile
  readonly #listeners = new Set<() => void>()
  #state: HerdState
  #waiting: Action[] = []
  #queue: Promise<unknown> = Promise.resolve()
  #known: KnownFacts | undefined
  #knownFacts: readonly Fact[] = []

  constructor(
    world: Environment,
    path: string,
    low: Low<HerdFile>,
    durable: DurableFile,
    problems: readonly Problem[],
  ) {
    this.#world = world
    this.path = path
    this.#low = low
    this.#durable = durable
    this.herdId = low.data.herdId
    this.#state = {
      facts: low.data.facts,
      revision: low.data.revision,
      mode: problems.some(closes) ? 'read-only' : 'writable',
      saving: 'saved',
      unsaved: [],
      trouble: [],
      problems,
    }
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
   * Records what one action of the user says. Calls are saved in order, those that wait together in one save.
   *
   * @param newFacts what happened
   * @param by initials of the person
   * @returns the recorded facts once they are on the disk; or why not: then they are refused where they are wrong
   *   or the file is read-only, and otherwise kept in `state.unsaved` and tried again by the next record or retry
   */
  async record(newFacts: readonly NewFact[], by?: string): Promise<Outcome<readonly Fact[]>> {
    if (this.mode === 'read-only') return { ok: false, problems: this.problems.filter(closes).map(asFault) }
    const facts = asFacts(newFacts, { at: this.#world.now(), ...(by === undefined ? {} : { by }) })
    const action: Action = { facts, outcome: undefined }
    this.#waiting.push(action)
    await this.#inTurn(() => this.#saveWaiting())
    return action.outcome ?? { ok: true, value: facts }
  }

  /**
   * Tries again to save what is not saved.
   *
   * @param overOlder also where an older copy stands in the place of the file; the user has been asked
   * @returns whether everything is saved now, or why not
   */
  async retry(overOlder = false): Promise<Outcome<null>> {
    if (this.mode === 'read-only') return { ok: false, problems: this.problems.filter(closes).map(asFault) }
    return this.#inTurn(async () => {
      const problems = this.#state.unsaved.length > 0 || overOlder ? await this.#save(overOlder) : []
      return problems.length > 0 ? { ok: false, problems } : { ok: true, value: null }
    })
  }

  /** Looks for what other programs recorded and takes it in; tries again what is not saved. */
  poll(): Promise<void> {
    return this.#inTurn(async () => {
      try {
        const lost = await this.#durable.look()
        if (lost !== undefined) {
          this.#low.data = this.#durable.saved
          const unsaved = [...lost, ...this.#state.unsaved]
          this.#change({
            ...this.#asSaved(),
            unsaved,
            trouble: unsaved.length > 0 ? this.#state.trouble : [],
          })
        }
      } catch (error) {
        this.#change({ trouble: refused(error) })
        return
      }
      if (this.#state.unsaved.length > 0 && this.mode === 'writable') await this.#save(false)
    })
  }

  /**
   * Writes the whole herd, the facts not saved included, to another new file: a stick, another folder.
   *
   * @param path a file that does not exist
   */
  saveCopy(path: string): Promise<Outcome<null>> {
    return this.#inTurn(() => saveCopyTo(this.#world, path, this.#low.data, this.#state.unsaved))
  }

  /** Waits for what is being saved. Nothing else is open between two saves. */
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
    const actions = this.#waiting.splice(0)
    const added = new Map<Action, readonly Fact[]>()
    for (const action of actions) {
      const problems = await this.#refusals(action.facts, [...added.values()].flat())
      if (problems.length > 0) action.outcome = { ok: false, problems }
      else added.set(action, action.facts)
    }
    if (added.size === 0) return
    this.#change({ unsaved: [...this.#state.unsaved, ...[...added.values()].flat()] })
    const problems = await this.#save(false)
    for (const [action, facts] of added) {
      action.outcome = problems.length > 0 ? { ok: false, problems } : { ok: true, value: facts }
    }
  }

  /** What speaks against facts, judged by the whole schema: only right facts ever get a right sum. */
  async #refusals(facts: readonly Fact[], before: readonly Fact[]): Promise<Problem[]> {
    const { checkAdded } = await import('./check.ts')
    const all = new KnownFacts(await this.#knownSaved())
    for (const fact of [...this.#state.unsaved, ...before]) all.add(fact)
    return checkAdded(all, facts)
  }

  async #knownSaved(): Promise<KnownFacts> {
    const { facts } = this.#low.data
    const before = this.#knownFacts
    const grew =
      facts.length >= before.length && facts[0] === before[0] && facts[before.length - 1] === before.at(-1)
    const known = this.#known !== undefined && grew ? this.#known : new KnownFacts()
    await inSlices(known === this.#known ? facts.slice(before.length) : facts, 2000, (fact) =>
      known.add(fact),
    )
    this.#known = known
    this.#knownFacts = facts
    return known
  }

  async #save(overOlder: boolean): Promise<readonly Problem[]> {
    const before = this.#low.data
    this.#change({ saving: 'saving' })
    try {
      this.#durable.overOlder = overOlder
      this.#low.data = { ...before, facts: [...before.facts, ...this.#state.unsaved] }
      await this.#low.write()
      this.#low.data = this.#durable.saved
      this.#change({
        ...this.#asSaved(),
        saving: 'saved',
        unsaved: [],
        trouble: [],
        problems: [
          ...this.#state.problems.filter(
            (problem) => !this.#durable.notices.some((each) => each.code === problem.code),
          ),
          ...this.#durable.notices,
        ],
      })
      return []
    } catch (error) {
      this.#low.data = before
      const trouble = refused(error)
      this.#change({ saving: 'not-saved', trouble })
      return trouble
    }
  }

  #asSaved(): Pick<HerdState, 'facts' | 'revision'> {
    return { facts: this.#low.data.facts, revision: this.#low.data.revision }
  }

  #change(change: Partial<HerdState>): void {
    this.#state = { ...this.#state, ...change }
    for (const listener of this.#listeners) listener()
  }
}

const closes = (problem: Problem): boolean =>
  problem.code === 'herd-edited' || problem.code === 'herd-read-only'
const asFault = (problem: Problem): Problem => ({ ...problem, severity: 'fault' })

function refused(error: unknown): readonly Problem[] {
  if (error instanceof Refusal) return error.problems
  throw error
}
