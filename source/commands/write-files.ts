/** Writes files for the user, all of them or none: each beside its place first, then all are moved into place. */
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fault, type Outcome, type Problem } from '../breeding/problem.ts'
import { newId } from '../herd/ids.ts'
import { asOutcome } from '../herd/outcome.ts'
import { attempt } from '../herd/store/failure.ts'

export type NamedFile = readonly [name: string, content: string]

/**
 * Writes files into a folder, which is made where it is missing.
 *
 * @param files name and content, text or bytes
 * @param replace whether a file that is there and holds something else may be replaced
 * @returns the paths; or export-there, or a failure of the system, and then no file is changed
 */
export async function writeFiles(
  folder: string,
  files: readonly NamedFile[],
  replace: boolean,
): Promise<Outcome<string[]>> {
  const paths = files.map(([name, content]) => ({ path: join(folder, name), content }))
  if (!replace) {
    const there: Problem[] = []
    for (const { path, content } of paths)
      if (await holdsOther(path, content)) there.push(fault('export-there', path))
    if (there.length > 0) return { ok: false, problems: there }
  }
  const mark = newId()
  const beside = (path: string): string => `${path}.${mark}.tmp`
  const begun: string[] = []
  const written = await asOutcome(async () => {
    await attempt(folder, () => mkdir(folder, { recursive: true }))
    for (const { path, content } of paths) {
      begun.push(beside(path))
      await attempt(path, () => writeFile(beside(path), content, { flag: 'wx', flush: true }))
    }
    for (const { path } of paths) await attempt(path, () => rename(beside(path), path))
    return paths.map(({ path }) => path)
  })
  if (!written.ok) for (const path of begun) await rm(path, { force: true })
  return written
}

/** Whether a file is there with another content; one that cannot be read counts as such. */
async function holdsOther(path: string, content: string): Promise<boolean> {
  try {
    return (await readFile(path, 'utf8')) !== content
  } catch (error) {
    return (
      (error as NodeJS.ErrnoException).code !== 'ENOENT' &&
      (error as NodeJS.ErrnoException).code !== 'ENOTDIR'
    )
  }
}
