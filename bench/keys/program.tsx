/**
 * The real screen on a terminal that only notes when it is written to: milliseconds from a key to its frame, and of
 * processor time for all that the key sets off, as JSON. A busy machine troubles the first more than the second.
 * Keys alone are pressed when all is quiet; keys in a row 20 ms apart, as when a key is held down.
 */
import { EventEmitter } from 'node:events'
import { setTimeout as pause } from 'node:timers/promises'
import type { Instance } from 'ink'
import { dayIso, plusDays } from '../../source/breeding/day.ts'
import type { Fact, NewFact } from '../../source/breeding/facts.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { startScreen } from '../../source/screens/open.tsx'
import { type Herd, type HerdState, Session } from '../../source/screens/session.ts'
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

function startProgram(facts: readonly Fact[], input: Input, output: Output): Instance {
  const session = new Session({
    herd: new Memory(facts),
    now: () => ({ day: benchDay, time: '05:15' }),
    stamp: (newFacts) => asFacts(newFacts, { at: new Date() }),
    by: 'AB',
  })
  return startScreen({
    session,
    theme: themeFor({ colours: true, ascii: false }),
    stdin: input as never,
    stdout: output as never,
    process: { platform: 'linux', kill: () => {}, once: () => {}, off: () => {}, resized: () => {} },
  })
}

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
process.stdout.write(`${JSON.stringify(results)}\n`)
