import type { Adapter } from 'lowdb'
import type { Fact } from '../../breeding/facts.ts'
import { fault, type Problem } from '../../breeding/problem.ts'
import { encodeLines, joinLines } from '../format.ts'
import { type HerdFile, Refusal } from '../herd-file.ts'
import { missingFrom } from '../union.ts'
import { commit, keepCopies } from './commit.ts'
import { type Disk, readDisk } from './disk.ts'
import type { Environment } from './environment.ts'
import { attempt } from './failure.ts'
import type { Stamp } from './files.ts'
import { withLock } from './locking.ts'
import type { Paths } from './paths.ts'
import { refuseReadOnly } from './permission.ts'

/**
 * Carries a herd to and from its file for lowdb, durably: `write` resolves when the facts are on the disk itself.
 * What other programs recorded meanwhile is kept. Every refusal leaves the file as it was.
 */
export class DurableFile implements Adapter<HerdFile> {
  /** Saves even where an older copy was put in the place of the file: the user has been asked. */
  overOlder = false
  readonly #world: Environment
  readonly #paths: Paths
  /** The name the user gave, for the problems. */
  readonly #path: string
  #saved: HerdFile | undefined
  #stamp: Stamp | undefined
  #edited = false
  #notices: readonly Problem[] = []

  constructor(world: Environment, paths: Paths, path: string) {
    this.#world = world
    this.#paths = paths
    this.#path = path
  }

  /** The last revision read or saved. */
  get saved(): HerdFile {
    if (this.#saved === undefined) throw new Error('a herd file is read before it is used')
    return this.#saved
  }

  /** Whether something other than this program changed the file. */
  get edited(): boolean {
    return this.#edited
  }

  /** What the last save has to say beside being done. */
  get notices(): readonly Problem[] {
    return this.#notices
  }

  /** @throws Refusal where the file is missing, not readable, damaged, newer or none of ours */
  async read(): Promise<HerdFile> {
    this.#takeIn(await readDisk(this.#world, this.#paths.file, this.#path))
    return this.saved
  }

  /**
   * Looks whether another program saved, and takes in what it recorded.
   *
   * @returns facts that this program knows and the file lacks; undefined where the file is the one known
   * @throws Refusal where the file cannot be used any more
   */
  async look(): Promise<readonly Fact[] | undefined> {
    const { files } = this.#world
    const stamp = await attempt(this.#path, () => files.stamp(this.#paths.file)).catch(vanished)
    if (this.#stamp !== undefined && sameStamp(stamp, this.#stamp)) return undefined
    const disk = await this.#readAgain()
    if (disk.edited && !this.#edited) throw new Refusal(fault('herd-edited', this.#path))
    if (!this.#edited) await this.#refuseOlder(disk)
    const lost = this.#edited ? [] : await missingFrom(disk.herd, this.saved, [], this.#path)
    this.#takeIn(disk)
    return lost
  }

  /**
   * Saves what a herd holds beyond the last revision.
   *
   * @param wanted facts of the last revision with new ones behind
   * @throws Refusal where nothing was saved
   */
  async write(wanted: HerdFile): Promise<void> {
    await refuseReadOnly(this.#world, this.#paths, this.#path).catch(vanished)
    await withLock(this.#world, this.#paths, () => this.#save(wanted))
  }

  async #save(wanted: HerdFile): Promise<void> {
    const disk = await this.#readAgain()
    if (disk.edited) throw new Refusal(fault('herd-edited', this.#path))
    if (!this.overOlder) await this.#refuseOlder(disk)
    const unsaved = wanted.facts.slice(this.saved.facts.length)
    const missing = await missingFrom(disk.herd, this.saved, unsaved, this.#path)
    const next = {
      revision: Math.max(disk.herd.revision, this.saved.revision) + 1,
      herdId: disk.herd.herdId,
      facts: disk.herd.facts.concat(missing),
      lines: joinLines(disk.herd.lines, await encodeLines(missing)),
    }
    const copies = await keepCopies(this.#world, this.#paths, disk)
    const { herd, stamp, notices } = await commit(this.#world, this.#paths, next, disk.stamp.mode)
    this.#saved = herd
    this.#notices = [...copies, ...notices]
    this.#stamp = stamp
  }

  async #readAgain(): Promise<Disk> {
    const known = this.#edited ? undefined : this.saved
    const disk = await readDisk(this.#world, this.#paths.file, this.#path, known).catch(vanished)
    if (disk.herd.herdId === this.saved.herdId) return disk
    throw new Refusal(
      fault('herd-replaced', this.#path, { found: disk.herd.herdId, known: this.saved.herdId }),
    )
  }

  #takeIn(disk: Disk): void {
    this.#edited = disk.edited
    this.#stamp = disk.stamp
    this.#saved = disk.herd
  }

  /** A lower revision with nothing new in it is an older copy that someone put there; with news it is a branch. */
  async #refuseOlder(disk: Disk): Promise<void> {
    const found = disk.herd.revision
    const known = this.saved.revision
    if (found >= known || (await missingFrom(this.saved, disk.herd, [], this.#path)).length > 0) return
    throw new Refusal(fault('herd-older', this.#path, { found, known }))
  }
}

/** A file that was there before and is not any more is never made again silently. */
function vanished(error: unknown): never {
  const problem = error instanceof Refusal ? error.problems[0] : undefined
  if (problem?.code === 'path-missing') throw new Refusal(fault('herd-vanished', problem.path))
  throw error
}

const sameStamp = (one: Stamp, other: Stamp): boolean =>
  one.inode === other.inode && one.size === other.size && one.changed === other.changed
