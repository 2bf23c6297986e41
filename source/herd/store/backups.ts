import { join } from 'node:path'
import type { IsoDate } from '../../breeding/day.ts'
import type { Environment } from './environment.ts'
import { attempt } from './failure.ts'
import type { Paths } from './paths.ts'
import { createFile, exists } from './write.ts'

/** Days whose copy is kept. */
export const backupsKept = 30

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

/** Names of the day copies of a herd, oldest first. */
export async function dayCopies(world: Environment, paths: Paths): Promise<string[]> {
  const pattern = new RegExp(`^${escaped(paths.stem)}\\.\\d{4}-\\d{2}-\\d{2}\\.json$`)
  try {
    return (await world.files.names(paths.backups)).filter((name) => pattern.test(name)).sort()
  } catch {
    return []
  }
}

/**
 * Keeps the herd as it stood before the first save of a day, and the 30 latest such copies.
 *
 * @param bytes the file as it was read and verified
 * @param day the date on the farm
 * @throws Refusal where the copy cannot be made
 */
export async function keepDayCopy(
  world: Environment,
  paths: Paths,
  bytes: Buffer,
  day: IsoDate,
): Promise<void> {
  const copy = join(paths.backups, `${paths.stem}.${day}.json`)
  await attempt(paths.backups, async () => {
    if (await exists(world, copy)) return
    await world.files.makeFolder(paths.backups)
    await createFile(world, copy, [bytes])
    const names = (await dayCopies(world, paths)).filter((name) => join(paths.backups, name) !== copy)
    for (const name of names.slice(0, Math.max(0, names.length + 1 - backupsKept))) {
      await world.files.remove(join(paths.backups, name))
    }
  })
}

/**
 * Keeps bytes for good under a name that says why, beside the day copies; once, if the same bytes are there already.
 *
 * @param why part of the name, `format-0`
 * @returns path of the copy
 * @throws Refusal where the copy cannot be made
 */
export async function keepCopy(
  world: Environment,
  paths: Paths,
  bytes: Buffer,
  why: string,
): Promise<string> {
  return attempt(paths.backups, async () => {
    await world.files.makeFolder(paths.backups)
    for (let count = 1; ; count += 1) {
      const copy = join(paths.backups, `${paths.stem}.${why}${count === 1 ? '' : `.${count}`}.json`)
      if (!(await exists(world, copy))) {
        await createFile(world, copy, [bytes])
        return copy
      }
      if ((await world.files.read(copy)).equals(bytes)) return copy
    }
  })
}
