import { basename, join } from 'node:path'
import type { Environment } from './environment.ts'
import { systemCode } from './files.ts'
import { tryLock } from './locking.ts'
import { halfWritten, isArchiveName, type Paths, whyKept } from './paths.ts'

/**
 * Removes what a save that was killed left half written. Only under the lock, so that no other program's save is
 * disturbed; where that cannot be had now, the next opening does it.
 */
export async function sweep(world: Environment, paths: Paths): Promise<void> {
  const left = [
    ...(await leftIn(
      world,
      paths.folder,
      (name) => name === basename(paths.file) || isArchiveName(paths, name),
    )),
    ...(await leftIn(world, paths.backups, (name) => whyKept(paths, name) !== undefined)),
  ]
  if (left.length === 0) return
  const release = tryQuietly(world, paths)
  try {
    if (release === undefined) return
    for (const path of left) await world.files.remove(path).catch(systemCode)
  } finally {
    release?.()
  }
}

async function leftIn(
  world: Environment,
  folder: string,
  ours: (name: string) => boolean,
): Promise<string[]> {
  try {
    const names = await world.files.names(folder)
    return names.filter((name) => ours(halfWritten(name) ?? '')).map((name) => join(folder, name))
  } catch (error) {
    systemCode(error)
    return []
  }
}

function tryQuietly(world: Environment, paths: Paths): ReturnType<typeof tryLock> {
  try {
    return tryLock(world, paths)
  } catch {
    return undefined
  }
}
