import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { below, top } from './paths.ts'

/** Everything the bundle is made from. */
const ingredients = ['source', 'build', 'package.json', 'package-lock.json', 'tsconfig.json']

/** What dist/build.json holds: the sum of the ingredients, and the sum of every file that the build wrote. */
export interface BuildRecord {
  readonly source: string
  readonly files: Readonly<Record<string, string>>
}

const sumOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

function filesUnder(path: string): string[] {
  const full = join(top, path)
  if (!existsSync(full)) return []
  try {
    return readdirSync(full, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() || entry.isFile())
      .flatMap((entry) => filesUnder(`${path}/${entry.name}`))
      .sort()
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOTDIR') return [path]
    throw error
  }
}

/**
 * Sum of everything the bundle is made from: it changes with any byte and any name.
 *
 * @returns 64 hexadecimal digits
 */
export function sourceSum(): string {
  const lines = ingredients
    .flatMap(filesUnder)
    .map((path) => `${path} ${sumOf(readFileSync(join(top, path)))}`)
  return sumOf(Buffer.from(lines.join('\n')))
}

/**
 * The record of the files that now stand in dist.
 *
 * @param source the source sum, taken before the build began
 */
export function recordOf(source: string): BuildRecord {
  const names = filesUnder('dist').filter((path) => path !== 'dist/build.json')
  return {
    source,
    files: Object.fromEntries(names.map((path) => [path, sumOf(readFileSync(join(top, path)))])),
  }
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
