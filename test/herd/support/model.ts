/**
 * Everything that can happen to a herd file, at random, on two programs and a copy on a stick; after each step every
 * fact that was ever acknowledged must be in the file, once, or in an archive beside it.
 */
import { setImmediate } from 'node:timers/promises'
import fc from 'fast-check'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { archiveHerdFile } from '../../../source/herd/archive.ts'
import { createHerdFile } from '../../../source/herd/create.ts'
import { mergeFiles } from '../../../source/herd/merge-files.ts'
import { openHerdFile } from '../../../source/herd/open.ts'
import type { Environment } from '../../../source/herd/store/environment.ts'
import type { HerdStore } from '../../../source/herd/store.ts'
import { factsIn, good, herdPath, note, notesIn, oldHerd, oldNote } from './herds.ts'
import { intercept } from './intercept.ts'
import { MemoryFiles, systemError } from './memory-files.ts'
import { memoryLock, memoryWorld, seeded } from './worlds.ts'

const stick = '/stick/herd.json'

type Step =
  | { readonly do: 'record' | 'reopen' | 'poll' | 'retry'; readonly program: number }
  | { readonly do: 'record-both' | 'to-stick' | 'record-on-stick' | 'merge-stick' | 'archive' }
  | { readonly do: 'archive-fails'; readonly call: number; readonly ever: boolean }
  | {
      readonly do: 'fail'
      readonly program: number
      readonly call: number
      readonly code: string
      readonly ever: boolean
    }
  | { readonly do: 'kill'; readonly program: number; readonly call: number }
  | { readonly do: 'power-cut'; readonly call: number; readonly seed: number }
  | { readonly do: 'older-copy'; readonly program: number }

const program = fc.constantFrom(0, 1)
const call = fc.integer({ min: 1, max: 40 })

/** Any one step. */
const anyStep: fc.Arbitrary<Step> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ do: fc.constantFrom('record', 'reopen', 'poll', 'retry'), program }) },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constantFrom('record-both', 'to-stick', 'record-on-stick', 'merge-stick'),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('fail'),
      program,
      call,
      code: fc.constantFrom('EIO', 'ENOSPC', 'EACCES', 'EROFS', 'EMFILE'),
      ever: fc.boolean(),
    }),
  },
  { weight: 1, arbitrary: fc.constant({ do: 'archive' }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('archive-fails'), call, ever: fc.boolean() }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('kill'), program, call }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('power-cut'), call, seed: fc.nat() }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('older-copy'), program }) },
) as fc.Arbitrary<Step>

/** Two programs on one computer, which lives through crashes; what they were told is saved. */
class Farm {
  files = new MemoryFiles(['/farm', '/stick'])
  readonly acknowledged: string[] = []
  readonly onStick: string[] = []
  #lock = memoryLock()
  #programs: HerdStore[] = []
  #before: (() => void)[] = [() => undefined, () => undefined]
  #count = 0

  world(place?: number): Environment {
    const files = intercept(this.files, () => (place === undefined ? undefined : this.#before[place]?.()))
    return memoryWorld({ files, lock: this.#lock, pause: () => setImmediate() })
  }

  async start(): Promise<void> {
    good(await createHerdFile(herdPath, oldHerd, 'MK', this.world()))
    await this.open(0)
    await this.open(1)
  }

  async open(place: number): Promise<void> {
    this.#programs[place] = good(await openHerdFile(herdPath, this.world(place)))
  }

  store(place: number): HerdStore {
    const store = this.#programs[place]
    if (store === undefined) throw new Error('not open')
    return store
  }

  /** Calls of a program fail from one on, once or for ever. */
  arm(place: number, failing: number, ever: boolean, code: string): void {
    let calls = 0
    this.#before[place] = () => {
      calls += 1
      if (calls === failing || (ever && calls > failing)) throw systemError(code)
    }
  }

  disarm(): void {
    this.#before = [() => undefined, () => undefined]
  }

  nextText(): string {
    this.#count += 1
    return `note ${this.#count}`
  }

  /** Every second note is old enough to be archived. */
  nextNote(text: string): NewFact {
    return this.#count % 2 === 0 ? oldNote(text) : note(text)
  }

  /** Texts of the notes in the herd and in its archives, each once in the herd. */
  async texts(): Promise<Set<string>> {
    const there = notesIn(await factsIn(this.files.peek(herdPath)))
    for (const path of this.files.paths().filter((name) => name.startsWith('/farm/herd.archive-')))
      there.push(...notesIn(await factsIn(this.files.peek(path))))
    return new Set(there)
  }

  async record(place: number): Promise<void> {
    const text = this.nextText()
    const store = this.store(place)
    const before = store.state.unsaved
    if ((await store.record([this.nextNote(text)])).ok) this.acknowledged.push(...notesIn(before), text)
  }

  async powerCut(seed: number): Promise<void> {
    this.files = this.files.afterPowerCut(seeded(seed))
    this.#lock = memoryLock()
    this.disarm()
    await this.open(0)
    await this.open(1)
  }
}

async function take(farm: Farm, step: Step): Promise<void> {
  switch (step.do) {
    case 'record':
      return farm.record(step.program)
    case 'record-both':
      await Promise.all([farm.record(0), farm.record(1)])
      return
    case 'reopen':
      return farm.open(step.program)
    case 'poll':
      return farm.store(step.program).poll()
    case 'retry': {
      const unsaved = notesIn(farm.store(step.program).state.unsaved)
      if ((await farm.store(step.program).retry()).ok) farm.acknowledged.push(...unsaved)
      return
    }
    case 'fail':
      farm.arm(step.program, step.call, step.ever, step.code)
      await farm.record(step.program)
      farm.disarm()
      return
    case 'kill':
      farm.arm(step.program, step.call, true, 'EIO')
      await farm.record(step.program)
      farm.disarm()
      return farm.open(step.program)
    case 'power-cut':
      farm.arm(0, step.call, true, 'EIO')
      await farm.record(0)
      return farm.powerCut(step.seed)
    case 'archive':
      good(await archiveHerdFile(herdPath, 'MK', farm.world()))
      return
    case 'archive-fails':
      farm.arm(2, step.call, step.ever, 'EIO')
      await archiveHerdFile(herdPath, 'MK', farm.world(2))
      farm.disarm()
      return
    case 'to-stick': {
      const bytes = farm.files.peek(herdPath)
      if (bytes !== undefined) farm.files.place(stick, bytes)
      farm.onStick.length = 0
      return
    }
    case 'record-on-stick': {
      if (farm.files.peek(stick) === undefined) return
      const text = farm.nextText()
      good(await good(await openHerdFile(stick, farm.world())).record([farm.nextNote(text)]))
      farm.onStick.push(text)
      return
    }
    case 'merge-stick':
      if (farm.files.peek(stick) === undefined) return
      good(await mergeFiles(herdPath, stick, farm.world()))
      farm.acknowledged.push(...farm.onStick)
      return
    case 'older-copy': {
      // Only a copy that this program knows to be older: the other one has closed.
      const store = farm.store(step.program)
      await store.poll()
      const older = farm.files.peek(herdPath)
      await farm.record(step.program)
      if (older !== undefined) farm.files.place(herdPath, older)
      await store.poll()
      good(await store.retry(true))
      return farm.open(1 - step.program)
    }
  }
}

/** Takes steps one after the other. @throws Error at the first step after which something is lost or twice */
async function live(steps: readonly Step[]): Promise<void> {
  const farm = new Farm()
  await farm.start()
  for (const [place, step] of steps.entries()) {
    await take(farm, step)
    const there = await farm.texts()
    const lost = farm.acknowledged.filter((text) => !there.has(text))
    if (lost.length > 0) throw new Error(`after step ${place} (${step.do}) lost: ${lost.join(', ')}`)
  }
  await farm.store(0).poll()
  await farm.store(1).poll()
  await farm.store(0).poll()
  const [one, other] = [notesIn(farm.store(0).facts), notesIn(farm.store(1).facts)]
  if (one.join() !== other.join())
    throw new Error(`the two programs differ: ${one.join()} and ${other.join()}`)
}

/**
 * Lives through many lives of up to 60 steps.
 *
 * @param steps how many in all, @param seed a whole number; drawn where it is left out
 * @returns how many steps were taken
 */
export async function liveAtRandom(steps: number, seed?: number): Promise<number> {
  let taken = 0
  const life = fc.array(anyStep, { maxLength: 60, size: 'max' })
  for (let round = 0; taken < steps; round += 1) {
    await fc.assert(
      fc.asyncProperty(life, async (some) => {
        taken += some.length
        await live(some)
      }),
      { numRuns: 50, ...(seed === undefined ? {} : { seed: seed + round }) },
    )
  }
  return taken
}
