import { basename, dirname, join, resolve } from 'node:path'
import { newId } from '../ids.ts'
import type { Environment } from './environment.ts'
import { systemCode } from './files.ts'

/** Everything that stands beside a herd file, for the file itself (not for a link to it). */
export interface Paths {
  readonly file: string
  readonly folder: string
  readonly lock: string
  readonly backups: string
  /** Name of the file without `.json`. */
  readonly stem: string
}

export function pathsOf(file: string): Paths {
  const folder = dirname(file)
  const name = basename(file)
  return {
    file,
    folder,
    lock: join(folder, `.${name}.lock`),
    backups: join(folder, 'backups'),
    stem: name.replace(/\.json$/i, ''),
  }
}

/**
 * Where a file really is and what stands beside it: a save through a link must not replace the link. A file that is
 * missing is where its name says.
 */
export async function locate(world: Environment, path: string): Promise<Paths> {
  try {
    return pathsOf(await world.files.realPath(path))
  } catch (error) {
    systemCode(error)
    return pathsOf(resolve(path))
  }
}

/** A new name for a file that is being written, in the folder where it will stay. */
export const temporaryName = (path: string): string =>
  join(dirname(path), `.${basename(path)}.${newId()}.temp`)

/** Whether a name is that of a file left half written by an earlier save of this herd or of a copy of it. */
export const isTemporaryOf = (paths: Paths, name: string): boolean =>
  name.startsWith(`.${paths.stem}.`) && /\.[0-9a-z]{12}\.temp$/.test(name)
