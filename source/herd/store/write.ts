import { fault } from '../../breeding/problem.ts'
import { Refusal } from '../herd-file.ts'
import type { Environment } from './environment.ts'
import { attempt } from './failure.ts'
import { type OpenFile, type Stamp, systemCode } from './files.ts'
import { pathsOf, temporaryName } from './paths.ts'

const writeSlice = 1024 * 1024
const renameWait = 6000
const renamePause = 50
const held = ['EPERM', 'EACCES', 'EBUSY']
const unsupported = ['EINVAL', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS']

/** A file that was written. */
interface Written {
  /** What it looks like from outside, as nobody else can have changed it yet. */
  readonly stamp: Stamp
  /** Whether the folder could be brought to the disk too, or its file system cannot do that. */
  readonly folder: 'synced' | 'unsupported'
}

/**
 * Puts bytes in place of a file so that at every instant, power cuts included, the path holds either the old
 * bytes or all of the new ones: new file, sync, rename, sync of the folder.
 *
 * @param parts the bytes, in order
 * @param mode permission bits of the file
 * @throws Refusal where any step fails; the old file is then still there, unless only the last step failed
 */
export async function replaceFile(
  world: Environment,
  path: string,
  parts: readonly Buffer[],
  mode?: number,
): Promise<Written> {
  const { temporary, stamp } = await writeTemporary(world, path, parts, mode)
  try {
    await attempt(path, () => renameOver(world, temporary, path))
  } catch (error) {
    await removeQuietly(world, temporary)
    throw error
  }
  return { stamp, folder: await syncFolder(world, pathsOf(path).folder) }
}

/**
 * Makes a new file, whole or not at all.
 *
 * @param mode permission bits of the file, where they are not the usual ones
 * @throws Refusal with `path-taken` where there is a file of that name
 */
export async function createFile(
  world: Environment,
  path: string,
  parts: readonly Buffer[],
  mode?: number,
): Promise<Written> {
  const { temporary, stamp } = await writeTemporary(world, path, parts, mode)
  try {
    await attempt(path, () => linkOrRename(world, temporary, path))
  } finally {
    await removeQuietly(world, temporary)
  }
  return { stamp, folder: await syncFolder(world, pathsOf(path).folder) }
}

async function writeTemporary(
  world: Environment,
  path: string,
  parts: readonly Buffer[],
  mode?: number,
): Promise<{ temporary: string; stamp: Stamp }> {
  const temporary = temporaryName(path)
  const file = await attempt(path, () => world.files.create(temporary, mode))
  try {
    return { temporary, stamp: await attempt(path, () => fill(file, parts, path)) }
  } catch (error) {
    await removeQuietly(world, temporary)
    throw error
  }
}

async function fill(file: OpenFile, parts: readonly Buffer[], path: string): Promise<Stamp> {
  let stamp: Stamp
  try {
    let size = 0
    for (const part of parts) {
      size += part.length
      for (let start = 0; start < part.length; start += writeSlice) {
        await writeAll(file, part.subarray(start, start + writeSlice), path)
      }
    }
    stamp = await file.stamp()
    if (stamp.size !== BigInt(size)) throw new Refusal(fault('write-short', path))
    await file.sync()
  } catch (error) {
    await file.close().catch(() => undefined)
    throw error
  }
  await file.close()
  return stamp
}

async function writeAll(file: OpenFile, bytes: Buffer, path: string): Promise<void> {
  let written = 0
  while (written < bytes.length) {
    const taken = await file.write(bytes, written)
    if (taken === 0) throw new Refusal(fault('write-short', path))
    written += taken
  }
}

/** On Windows another program that has the file open for a moment makes renaming fail: try for six seconds. */
async function renameOver(world: Environment, from: string, to: string): Promise<void> {
  for (let waited = 0; ; waited += renamePause) {
    try {
      return await world.files.rename(from, to)
    } catch (error) {
      if (world.platform !== 'win32' || !held.includes(systemCode(error))) throw error
      if (waited >= renameWait)
        throw new Refusal(fault('file-held', to, { reason: systemCode(error), seconds: renameWait / 1000 }))
    }
    await world.pause(renamePause)
  }
}

/** A second name never replaces a file. Where the file system knows none, nothing but the lock keeps others away. */
async function linkOrRename(world: Environment, from: string, to: string): Promise<void> {
  try {
    await world.files.link(from, to)
  } catch (error) {
    if (!['EPERM', ...unsupported].includes(systemCode(error))) throw error
    if (await exists(world, to)) throw new Refusal(fault('path-taken', to))
    await renameOver(world, from, to)
  }
}

export async function exists(world: Environment, path: string): Promise<boolean> {
  try {
    await world.files.stamp(path)
    return true
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return false
    throw error
  }
}

/** Waits until the names in a folder are on the disk itself, where its file system and the computer can do that. */
export async function syncFolder(world: Environment, folder: string): Promise<Written['folder']> {
  if (world.platform === 'win32') return 'synced'
  try {
    await attempt(folder, () => world.files.syncFolder(folder))
    return 'synced'
  } catch (error) {
    if (error instanceof Refusal && unsupported.includes(String(error.problems[0]?.values?.reason)))
      return 'unsupported'
    throw error
  }
}

/** Clearing up after a failure: what cannot be removed now goes when the file is next opened. */
async function removeQuietly(world: Environment, path: string): Promise<void> {
  try {
    await world.files.remove(path)
  } catch (error) {
    systemCode(error)
  }
}
