import type { Fact } from '../breeding/facts.ts'
import { fault, type Problem } from '../breeding/problem.ts'
import {
  currentFormat,
  decodeLines,
  encodeLines,
  formatOf,
  type Layout,
  layoutOf,
  linesAfter,
  sumOf,
} from './format.ts'
import type { HerdFile, Reading } from './herd-file.ts'
import { type Migration, migrated } from './migrations.ts'

export interface ReadingOptions {
  /** A revision read before: where the file only grew, just the new lines are parsed. */
  readonly known?: HerdFile | undefined
  readonly migrations?: readonly Migration[]
}

const faulty = (...problems: Problem[]): Reading => ({ state: 'fault', problems })

/**
 * Judges the bytes of a file. A right sum proves that this program wrote them after checking them; then the shape
 * is trusted and the schema is not loaded. Anything else goes through the whole schema.
 *
 * @param path name of the file, for the problems
 * @returns sound, edited by hand, or a fault: herd-empty, herd-newer, herd-format-unknown, herd-damaged,
 *   herd-other-json, or the problems of the schema
 */
export async function readHerd(bytes: Buffer, path: string, options: ReadingOptions = {}): Promise<Reading> {
  if (bytes.length === 0) return faulty(fault('herd-empty', path))
  const format = formatOf(bytes)
  if (format !== undefined && format > currentFormat) {
    return faulty(fault('herd-newer', path, { found: format, known: currentFormat }))
  }
  const layout = layoutOf(bytes)
  if (layout === undefined || (await sumOf(layout, [layout.lines])) !== layout.sum) {
    const { readEdited } = await import('./edited.ts')
    return readEdited(bytes, path, options.migrations)
  }
  try {
    return layout.format < currentFormat
      ? await readOld(layout, path, options)
      : await readCurrent(layout, options)
  } catch (error) {
    if (error instanceof SyntaxError) return faulty(fault('herd-damaged', path, { line: 0 }))
    throw error
  }
}

async function readCurrent(layout: Layout, options: ReadingOptions): Promise<Reading> {
  const { format, revision, herdId, lines } = layout
  const known = options.known?.herdId === herdId ? options.known : undefined
  const grown = known && linesAfter(known.lines, lines)
  const facts =
    known === undefined || grown === undefined
      ? await decodeLines(lines)
      : grown.length === 0
        ? known.facts
        : known.facts.concat(await decodeLines(grown))
  return { state: 'sound', herd: { format, revision, herdId, facts, lines: [lines] } }
}

/** An older format is migrated in memory and judged by today's schema. */
async function readOld(layout: Layout, path: string, options: ReadingOptions): Promise<Reading> {
  const { format, revision, herdId } = layout
  const facts = migrated(await decodeLines(layout.lines), format, options.migrations)
  if (facts === undefined) {
    return faulty(fault('herd-format-unknown', path, { found: format, known: currentFormat }))
  }
  const { checkFacts } = await import('./check.ts')
  const problems = checkFacts(facts).filter((problem) => problem.severity === 'fault')
  if (problems.length > 0) return faulty(...problems)
  const lines = await encodeLines(facts as Fact[])
  return { state: 'sound', herd: { format, revision, herdId, facts: facts as Fact[], lines } }
}
