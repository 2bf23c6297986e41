import { join } from 'node:path'
import type { IsoDate } from '../../breeding/day.ts'
import type { Environment } from './environment.ts'
import { attempt } from './failure.ts'
import { systemCode } from './files.ts'
import { copyName, type Paths, whyKept } from './paths.ts'
import { createFile, exists, syncFolder } from './write.ts'

/** Permission bits of what is never to be written again. */
const readOnly = 0o444

/** Days whose copy is kept. */
export const backupsKept = 30

/** Names of the day copies of a herd, oldest first. */
export async function dayCopies(world: Environment, paths: Paths): Promise<string[]> {
  try {
    const names = await world.files.names(paths.backups)
    return names.filter((name) => /^\d{4}-/.test(whyKept(paths, name) ?? '')).sort()
  } catch (error) {
    systemCode(error)
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
  const copy = join(paths.backups, copyName(paths, day))
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
export const keepCopy = (world: Environment, paths: Paths, bytes: Buffer, why: string): Promise<string> =>
  attempt(paths.backups, async () => {
    await world.files.makeFolder(paths.backups)
    return keepIn(world, paths, paths.backups, bytes, why)
  })

/**
 * Keeps the whole herd beside its file before old seasons are closed, to be read only; once, if the same bytes are
 * there already from a closing that was cut short.
 *
 * @returns path of the archive, `farm.archive-2026-05-28.json`
 * @throws Refusal where it is not surely on the disk
 */
export const keepArchive = (world: Environment, paths: Paths, bytes: Buffer, day: IsoDate): Promise<string> =>
  attempt(paths.folder, () => keepIn(world, paths, paths.folder, bytes, `archive-${day}`, readOnly))

/** Under the first name of that kind that is free, or holds the same bytes. */
async function keepIn(
  world: Environment,
  paths: Paths,
  folder: string,
  bytes: Buffer,
  why: string,
  mode?: number,
): Promise<string> {
  for (let count = 1; ; count += 1) {
    const copy = join(folder, copyName(paths, count === 1 ? why : `${why}.${count}`))
    if (!(await exists(world, copy))) await createFile(world, copy, [bytes], mode)
    // It may be left from a try that ended before its name was on the disk.
    else if ((await world.files.read(copy)).equals(bytes)) await syncFolder(world, folder)
    else continue
    return copy
  }
}
