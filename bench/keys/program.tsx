/**
 * The real screen on a terminal that only notes when it is written to: milliseconds from a key to its frame, and of
 * processor time for all that the key sets off, as JSON. A busy machine troubles the first more than the second.
 * Keys alone are pressed when all is quiet; keys in a row 20 ms apart, as when a key is held down.
 */
import { EventEmitter } from 'node:events'
import { readFileSync } from 'node:fs'
import { setTimeout as pause } from 'node:timers/promises'
import type { Instance } from 'ink'
import { dayIso, plusDays } from '../../source/breeding/day.ts'
import type { Fact, NewFact } from '../../source/breeding/facts.ts'
import { asFacts } from '../../source/herd/recording.ts'
import type { Herd, HerdState } from '../../source/screens/herd.ts'
import { startScreen } from '../../source/screens/open.tsx'
import { Session } from '../../source/screens/session.ts'
import { themeFor } from '../../source/screens/theme.ts'
import { benchDay, benchHerd } from '../herd.ts'
import { startPlainList } from './plain.tsx'

const ALONE = 60
const IN_A_ROW = 20
const PRESSES = 60
/** Presses before anything is measured, until the program is warm. */
const WARM_UP = 40

class Output extends EventEmitter {
  readonly isTTY = true
  readonly columns = 120
  readonly rows = 40
  /** When the first frame since the last key was drawn. */
  drawn: number | undefined
  write(data: string, ...then: unknown[]): boolean {
    if (data.length > 20) this.drawn ??= performance.now()
    const done = then.find((one) => typeof one === 'function') as (() => void) | undefined
    if (done !== undefined) setImmediate(done)
    return true
  }
}

class Input extends EventEmitter {
  readonly isTTY = true
  #chunks: string[] = []
  setRawMode = (): this => this
  setEncoding = (): this => this
  ref = (): this => this
  unref = (): this => this
  read = (): string | null => this.#chunks.shift() ?? null
  send(chunk: string): void {
    this.#chunks.push(chunk)
    this.emit('readable')
  }
}

/** Keeps what is recorded in memory: the disk is measured elsewhere. */
class Memory implements Herd {
  state: HerdState
  #listeners = new Set<() => void>()
  constructor(facts: readonly Fact[]) {
    this.state = { facts, unsaved: [], mode: 'writable', saving: 'saved', trouble: [], problems: [] }
  }
  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }
  record = async (newFacts: readonly NewFact[]) => {
    const facts = asFacts(newFacts, { at: new Date() })
    await pause(5)
    this.state = { ...this.state, facts: [...this.state.facts, ...facts] }
    for (const listener of this.#listeners) listener()
    return { ok: true, value: facts } as const
  }
  prepare = async () => {}
  poll = async () => {}
  retry = async () => ({ ok: true, value: null }) as const
  saveCopy = async () => ({ ok: true, value: null }) as const
}

/** Cows that all stand in the repeat-heat watch: as many rows as cows. */
function watched(cows: number): Fact[] {
  const [farm, season] = benchHerd(1).filter((fact) => fact.kind === 'farm' || fact.kind === 'season')
  const facts = [farm, season, ...benchHerd(1).filter((fact) => fact.kind === 'season')] as Fact[]
  const at = '2026-01-01T00:00:00.000Z'
  for (let i = 0; i < cows; i += 1) {
    const about = `w${i}`
    const number = String(i + 1)
    facts.push(
      {
        id: `a${i}`,
        about,
        at,
        date: '2026-01-01',
        kind: 'animal',
        number,
        name: 'Teasel',
        sex: 'F',
        block: 'spring',
        lactation: 2,
        born: '2021-02-01',
      },
      { id: `c${i}`, about, at, date: '2026-02-20', kind: 'calving' },
      {
        id: `s${i}`,
        about,
        at,
        date: dayIso(plusDays(benchDay, -21)),
        kind: 'service',
        sire: 'SB01',
        straw: 'conventional',
      },
    )
  }
  return facts
}

interface Case {
  readonly what: string
  /** Absent: a plain list in Ink in the place of the program. */
  readonly facts?: readonly Fact[]
  readonly keys: readonly string[]
}
const down = '\u001b[B'
const cases: readonly Case[] = [
  { what: 'plain Ink list', keys: [down] },
  { what: 'moving on 500 rows', facts: watched(500), keys: [down] },
  { what: 'moving on 5,000 rows', facts: watched(5000), keys: [down] },
  { what: 'pages of 5,000 rows', facts: watched(5000), keys: ['\u001b[6~', '\u001b[6~', '\u001b[5~'] },
  {
    what: 'typing numbers among 5,000',
    facts: watched(5000),
    keys: ['4', '1', '2', '\u007f', '\u007f', '\u007f'],
  },
  { what: 'ticking, 500 cows, 7,500 facts', facts: benchHerd(500), keys: [' '] },
]

async function measured(one: Case, apart: number): Promise<{ took: number[]; worked: number[] }> {
  const input = new Input()
  const output = new Output()
  const instance =
    one.facts === undefined
      ? startPlainList(input as never, output as never)
      : startProgram(one.facts, input, output)
  await pause(200)
  input.send('\r')
  await pause(200)
  const took: number[] = []
  const worked: number[] = []
  for (let press = -WARM_UP; press < PRESSES; press += 1) {
    const key = one.keys[(press + WARM_UP) % one.keys.length] ?? ''
    output.drawn = undefined
    const start = performance.now()
    const before = process.cpuUsage()
    input.send(key)
    await pause(apart)
    if (press < 0) continue
    const { user, system } = process.cpuUsage(before)
    took.push((output.drawn ?? Number.NaN) - start)
    worked.push((user + system) / 1000)
  }
  instance.unmount()
  return { took, worked }
}

/** Milliseconds between keys while the screen is being reckoned. */
const MEANWHILE = 15
/** A screen is opened so many times, each time of a herd that nothing is known of yet. */
const OPENED = 3
/** Keys pressed at most: one that changes what is to be reckoned would never come to an end. */
const MOST_KEYS = 40
/** Looks for a frame, a millisecond apart or more. */
const MOST_WAITED = 300

const drawnBy = ({ drawn }: Output): number | undefined => drawn

/**
 * Keys while what a screen shows is being reckoned, the ones that open it first. Each counts from when it was due: a
 * step that takes long holds up the key that comes in the middle of it.
 */
async function meanwhile(opening: readonly string[], keys: readonly string[]): Promise<(number | null)[]> {
  const took: (number | null)[] = []
  for (let round = 0; round < OPENED; round += 1) {
    const input = new Input()
    const output = new Output()
    const { instance, session } = begun(sampleHerd(), input, output)
    await pause(400)
    input.send('\r')
    await pause(400)
    let due = performance.now()
    for (let press = 0; press < opening.length || (session.reckons && press < MOST_KEYS); press += 1) {
      output.drawn = undefined
      input.send(opening[press] ?? keys[press % keys.length] ?? '')
      // Two keys may come to the frame that stands already: nothing is drawn then.
      for (let waited = 0; drawnBy(output) === undefined && waited < MOST_WAITED; waited += 1) await pause(1)
      const drawn = drawnBy(output)
      took.push(drawn === undefined ? null : drawn - due)
      due = performance.now() + MEANWHILE
      await pause(MEANWHILE)
    }
    instance.unmount()
  }
  return took
}

const sampleHerd = (): readonly Fact[] =>
  (JSON.parse(readFileSync(process.env.SAMPLE_HERD ?? '', 'utf8')) as { facts: Fact[] }).facts

function startProgram(facts: readonly Fact[], input: Input, output: Output): Instance {
  return begun(facts, input, output).instance
}

function begun(facts: readonly Fact[], input: Input, output: Output) {
  const session = new Session({
    herd: new Memory(facts),
    now: () => ({ day: benchDay, time: '05:15' }),
    stamp: (newFacts) => asFacts(newFacts, { at: new Date() }),
    by: 'AB',
  })
  const instance = startScreen({
    session,
    theme: themeFor({ colours: true, ascii: false }),
    stdin: input as never,
    stdout: output as never,
    process: { platform: 'linux', kill: () => {}, once: () => {}, off: () => {}, resized: () => {} },
  })
  return { instance, session }
}

const tab = '\t'
const [up, right, left] = ['\u001b[A', '\u001b[C', '\u001b[D']
/** Keys that each change what is shown, so that a frame follows. */
const reckoned = [
  { what: 'while the season is reckoned', opening: ['g', 's'], keys: [down, up] },
  { what: 'while its parts are', opening: ['g', 's'], keys: [tab] },
  { what: 'while a change is tried', opening: ['g', 's', tab, tab, tab, right], keys: [left, right] },
  { what: 'while bulls are reckoned', opening: ['g', 'b'], keys: [down, up] },
  { what: 'while the days ahead are', opening: ['g', 'a'], keys: [down, up] },
]

const results = []
const wanted = process.argv[2]
for (const one of cases)
  for (const [how, apart] of [
    ['alone', ALONE],
    ['20 ms apart', IN_A_ROW],
  ] as const) {
    if (how !== 'alone' && one.what.startsWith('ticking')) continue
    if (wanted !== undefined && !one.what.includes(wanted)) continue
    results.push({ what: `${one.what}, keys ${how}`, ...(await measured(one, apart)) })
  }
for (const { what, opening, keys } of reckoned) {
  if (wanted !== undefined && !what.includes(wanted)) continue
  results.push({ what, took: await meanwhile(opening, keys), worked: [] })
}
process.stdout.write(`${JSON.stringify(results)}\n`)
