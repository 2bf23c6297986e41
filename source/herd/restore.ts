import { basename, join } from 'node:path'
import type { Fact } from '../breeding/facts.ts'
import { fault, type Outcome } from '../breeding/problem.ts'
import { encodeLines, joinLines } from './format.ts'
import { type HerdFile, Refusal } from './herd-file.ts'
import { asOutcome } from './outcome.ts'
import { readHerd } from './reading.ts'
import { readableFacts, revisionIn } from './salvage.ts'
import { dayCopies, keepCopy } from './store/backups.ts'
import { commit } from './store/commit.ts'
import { readBytes, readDisk } from './store/disk.ts'
import { type Environment, thisComputer } from './store/environment.ts'
import { withLock } from './store/locking.ts'
import { locate, type Paths } from './store/paths.ts'
import { refuseReadOnly } from './store/permission.ts'
import { exists } from './store/write.ts'
import { dateInZone, zoneOf } from './zone.ts'

/** What was restored. */
interface Restored {
  /** The copy it came from. */
  readonly from: string
  readonly facts: readonly Fact[]
  /** Facts recorded after that copy, still readable in the damaged file: to be looked through by the user. */
  readonly recovered: readonly Fact[]
  readonly revision: number
  /** The damaged file, byte for byte; absent where there was none. */
  readonly kept?: string
}

/**
 * Day copies of a herd file, newest first, as paths.
 *
 * @example await backupsOf('farm.json') // ['backups/farm.2026-05-28.json', …]
 */
export async function backupsOf(path: string, world: Environment = thisComputer): Promise<string[]> {
  const paths = await locate(world, path)
  return (await dayCopies(world, paths)).reverse().map((name) => join(paths.backups, name))
}

/**
 * Puts a day copy in the place of a herd file that is missing or damaged, with every fact on top that can still be
 * read in the damaged file. The damaged file is kept.
 *
 * @param from a copy; without it the newest that is whole. Only with it a file that is whole gives way too
 * @returns what was restored; or restore-needless, no-backup, herd-replaced, herd-newer, or a fault of the copy
 */
export const restoreHerdFile = (
  path: string,
  from?: string,
  world: Environment = thisComputer,
): Promise<Outcome<Restored>> =>
  asOutcome(async () => {
    const paths = await locate(world, path)
    return withLock(world, paths, async () => {
      const isThere = await exists(world, paths.file)
      if (isThere) await refuseReadOnly(world, paths, path)
      const present = isThere ? await readBytes(world, paths.file, path) : undefined
      const copy = from === undefined ? await newestWhole(world, paths) : await wholeCopy(world, from)
      if (present !== undefined) await refuseGood(present.bytes, path, copy.herd, from !== undefined)
      const bytes = present?.bytes ?? Buffer.alloc(0)
      const recovered = await readableFacts(bytes, copy.herd)
      const day = dateInZone(world.now(), zoneOf(copy.herd.facts))
      const kept = present && (await keepCopy(world, paths, bytes, `replaced-${day}`))
      const next = {
        revision: Math.max(copy.herd.revision, revisionIn(bytes)) + 1,
        herdId: copy.herd.herdId,
        facts: [...copy.herd.facts, ...recovered],
        lines: joinLines(copy.herd.lines, await encodeLines(recovered)),
      }
      const { herd } = await commit(world, paths, next, present?.stamp.mode)
      return {
        from: copy.path,
        facts: herd.facts,
        recovered,
        revision: herd.revision,
        ...(kept === undefined ? {} : { kept }),
      }
    })
  })

interface Copy {
  readonly path: string
  readonly herd: HerdFile
}

async function wholeCopy(world: Environment, path: string): Promise<Copy> {
  const disk = await readDisk(world, path, path)
  if (disk.edited) throw new Refusal(fault('herd-edited', path))
  return { path, herd: disk.herd }
}

async function newestWhole(world: Environment, paths: Paths): Promise<Copy> {
  for (const name of (await dayCopies(world, paths)).reverse()) {
    try {
      return await wholeCopy(world, join(paths.backups, name))
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
    }
  }
  throw new Refusal(fault('no-backup', paths.backups, { file: basename(paths.file) }))
}

/** A file that works, that another program reads or that is another herd's is not replaced. */
async function refuseGood(bytes: Buffer, path: string, copy: HerdFile, asked: boolean): Promise<void> {
  const reading = await readHerd(bytes, path)
  if (reading.state === 'fault') {
    const newer = reading.problems.find((problem) => problem.code === 'herd-newer')
    if (newer !== undefined) throw new Refusal(newer)
    return
  }
  if (reading.herd.herdId !== copy.herdId) {
    throw new Refusal(fault('herd-replaced', path, { found: reading.herd.herdId, known: copy.herdId }))
  }
  if (!asked) throw new Refusal(fault('restore-needless', path))
}
