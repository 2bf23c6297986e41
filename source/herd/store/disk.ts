import { fault } from '../../breeding/problem.ts'
import { fileLimit } from '../format.ts'
import { type HerdFile, Refusal } from '../herd-file.ts'
import { readHerd } from '../reading.ts'
import type { Environment } from './environment.ts'
import { attempt } from './failure.ts'
import type { Stamp } from './files.ts'

/** A file as it was just read: what it holds, its bytes, and what it looked like from outside. */
export interface Disk {
  readonly herd: HerdFile
  /** Something other than this program changed it. */
  readonly edited: boolean
  readonly bytes: Buffer
  readonly stamp: Stamp
}

/**
 * Reads and judges a herd file.
 *
 * @param file where it really is, @param path the name to use in problems
 * @param known a revision read before, so that only new lines are parsed
 * @throws Refusal where it is missing (path-missing), not readable, damaged, newer or none of ours
 */
export async function readDisk(
  world: Environment,
  file: string,
  path: string,
  known?: HerdFile,
): Promise<Disk> {
  const { bytes, stamp } = await readBytes(world, file, path)
  const reading = await readHerd(bytes, path, { known, migrations: world.migrations })
  if (reading.state === 'fault') throw new Refusal(...reading.problems)
  return { herd: reading.herd, edited: reading.state === 'edited', bytes, stamp }
}

/** The bytes of a file that may be a herd file: a plain file, and not larger than one can be. */
export function readBytes(
  world: Environment,
  file: string,
  path: string,
): Promise<{ bytes: Buffer; stamp: Stamp }> {
  return attempt(path, async () => {
    const stamp = await world.files.stamp(file)
    if (!stamp.plain) throw new Refusal(fault('herd-no-file', path))
    if (stamp.size > fileLimit) throw new Refusal(tooLarge(path, Number(stamp.size)))
    return { bytes: await world.files.read(file), stamp }
  })
}

const tooLarge = (path: string, size: number) =>
  fault('herd-too-large', path, { megabytes: Math.ceil(size / 2 ** 20), limit: fileLimit / 2 ** 20 })
