import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { below } from './paths.ts'

/** Everything the bundle is made from. */
const ingredients = ['source', 'build', 'package.json', 'package-lock.json', 'tsconfig.json']

/** What dist/build.json holds: the sum of the ingredients, and the sum of every file that the build wrote. */
export interface BuildRecord {
  readonly source: string
  readonly files: Readonly<Record<string, string>>
}

const sumOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

function filesUnder(path: string): string[] {
  const entry = statSync(below(path), { throwIfNoEntry: false })
  if (entry === undefined) return []
  if (!entry.isDirectory()) return [path]
  return readdirSync(below(path))
    .sort()
    .flatMap((name) => filesUnder(`${path}/${name}`))
}

/** Names and sums of all files under some paths, which need not exist. */
const sumsUnder = (...paths: string[]): Record<string, string> =>
  Object.fromEntries(paths.flatMap(filesUnder).map((path) => [path, sumOf(readFileSync(below(path)))]))

/**
 * Sum of everything the bundle is made from: it changes with any byte and any name.
 *
 * @returns 64 hexadecimal digits
 */
export const sourceSum = (): string => sumOf(Buffer.from(JSON.stringify(sumsUnder(...ingredients))))

/**
 * The record of the files that now stand in dist.
 *
 * @param source the source sum, taken before the build began
 */
export function recordOf(source: string): BuildRecord {
  const { 'dist/build.json': _itself, ...files } = sumsUnder('dist')
  return { source, files }
}

/**
 * Whether dist is the bundle of the source as it stands.
 *
 * @returns undefined when it is, else the reason in one sentence
 */
export function staleness(): string | undefined {
  const path = below('dist/build.json')
  if (!existsSync(path)) return 'dist has not been built.'
  const record = JSON.parse(readFileSync(path, 'utf8')) as BuildRecord
  if (record.source !== sourceSum()) return 'dist was built from another state of the source.'
  const now = recordOf(record.source).files
  const names = new Set([...Object.keys(now), ...Object.keys(record.files)])
  const changed = [...names].find((name) => now[name] !== record.files[name])
  return changed === undefined ? undefined : `${changed} is not as the build left it.`
}
