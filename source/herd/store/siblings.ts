import { join } from 'node:path'
import { notice, type Problem } from '../../breeding/problem.ts'
import { headerOf } from '../format.ts'
import { type HerdFile, Refusal } from '../herd-file.ts'
import { missingFrom } from '../union.ts'
import { readDisk } from './disk.ts'
import type { Environment } from './environment.ts'
import { systemCode } from './files.ts'
import { isArchive, isArchiveName, type Paths } from './paths.ts'

const filesLookedAt = 200

/**
 * Watches for copies of a herd beside its file that hold facts which it lacks, such as programs leave that keep the
 * folders of two computers alike.
 */
export class CopiesBeside {
  readonly #world: Environment
  readonly #paths: Paths
  #seen = ''
  #notices: readonly Problem[] = []

  constructor(world: Environment, paths: Paths) {
    this.#world = world
    this.#paths = paths
  }

  /** One a copy: `copy-with-more`, or `copy-unclear` where it cannot be used as it is. */
  get notices(): readonly Problem[] {
    return this.#notices
  }

  /** Looks again where a file beside the herd or the herd itself changed. */
  async look(herd: HerdFile): Promise<void> {
    const paths = (await this.#names()).map((name) => join(this.#paths.folder, name))
    const stamps = await Promise.all(paths.map((path) => stampText(this.#world, path)))
    const seen = paths.length === 0 ? '' : [herd.revision, ...stamps].join('\n')
    if (seen === this.#seen) return
    this.#seen = seen
    this.#notices = await this.#copiesAmong(paths, herd)
  }

  async #names(): Promise<string[]> {
    // The herd goes on beside its archive, which shall not be brought up to date.
    if (isArchive(this.#paths)) return []
    try {
      const names = await this.#world.files.names(this.#paths.folder)
      return names.filter((name) => this.#mayBeCopy(name)).slice(0, filesLookedAt)
    } catch (error) {
      systemCode(error)
      return []
    }
  }

  #mayBeCopy(name: string): boolean {
    if (name.startsWith('.') || join(this.#paths.folder, name) === this.#paths.file) return false
    if (isArchiveName(this.#paths, name)) return false
    return /\.json$/i.test(name) || name.startsWith(this.#paths.stem)
  }

  async #copiesAmong(paths: readonly string[], herd: HerdFile): Promise<Problem[]> {
    const { file } = this.#paths
    const notices: Problem[] = []
    for (const path of paths) {
      if ((await herdIdIn(this.#world, path)) !== herd.herdId) continue
      try {
        const copy = await readDisk(this.#world, path, path)
        const more = await missingFrom(herd, copy.herd, [], path)
        if (more.length > 0) notices.push(notice('copy-with-more', path, { facts: more.length, file }))
      } catch (error) {
        if (!(error instanceof Refusal)) throw error
        notices.push(notice('copy-unclear', path, { reason: error.problems[0]?.code ?? '', file }))
      }
    }
    return notices
  }
}

/** What tells one state of a file from another; the path alone where it cannot be looked at. */
async function stampText(world: Environment, path: string): Promise<string> {
  try {
    const { inode, size, changed } = await world.files.stamp(path)
    return `${path} ${inode} ${size} ${changed}`
  } catch (error) {
    systemCode(error)
    return path
  }
}

async function herdIdIn(world: Environment, path: string): Promise<string | undefined> {
  try {
    if (!(await world.files.stamp(path)).plain) return undefined
    return headerOf(await world.files.readStart(path, 256))?.herdId
  } catch (error) {
    systemCode(error)
    return undefined
  }
}
