import { fault, notice, type Problem } from '../../breeding/problem.ts'
import { currentFormat, encodeFile, fileLimit } from '../format.ts'
import { type HerdFile, Refusal } from '../herd-file.ts'
import { dateInZone, zoneOf } from '../zone.ts'
import { keepCopy, keepDayCopy } from './backups.ts'
import type { Disk } from './disk.ts'
import type { Environment } from './environment.ts'
import { failure } from './failure.ts'
import type { Stamp } from './files.ts'
import type { Paths } from './paths.ts'
import { replaceFile } from './write.ts'

/** What is written: facts with their lines, as a revision of a herd. */
type NextRevision = Pick<HerdFile, 'revision' | 'herdId' | 'facts' | 'lines'>

/** What was written, and what is to be said of it beside. */
interface Committed {
  readonly herd: HerdFile
  readonly stamp: Stamp
  readonly notices: readonly Problem[]
}

/**
 * Puts a revision in the place of the file. Under the lock only.
 *
 * @param mode permission bits the file had
 * @throws Refusal where it is not surely on the disk
 */
export async function commit(
  world: Environment,
  paths: Paths,
  next: NextRevision,
  mode?: number,
): Promise<Committed> {
  const header = { format: currentFormat, revision: next.revision, herdId: next.herdId }
  const { parts } = await encodeFile(header, next.lines)
  if (parts.reduce((size, part) => size + part.length, 0) > fileLimit) {
    throw new Refusal(fault('herd-full', paths.file, { limit: fileLimit / 2 ** 20 }))
  }
  const { stamp, folder } = await replaceFile(world, paths.file, parts, mode)
  return {
    herd: { ...header, facts: next.facts, lines: next.lines },
    stamp,
    notices: folder === 'unsupported' ? [notice('folder-sync-unsupported', paths.folder)] : [],
  }
}

/**
 * Keeps the file as it stands before a save: once a day, and for good before a migration.
 *
 * @returns a notice where the day copy cannot be made; saving goes on
 * @throws Refusal where the copy before a migration cannot be made
 */
export async function keepCopies(world: Environment, paths: Paths, disk: Disk): Promise<Problem[]> {
  if (disk.herd.format < currentFormat) await keepCopy(world, paths, disk.bytes, `format-${disk.herd.format}`)
  try {
    await keepDayCopy(world, paths, disk.bytes, dateInZone(world.now(), zoneOf(disk.herd.facts)))
    return []
  } catch (error) {
    return [notice('backup-failed', paths.backups, { reason: failure(error, paths.backups).code })]
  }
}
