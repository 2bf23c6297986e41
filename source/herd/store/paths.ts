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

/**
 * The file that a name was to become when its writing was cut short.
 *
 * @returns undefined where it is no name of a half-written file
 * @example halfWritten('.herd.json.7k2m9qxc4t0z.temp') // 'herd.json'
 */
export const halfWritten = (name: string): string | undefined =>
  /^\.(.+)\.[0-9a-z]{12}\.temp$/.exec(name)?.[1]

/** Name of a copy that is kept in the folder of backups. @param why a date, or `format-0`, `edited-2026-05-28` */
export const copyName = (paths: Paths, why: string): string => `${paths.stem}.${why}.json`

/** Why a copy of this herd is kept, by its name; undefined where it is no copy of it. */
export function whyKept(paths: Paths, name: string): string | undefined {
  if (!name.startsWith(`${paths.stem}.`) || !name.endsWith('.json')) return undefined
  const why = name.slice(paths.stem.length + 1, -'.json'.length)
  return /^(\d{4}-\d{2}-\d{2}|[a-z]+-[\d-]+(\.\d+)?)$/.test(why) ? why : undefined
}

/** Whether a herd file is itself, by its name, an archive: the past of another one beside it. */
export const isArchive = (paths: Paths): boolean => /\.archive-\d{4}-\d{2}-\d{2}(\.\d+)?$/.test(paths.stem)

/** Whether a file beside the herd is, by its name, an archive of its closed seasons. */
export const isArchiveName = (paths: Paths, name: string): boolean =>
  whyKept(paths, name)?.startsWith('archive-') === true
