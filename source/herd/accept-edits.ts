import type { Fact } from '../breeding/facts.ts'
import { fault, type Outcome } from '../breeding/problem.ts'
import { encodeLines } from './format.ts'
import { Refusal } from './herd-file.ts'
import { asOutcome } from './outcome.ts'
import { keepCopy } from './store/backups.ts'
import { commit } from './store/commit.ts'
import { readDisk } from './store/disk.ts'
import { type Environment, thisComputer } from './store/environment.ts'
import { withLock } from './store/locking.ts'
import { locate } from './store/paths.ts'
import { refuseReadOnly } from './store/permission.ts'
import { dateInZone, zoneOf } from './zone.ts'

/** What was taken over. */
interface AcceptedEdits {
  readonly facts: readonly Fact[]
  readonly revision: number
  /** The file as it was edited, byte for byte. */
  readonly kept: string
}

/**
 * Adopts a file that was edited by hand, after the whole schema has judged it: keeps a copy of it as it stands and
 * writes it anew with a right sum, as the next revision.
 *
 * @returns what was taken over; or herd-unedited where there is nothing to accept, or the faults of the file
 */
export const acceptEdits = (
  path: string,
  world: Environment = thisComputer,
): Promise<Outcome<AcceptedEdits>> =>
  asOutcome(async () => {
    const paths = await locate(world, path)
    await refuseReadOnly(world, paths, path)
    return withLock(world, paths, async () => {
      const disk = await readDisk(world, paths.file, path)
      if (!disk.edited) throw new Refusal(fault('herd-unedited', path))
      const { herdId, facts, revision } = disk.herd
      const day = dateInZone(world.now(), zoneOf(facts))
      const kept = await keepCopy(world, paths, disk.bytes, `edited-${day}`)
      const next = { revision: revision + 1, herdId, facts, lines: await encodeLines(facts) }
      const { herd } = await commit(world, paths, next, disk.stamp.mode)
      return { facts: herd.facts, revision: herd.revision, kept }
    })
  })
