import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { readdir, readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { createHerdFile } from '../../../source/herd/create.ts'
import { openHerdFile } from '../../../source/herd/open.ts'
import { factsIn, good, notesIn, smallHerd } from './herds.ts'
import { seeded } from './worlds.ts'

const script = fileURLToPath(new URL('./writer.ts', import.meta.url))

/** A writer in a process of its own, and what it said. */
class Writer {
  readonly saved: string[] = []
  readonly refused: string[] = []
  readonly process: ChildProcess
  readonly ended: Promise<unknown>
  #rest = ''
  errors = ''

  constructor(path: string, name: string, first: number, count: number) {
    this.process = spawn(process.execPath, [script, path, name, String(first), String(count)], {
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    this.process.stdout?.setEncoding('utf8').on('data', (text: string) => this.#hear(text))
    this.process.stderr?.setEncoding('utf8').on('data', (text: string) => {
      this.errors += text
    })
    this.ended = once(this.process, 'close')
  }

  #hear(text: string): void {
    const lines = (this.#rest + text).split('\n')
    this.#rest = lines.pop() ?? ''
    for (const line of lines) {
      if (line.startsWith('saved ')) this.saved.push(line.slice('saved '.length))
      else this.refused.push(line)
    }
  }
}

/** What a run of writers showed. */
export interface WritersRun {
  readonly acknowledged: number
  /** Facts acknowledged and not in the file. */
  readonly lost: number
  readonly refused: readonly string[]
  readonly kills: number
  /** What a writer said on its error output. */
  readonly errors: string
  /** Half-written files after the next opening. */
  readonly leftovers: readonly string[]
}

async function judge(path: string, writers: readonly Writer[], kills: number): Promise<WritersRun> {
  const acknowledged = writers.flatMap((writer) => writer.saved)
  good(await openHerdFile(path))
  const there = new Set(notesIn(await factsIn(await readFile(path))))
  const names = await readdir(dirname(path), { recursive: true })
  return {
    acknowledged: acknowledged.length,
    lost: acknowledged.filter((text) => !there.has(text)).length,
    refused: writers.flatMap((writer) => writer.refused),
    kills,
    errors: writers.map((writer) => writer.errors).join(''),
    leftovers: names.filter((name) => name.endsWith('.temp')),
  }
}

/**
 * Three writers, of which one is killed again and again, in the middle of its work, and started anew.
 *
 * @param kills how many, @param seconds after which three are enough, @param seed which one and when
 */
export async function killWriters(
  folder: string,
  kills: number,
  seconds = Number.POSITIVE_INFINITY,
  seed = 1,
): Promise<WritersRun> {
  const path = join(folder, 'herd.json')
  good(await createHerdFile(path, smallHerd))
  const random = seeded(seed)
  const all: Writer[] = []
  const start = (place: number): Writer => {
    const writer = new Writer(path, `writer${place}-${all.length}`, 1, 0)
    all.push(writer)
    return writer
  }
  const running = [start(0), start(1), start(2)]
  const end = performance.now() + seconds * 1000
  let killed = 0
  for (; killed < Math.min(3, kills) || (killed < kills && performance.now() < end); killed += 1) {
    const place = Math.floor(random() * running.length)
    const victim = running[place]
    while (victim !== undefined && victim.saved.length === 0 && victim.process.exitCode === null)
      await pause(5)
    await pause(300 * random())
    victim?.process.kill('SIGKILL')
    await victim?.ended
    running[place] = start(place)
  }
  for (const writer of running) writer.process.kill('SIGKILL')
  await Promise.all(running.map((writer) => writer.ended))
  return judge(path, all, killed)
}

/**
 * Several writers at once on one file; the first is frozen for a while again and again, where asked.
 *
 * @param each how many notes each records, @param frozen milliseconds the first one stands still at a time
 */
export async function writeTogether(
  folder: string,
  writers: number,
  each: number,
  frozen = 0,
): Promise<WritersRun> {
  const path = join(folder, 'herd.json')
  good(await createHerdFile(path, smallHerd))
  const all = Array.from({ length: writers }, (_, place) => new Writer(path, `writer${place}`, 1, each))
  if (frozen > 0) await freezeWhileSaving(path, all[0], frozen)
  await Promise.all(all.map((writer) => writer.ended))
  return judge(path, all, 0)
}

/** Stops a writer while it has a half-written file, so that it keeps the lock meanwhile. */
async function freezeWhileSaving(path: string, writer: Writer | undefined, frozen: number): Promise<void> {
  for (let tries = 0; writer !== undefined && tries < 500; tries += 1) {
    await pause(2)
    writer.process.kill('SIGSTOP')
    await pause(2)
    const saving = (await readdir(dirname(path))).some((name) => name.endsWith('.temp'))
    if (saving) await pause(frozen)
    writer.process.kill('SIGCONT')
    if (saving) return
  }
  throw new Error('the writer was never caught in the middle of a save')
}
