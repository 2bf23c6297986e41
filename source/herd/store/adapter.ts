import type { Adapter } from 'lowdb'
import type { Fact } from '../../breeding/facts.ts'
import { fault, notice, type Problem } from '../../breeding/problem.ts'
import { currentFormat, encodeFile, encodeLines, fileLimit, joinLines } from '../format.ts'
import { type HerdFile, Refusal } from '../herd-file.ts'
import { readHerd } from '../reading.ts'
import { missingFrom } from '../union.ts'
import { dateInZone, zoneOf } from '../zone.ts'
import { keepCopy, keepDayCopy } from './backups.ts'
import type { Environment } from './environment.ts'
import { attempt, failure } from './failure.ts'
import type { Stamp } from './files.ts'
import { withLock } from './locking.ts'
import type { Paths } from './paths.ts'
import { replaceFile } from './write.ts'

/** A file as it was just read: what it holds and what it looked like from outside. */
interface Disk {
  readonly herd: HerdFile
  readonly edited: boolean
  readonly bytes: Buffer
  readonly stamp: Stamp
}

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
    const disk = await this.#readDisk()
    this.#edited = disk.edited
    this.#stamp = disk.stamp
    this.#saved = disk.herd
    return disk.herd
  }

  /**
   * Looks whether another program saved.
   *
   * @returns facts that this program knows and the file lacks; undefined where the file is the one known
   * @throws Refusal where the file cannot be used any more
   */
  async look(): Promise<readonly Fact[] | undefined> {
    const stamp = await attempt(this.#path, () => this.#world.files.stamp(this.#paths.file)).catch(vanished)
    if (this.#stamp !== undefined && sameStamp(stamp, this.#stamp)) return undefined
    const disk = await this.#readDisk()
    this.#refuseStranger(disk)
    if (disk.edited && !this.#edited) throw new Refusal(fault('herd-edited', this.#path))
    if (!this.#edited) this.#refuseOlder(disk)
    const lost = this.#edited ? [] : await missingFrom(disk.herd, this.saved, [], this.#path)
    this.#edited = disk.edited
    this.#stamp = disk.stamp
    this.#saved = disk.herd
    return lost
  }

  /**
   * Saves what a herd holds beyond the last revision.
   *
   * @param wanted facts of the last revision with new ones behind
   * @throws Refusal where nothing was saved
   */
  async write(wanted: HerdFile): Promise<void> {
    const { files } = this.#world
    await attempt(this.#path, () => files.mayWrite(this.#paths.file)).catch(vanished)
    await attempt(this.#paths.folder, () => files.mayWrite(this.#paths.folder))
    await withLock(this.#world, this.#paths, () => this.#save(wanted))
  }

  async #save(wanted: HerdFile): Promise<void> {
    const disk = await this.#readDisk().catch(vanished)
    this.#refuseStranger(disk)
    if (disk.edited) throw new Refusal(fault('herd-edited', this.#path))
    if (!this.overOlder) this.#refuseOlder(disk)
    const unsaved = wanted.facts.slice(this.saved.facts.length)
    const missing = await missingFrom(disk.herd, this.saved, unsaved, this.#path)
    const header = {
      format: currentFormat,
      revision: Math.max(disk.herd.revision, this.saved.revision) + 1,
      herdId: disk.herd.herdId,
    }
    const lines = joinLines(disk.herd.lines, await encodeLines(missing))
    const { parts } = await encodeFile(header, lines)
    if (parts.reduce((size, part) => size + part.length, 0) > fileLimit) {
      throw new Refusal(fault('herd-full', this.#path, { limit: fileLimit / 2 ** 20 }))
    }
    const notices = await this.#keepCopies(disk)
    const folder = await replaceFile(this.#world, this.#paths.file, parts, disk.stamp.mode)
    if (folder === 'unsupported') notices.push(notice('folder-sync-unsupported', this.#paths.folder))
    this.#saved = { ...header, facts: [...disk.herd.facts, ...missing], lines }
    this.#edited = false
    this.#notices = notices
    this.#stamp = await this.#world.files.stamp(this.#paths.file).catch(() => undefined)
  }

  async #keepCopies(disk: Disk): Promise<Problem[]> {
    if (disk.herd.format < currentFormat) {
      await keepCopy(this.#world, this.#paths, disk.bytes, `format-${disk.herd.format}`)
    }
    try {
      const day = dateInZone(this.#world.now(), zoneOf(disk.herd.facts))
      await keepDayCopy(this.#world, this.#paths, disk.bytes, day)
      return []
    } catch (error) {
      const problem = failure(error, this.#paths.backups)
      return [notice('backup-failed', this.#paths.backups, { reason: problem.code })]
    }
  }

  async #readDisk(): Promise<Disk> {
    const { files, migrations } = this.#world
    const [bytes, stamp] = await attempt(this.#path, async () => {
      const before = await files.stamp(this.#paths.file)
      return [await files.read(this.#paths.file), before] as const
    })
    const reading = await readHerd(bytes, this.#path, {
      known: this.#edited ? undefined : this.#saved,
      migrations,
    })
    if (reading.state === 'fault') throw new Refusal(...reading.problems)
    return { herd: reading.herd, edited: reading.state === 'edited', bytes, stamp }
  }

  #refuseStranger(disk: Disk): void {
    if (disk.herd.herdId === this.saved.herdId) return
    throw new Refusal(
      fault('herd-replaced', this.#path, { found: disk.herd.herdId, known: this.saved.herdId }),
    )
  }

  #refuseOlder(disk: Disk): void {
    if (disk.herd.revision >= this.saved.revision) return
    throw new Refusal(
      fault('herd-older', this.#path, { found: disk.herd.revision, known: this.saved.revision }),
    )
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
