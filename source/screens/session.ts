/**
 * A session at the screen: the desk, the herd that it records in, and the clock. Keys go in one at a time, each
 * seeing what the one before it did; the screen is told after all keys that arrived together.
 */

import { openBook } from '../breeding/book.ts'
import type { Fact, NewFact } from '../breeding/facts.ts'
import type { Outcome, Problem } from '../breeding/problem.ts'
import { act } from '../morning/act.ts'
import type { Action } from '../morning/action.ts'
import { type Desk, openDesk } from '../morning/desk.ts'
import { because, type Message } from '../morning/message.ts'
import type { Now } from '../morning/now.ts'
import { rowAt } from '../morning/page.ts'
import { reckoningOf } from '../morning/reckoning.ts'
import type { Ask, Leave } from '../morning/step.ts'
import { sentence } from '../words/index.ts'
import { type Herd, logOf, sameFacts, savingOf } from './herd.ts'
import type { KeyName } from './input/split.ts'
import { bindingOf, meaningOf, type View } from './keys.ts'
import { Reckoner } from './reckoner.ts'
import { Sent } from './sent.ts'

/** What a session is given from outside. */
interface Setup {
  readonly herd: Herd
  /** The moment on the farm; reads the clock. */
  readonly now: (zone: string) => Now
  /** Makes facts of what one action says, with ids; see herd/recording.ts. */
  readonly stamp: (facts: readonly NewFact[], by: string | undefined) => readonly Fact[]
  readonly by: string | undefined
}

/** Keys closer together than this are one spell of work, milliseconds. */
const SETTLE_AFTER = 30

/** So long after the screen began what the first tick needs is loaded: the first frame stands by then, milliseconds. */
const PREPARE_AFTER = 50

/** How often the clock and the file are looked at, milliseconds. */
const LOOK_EVERY = 2000

export class Session {
  readonly #setup: Setup
  readonly #listeners = new Set<() => void>()
  readonly #sent = new Sent()
  readonly #reckoner = new Reckoner(() => {
    this.#do({ do: 'reckoned' })
    this.#tell()
  })
  #desk: Desk
  #trying = false
  #settling: NodeJS.Timeout | undefined
  #ends: (() => void)[] = []
  #leave: (how: Leave) => void = () => {}

  constructor(setup: Setup) {
    this.#setup = setup
    const log = logOf(setup.herd.state)
    const { zone } = openBook(log.filter((fact) => fact.kind === 'farm')).farm
    this.#desk = openDesk(log, setup.now(zone), setup.by)
    this.#desk = { ...this.#desk, saving: savingOf(setup.herd.state, 0) }
  }

  /** What the screen shows: another object after every change. */
  get desk(): Desk {
    return this.#desk
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** Looks at the clock and the file from now on, until `stop`. @param leave called when the user leaves */
  start(leave: (how: Leave) => void): void {
    this.#leave = leave
    const timer = setInterval(() => {
      this.tick()
      void this.#setup.herd.poll()
    }, LOOK_EVERY)
    timer.unref()
    const ready = setTimeout(() => void this.#setup.herd.prepare(), PREPARE_AFTER)
    ready.unref()
    this.#ends = [
      () => clearInterval(timer),
      () => clearTimeout(ready),
      this.#setup.herd.subscribe(() => this.#herdChanged()),
    ]
  }

  stop(): void {
    clearTimeout(this.#settling)
    for (const end of this.#ends) end()
    this.#ends = []
    this.#reckoner.stop()
  }

  /** Something that the screen shown needs is still being reckoned. */
  get reckons(): boolean {
    return this.#reckoner.reckons
  }

  /** Looks at the clock once. */
  tick(): void {
    const now = this.#setup.now(this.#desk.book.farm.zone)
    if (now.day === this.#desk.now.day && now.time === this.#desk.now.time) return
    this.#do({ do: 'clock', now })
    this.#tell()
  }

  /** Keys that arrived together, in order. */
  press(keys: readonly KeyName[], view: View): void {
    this.#do({ do: 'clock', now: this.#setup.now(this.#desk.book.farm.zone) })
    // What is not saved is tried again with the next key.
    if (this.#desk.saving.state === 'not-saved') this.#tryAgain()
    for (const key of keys) {
      if (!waitsForNothing(this.#desk, key)) this.#do({ do: 'settle' })
      const meaning = meaningOf(this.#desk, key, view)
      if ('do' in meaning) this.#do(meaning)
      else this.#desk = { ...this.#desk, said: meaning }
    }
    this.#tell()
    this.#settleSoon()
  }

  /** Makes the list anew once the keys rest, after the frame that shows the tick. */
  #settleSoon(): void {
    clearTimeout(this.#settling)
    if (this.#desk.unsettled.length === 0) return
    this.#settling = setTimeout(() => {
      this.#do({ do: 'settle' })
      this.#tell()
    }, SETTLE_AFTER)
  }

  /** The screen is back after Ctrl+Z; or it could not be suspended at all. */
  backFromSuspension(stopped: boolean): void {
    this.tick()
    if (!stopped) this.#desk = { ...this.#desk, said: because('no-suspend') }
    this.#tell()
    void this.#setup.herd.poll()
  }

  /** Text that was pasted: it goes into the field, and is never taken for keys. */
  paste(text: string): void {
    if (this.#desk.slip !== undefined) this.#do({ do: 'put', text })
    else if (/^\s*\d+\s*$/.test(text)) this.#do({ do: 'digit', digit: text.trim() })
    this.#tell()
  }

  #do(action: Action): void {
    if (action.do === 'clock' && sameMoment(action.now, this.#desk.now)) return
    if (action.do === 'leave') this.#do(this.#saving())
    const step = act(this.#desk, action)
    this.#desk = step.desk
    if (step.record !== undefined) this.#record(step.record)
    if (step.ask !== undefined) this.#ask(step.ask)
    if (step.leave !== undefined) this.#leave(step.leave)
  }

  #record(newFacts: readonly NewFact[]): void {
    const { herd, stamp } = this.#setup
    if (herd.state.mode === 'read-only') {
      this.#refused(herd.state.problems)
      return
    }
    const facts = stamp(newFacts, this.#desk.by)
    this.#sent.add(facts)
    this.#do({ do: 'recorded', facts })
    const withIds = newFacts.map((fact, index): NewFact => ({ ...fact, id: facts[index]?.id ?? '' }))
    void herd.record(withIds, this.#desk.by).then((outcome) => {
      const { unsaved } = herd.state
      const kept = new Set(unsaved.map((fact) => fact.id))
      this.#sent.answered(facts)
      if (!outcome.ok && !facts.some((fact) => kept.has(fact.id))) this.#refused(outcome.problems)
      this.#herdChanged()
    })
  }

  #tryAgain(): void {
    if (this.#trying) return
    this.#trying = true
    void this.#setup.herd.retry().finally(() => {
      this.#trying = false
    })
  }

  #ask(ask: Ask): void {
    const { herd } = this.#setup
    const done = ask.do === 'copy' ? herd.saveCopy(ask.path) : herd.retry(true)
    void done.then((outcome) => {
      if (ask.do === 'copy') this.#do({ do: 'say', message: copyMessage(ask.path, outcome) })
      this.#herdChanged()
    })
  }

  /** The herd did not take the facts at all: the desk goes back to what the herd has. */
  #refused(problems: readonly Problem[]): void {
    const why = problems.map(sentence).join(' ')
    this.#do({ do: 'changed-elsewhere', log: this.#sent.behind(logOf(this.#setup.herd.state)) })
    this.#desk = { ...this.#desk, said: { tone: 'why', code: 'refused', values: { sentence: why } } }
  }

  /** The herd has been saved, or has taken in what another program recorded. */
  #herdChanged(): void {
    const log = logOf(this.#setup.herd.state)
    this.#sent.arrived(log)
    const all = this.#sent.behind(log)
    this.#do(
      sameFacts(all, this.#desk.log) ? { do: 'same-facts', log: all } : { do: 'changed-elsewhere', log: all },
    )
    // While ticks wait to be settled, the frame that settles them shows this as well.
    if (this.#desk.unsettled.length === 0) this.#tell()
  }

  #saving(): Action {
    return { do: 'saving', saving: savingOf(this.#setup.herd.state, this.#sent.count) }
  }

  #tell(): void {
    this.#do(this.#saving())
    for (const listener of this.#listeners) listener()
    this.#reckoner.want(reckoningOf(this.#desk))
  }
}

/** Keys that need nothing of the facts just ticked: moving, and ticking the next row of a section without straws. */
function waitsForNothing(desk: Desk, key: KeyName): boolean {
  const name = bindingOf(desk, key)?.name
  const section = rowAt(desk.page)?.section
  if (name === 'usual') return section === 'repeat-heat-watch' || section === 'pregnancy-check'
  return name === 'up' || name === 'down' || name === 'page-up' || name === 'page-down'
}

const copyMessage = (path: string, outcome: Outcome<null>): Message =>
  outcome.ok
    ? { tone: 'done', code: 'copied', values: { path } }
    : { tone: 'care', code: 'not-copied', values: { sentence: outcome.problems.map(sentence).join(' ') } }

const sameMoment = (a: Now, b: Now): boolean => a.day === b.day && a.time === b.time
