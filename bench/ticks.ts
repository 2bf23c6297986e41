/**
 * How long a tick takes to be on the disk, and how long the screen is held up meanwhile. Held up is what the thread
 * of the screen works without a pause, in processor time, so that a busy machine does not count.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { dayIso } from '../source/breeding/day.ts'
import { openHerdFile } from '../source/herd/open.ts'
import type { HerdStore } from '../source/herd/store.ts'
import { benchDay, benchHerd } from './herd.ts'
import { saveHerd } from './herd-file.ts'
import { type Finding, median, ms } from './measure.ts'

const rounds = 25
/** Cows of the herds: about 500, 7,500, 20,000 and 40,000 facts. */
const herds = [33, 500, 1333, 2667]
const durableBar = 50
const holdBar = 50

interface Ticks {
  readonly first: number
  readonly middle: number
  /** Longest stretch without a pause in any of the ticks, the first included. */
  readonly held: number
}

/** Durability and hold-up of ticks in herds of growing size. */
export async function ticks(): Promise<Finding[]> {
  const findings: Finding[] = []
  for (const cows of herds) {
    const folder = mkdtempSync(join(tmpdir(), 'dawnlist-ticks-'))
    try {
      const facts = benchHerd(cows)
      const file = join(folder, 'herd.json')
      await saveHerd(file, facts)
      const opened = await openHerdFile(file)
      if (!opened.ok) throw new Error(`refused: ${JSON.stringify(opened.problems)}`)
      const { first, middle, held } = await timed(opened.value)
      const size = `${facts.length.toLocaleString('en')} facts`
      findings.push(
        {
          what: `a tick durable, ${size}`,
          value: `${ms(middle)}, the first ${ms(first)}`,
          against: `${durableBar} ms`,
          ratio: middle / durableBar,
          bar: 1,
        },
        {
          what: `the screen held up by it, ${size}`,
          value: ms(held),
          against: `${holdBar} ms`,
          ratio: held / holdBar,
          bar: 1,
        },
      )
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  }
  return findings
}

async function timed(herd: HerdStore): Promise<Ticks> {
  const about = herd.facts.find((fact) => fact.kind === 'animal')?.about ?? ''
  await herd.prepare()
  const watch = watchThread()
  const took: number[] = []
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now()
    const outcome = await herd.record([{ kind: 'looked', about, date: dayIso(benchDay) }], 'AB')
    if (!outcome.ok) throw new Error(`refused: ${JSON.stringify(outcome.problems)}`)
    took.push(performance.now() - start)
    await pause(20)
  }
  return { first: took[0] ?? 0, middle: median(took.slice(1)), held: watch.stop() }
}

/** Watches how long this thread works between two pauses, milliseconds of processor time. */
function watchThread(): { stop: () => number } {
  let longest = 0
  let running = true
  let last = process.threadCpuUsage()
  const look = (): void => {
    const used = process.threadCpuUsage(last)
    longest = Math.max(longest, (used.user + used.system) / 1000)
    last = process.threadCpuUsage()
    if (running) setTimeout(look, 1)
  }
  setTimeout(look, 1)
  return {
    stop() {
      running = false
      return longest
    },
  }
}
