/**
 * Closes old seasons: a copy of the whole herd as it stands is kept beside it, then the herd is saved without the
 * facts that nothing rests on any more, and with a fact that says which they were and where.
 */
import { basename } from 'node:path'
import { archivableOn } from '../breeding/archive.ts'
import { openBook } from '../breeding/book.ts'
import { dayIso, type IsoDate, isoDay } from '../breeding/day.ts'
import { type Fact, HERD, type NewFact } from '../breeding/facts.ts'
import { fault, type Outcome, type Problem } from '../breeding/problem.ts'
import { encodeLines } from './format.ts'
import { Refusal } from './herd-file.ts'
import { asOutcome } from './outcome.ts'
import { asFacts } from './recording.ts'
import { keepArchive } from './store/backups.ts'
import { commit, keepCopies } from './store/commit.ts'
import { type Disk, readDisk } from './store/disk.ts'
import { type Environment, thisComputer } from './store/environment.ts'
import { withLock } from './store/locking.ts'
import { locate, type Paths } from './store/paths.ts'
import { refuseReadOnly } from './store/permission.ts'
import { dateInZone, zoneOf } from './zone.ts'

/** What can be archived, or was. */
export interface Archived {
  /** The oldest season that stays whole begins on this day, five weeks before its mating start. */
  readonly before: IsoDate | undefined
  /** Facts that go, in order of recording; none where no season is old enough. */
  readonly went: readonly Fact[]
  /** How many facts stay, the one that tells of the archive left out. */
  readonly stay: number
  /** Path of the copy with everything; undefined where nothing was written. */
  readonly file: string | undefined
  readonly notices: readonly Problem[]
}

/** Tells what would be archived today on the farm. Nothing is written. */
export const lookAtArchive = (path: string, world: Environment = thisComputer): Promise<Outcome<Archived>> =>
  asOutcome(async () => {
    const { file } = await locate(world, path)
    return planned(world, await readDisk(world, file, path))
  })

/**
 * Archives what can be archived today on the farm. The copy is on the disk itself before the herd is changed, so that
 * at every instant each fact stands in one of the two.
 *
 * @param by initials of the person
 * @returns what went and where; with nothing to archive nothing is written. Or herd-edited, or a fault of file or disk
 */
export const archiveHerdFile = (
  path: string,
  by?: string,
  world: Environment = thisComputer,
): Promise<Outcome<Archived>> =>
  asOutcome(async () => {
    const paths = await locate(world, path)
    await refuseReadOnly(world, paths, path)
    return withLock(world, paths, async () => {
      const disk = await readDisk(world, paths.file, path)
      if (disk.edited) throw new Refusal(fault('herd-edited', path))
      const plan = planned(world, disk)
      return plan.before === undefined || plan.went.length === 0
        ? plan
        : written(world, paths, disk, plan, plan.before, by)
    })
  })

const farmDay = (world: Environment, disk: Disk): IsoDate => dateInZone(world.now(), zoneOf(disk.herd.facts))

function planned(world: Environment, disk: Disk): Archived {
  const { facts } = disk.herd
  const found = archivableOn(openBook(facts), isoDay(farmDay(world, disk)))
  const went = found?.facts ?? []
  return {
    before: found === undefined ? undefined : dayIso(found.before),
    went,
    stay: facts.length - went.length,
    file: undefined,
    notices: [],
  }
}

async function written(
  world: Environment,
  paths: Paths,
  disk: Disk,
  plan: Archived,
  before: IsoDate,
  by: string | undefined,
): Promise<Archived> {
  const day = farmDay(world, disk)
  const file = await keepArchive(world, paths, disk.bytes, day)
  const took = plan.went.map(({ id }) => id)
  const told: NewFact = { kind: 'archive', about: HERD, date: day, before, file: basename(file), took }
  const gone = new Set(took)
  const facts = [
    ...disk.herd.facts.filter(({ id }) => !gone.has(id)),
    ...asFacts([told], { at: world.now(), by }),
  ]
  const copies = await keepCopies(world, paths, disk)
  const { herdId, revision } = disk.herd
  const next = { revision: revision + 1, herdId, facts, lines: await encodeLines(facts) }
  const { notices } = await commit(world, paths, next, disk.stamp.mode)
  return { ...plan, file, notices: [...copies, ...notices] }
}
