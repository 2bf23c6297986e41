import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'

/** Everything the bundle is made from. */
const ingredients = ['source', 'build', 'package.json', 'package-lock.json', 'tsconfig.json']

/** What dist/build.json holds: the sum of the ingredients, and the sum of every file that the build wrote. */
interface BuildRecord {
  readonly source: string
  readonly files: Readonly<Record<string, string>>
}

const sumOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

function filesUnder(top: string, path: string): string[] {
  const entry = statSync(join(top, path), { throwIfNoEntry: false })
  if (entry === undefined) return []
  if (!entry.isDirectory()) return [path]
  return readdirSync(join(top, path))
    .sort()
    .flatMap((name) => filesUnder(top, `${path}/${name}`))
}

/** Names and sums of all files under some paths, which need not exist. */
const sumsUnder = (top: string, paths: readonly string[]): Record<string, string> =>
  Object.fromEntries(
    paths
      .flatMap((path) => filesUnder(top, path))
      .map((path) => [path, sumOf(readFileSync(join(top, path)))]),
  )

/**
 * Sum of everything the bundle is made from: it changes with any byte and any name.
 *
 * @param top top folder of the repository
 * @returns 64 hexadecimal digits
 */
export const sourceSum = (top: string): string =>
  sumOf(Buffer.from(JSON.stringify(sumsUnder(top, ingredients))))

/**
 * The record of the files that now stand in dist.
 *
 * @param top top folder of the repository
 * @param source the source sum, taken before the build began
 */
export function recordOf(top: string, source: string): BuildRecord {
  const { 'dist/build.json': _itself, ...files } = sumsUnder(top, ['dist'])
  return { source, files }
}

/**
 * Whether dist is the bundle of the source as it stands.
 *
 * @param top top folder of the repository
 * @returns undefined when it is, else the reason in one sentence
 */
export function staleness(top: string): string | undefined {
  const path = join(top, 'dist', 'build.json')
  if (!existsSync(path)) return 'dist has not been built.'
  const record = JSON.parse(readFileSync(path, 'utf8')) as BuildRecord
  if (record.source !== sourceSum(top)) return 'dist was built from another state of the source.'
  const now = recordOf(top, record.source).files
  const names = new Set([...Object.keys(now), ...Object.keys(record.files)])
  const changed = [...names].find((name) => now[name] !== record.files[name])
  return changed === undefined ? undefined : `${changed} is not as the build left it.`
}
