import type { Fact } from '../breeding/facts.ts'
import { fault, type Outcome, type Problem } from '../breeding/problem.ts'
import { encodeLines, joinLines } from './format.ts'
import { type HerdFile, Refusal } from './herd-file.ts'
import { asOutcome } from './outcome.ts'
import { commit, keepCopies } from './store/commit.ts'
import { readDisk } from './store/disk.ts'
import { type Environment, thisComputer } from './store/environment.ts'
import { withLock } from './store/locking.ts'
import { locate } from './store/paths.ts'
import { refuseReadOnly } from './store/permission.ts'
import { missingFrom } from './union.ts'

/** What a merge brought. */
interface Merged {
  /** Facts that only the other file had. */
  readonly added: readonly Fact[]
  readonly revision: number
  readonly notices: readonly Problem[]
}

/**
 * Takes into a herd file what a copy of it holds beyond it; the copy stays as it is. Copies come from programs that
 * keep folders of two computers alike, from sticks, and from ticks that could not be saved.
 *
 * @param path the herd file, @param other the copy
 * @returns what was added; or herd-replaced where the other file is of another herd, herd-edited where one of them
 *   was changed by hand, fact-differs where they disagree on a fact, or a fault of either
 */
export const mergeFiles = (
  path: string,
  other: string,
  world: Environment = thisComputer,
): Promise<Outcome<Merged>> =>
  asOutcome(async () => {
    const paths = await locate(world, path)
    const { file } = await locate(world, other)
    await refuseReadOnly(world, paths, path)
    return withLock(world, paths, async () => {
      const disk = await readDisk(world, paths.file, path)
      const copy = await readDisk(world, file, other)
      if (disk.edited) throw new Refusal(fault('herd-edited', path))
      if (copy.edited) throw new Refusal(fault('herd-edited', other))
      refuseStranger(disk.herd, copy.herd, other)
      const added = await missingFrom(disk.herd, copy.herd, [], path)
      if (added.length === 0) return { added, revision: disk.herd.revision, notices: [] }
      const next = {
        revision: Math.max(disk.herd.revision, copy.herd.revision) + 1,
        herdId: disk.herd.herdId,
        facts: [...disk.herd.facts, ...added],
        lines: joinLines(disk.herd.lines, await encodeLines(added)),
      }
      const copies = await keepCopies(world, paths, disk)
      const { herd, notices } = await commit(world, paths, next, disk.stamp.mode)
      return { added, revision: herd.revision, notices: [...copies, ...notices] }
    })
  })

function refuseStranger(herd: HerdFile, copy: HerdFile, path: string): void {
  if (herd.herdId === copy.herdId) return
  throw new Refusal(fault('herd-replaced', path, { found: copy.herdId, known: herd.herdId }))
}
