import { readdir, readlink } from 'node:fs/promises'
import { join } from 'node:path'

/** Paths in a folder, itself included, that this program has open; undefined where the system does not tell. */
export async function openIn(folder: string): Promise<readonly string[] | undefined> {
  const open = '/proc/self/fd'
  const numbers = await readdir(open).catch(() => undefined)
  // What was open a moment ago may be closed by now.
  const paths = numbers?.map((number) => readlink(join(open, number)).catch(() => ''))
  return paths && (await Promise.all(paths)).filter((path) => path.startsWith(folder))
}
