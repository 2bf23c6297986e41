import { createHerdFile } from '../../../source/herd/create.ts'
import { openHerdFile } from '../../../source/herd/open.ts'
import type { Environment } from '../../../source/herd/store/environment.ts'
import { codes, good, herdPath, note, smallHerd } from './herds.ts'
import { MemoryFiles } from './memory-files.ts'
import { memoryWorld } from './worlds.ts'

type Judgement = 'refused' | 'to be looked at' | 'accepted'

/** A computer in memory with a whole herd file and its day copy, in whose place damaged bytes are put. */
export class Judge {
  readonly whole: Buffer
  readonly #files: MemoryFiles
  readonly #world: Environment

  private constructor(files: MemoryFiles, world: Environment) {
    this.#files = files
    this.#world = world
    this.whole = files.peek(herdPath) ?? Buffer.alloc(0)
  }

  static async make(): Promise<Judge> {
    const files = new MemoryFiles()
    const world = memoryWorld({ files })
    good(await createHerdFile(herdPath, smallHerd, 'MK', world))
    good(await good(await openHerdFile(herdPath, world)).record([note('first')]))
    return new Judge(files, world)
  }

  /**
   * Opens damaged bytes, tries to record in them, and looks at them once more as an open program does.
   *
   * @throws Error where bytes that were not accepted were changed, or the reason or the day copies are not named
   */
  async judge(bytes: Buffer): Promise<Judgement> {
    this.#files.place(herdPath, bytes)
    const opened = await openHerdFile(herdPath, this.#world)
    if (!opened.ok) {
      const newest = opened.problems.find((problem) => problem.code === 'backups-there')?.values?.newest
      if (newest !== 'herd.2026-05-28.json') throw new Error('the day copy was not named')
      if (!opened.problems.some((problem) => problem.severity === 'fault'))
        throw new Error('no reason was given')
    } else {
      const outcome = await opened.value.record([note('must not be written')])
      if (outcome.ok) return 'accepted'
      if (codes(outcome).join() !== 'herd-edited') throw new Error(`refused for ${codes(outcome).join()}`)
      await opened.value.poll()
    }
    if (this.#files.peek(herdPath)?.equals(bytes) !== true) throw new Error('the bytes were changed')
    return opened.ok ? 'to be looked at' : 'refused'
  }

  /** How many of each judgement. */
  async tally(damaged: Iterable<Buffer>): Promise<Partial<Record<Judgement, number>>> {
    const found: Partial<Record<Judgement, number>> = {}
    for (const bytes of damaged) {
      const judgement = await this.judge(bytes)
      found[judgement] = (found[judgement] ?? 0) + 1
    }
    return found
  }
}
