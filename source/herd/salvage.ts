import type { Fact } from '../breeding/facts.ts'
import { inSlices } from './breathe.ts'
import type { HerdFile } from './herd-file.ts'
import { KnownFacts } from './known-facts.ts'

const begin = Buffer.from('{"id":')

/**
 * Facts that can still be read in a damaged file and that a copy of it lacks: whole lines that pass the schema. That
 * facts were archived later is left out, since the copy has them.
 *
 * @param bytes the damaged file
 * @param copy a whole copy of an earlier revision
 * @returns facts in the order of their lines
 */
export async function readableFacts(bytes: Buffer, copy: HerdFile): Promise<Fact[]> {
  const { checkAdded } = await import('./check.ts')
  const known = new KnownFacts()
  for (const fact of copy.facts) known.add(fact)
  const readable: Fact[] = []
  await inSlices(linesOf(bytes), 200, (line) => {
    const fact = factIn(line)
    if (fact === undefined || fact.kind === 'archive' || checkAdded(known, [fact]).length > 0) return
    known.add(fact)
    readable.push(fact)
  })
  return readable
}

function linesOf(bytes: Buffer): Buffer[] {
  const lines: Buffer[] = []
  for (let start = 0; start < bytes.length; ) {
    const end = bytes.indexOf('\n', start)
    lines.push(bytes.subarray(start, end === -1 ? bytes.length : end))
    start = end === -1 ? bytes.length : end + 1
  }
  return lines
}

/** A line as a fact, not judged yet; undefined where it is none, or not all of it is text. */
function factIn(line: Buffer): Fact | undefined {
  if (!line.subarray(0, 6).equals(begin)) return undefined
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(line)
    return JSON.parse(text.trim().replace(/,$/, '')) as Fact
  } catch {
    return undefined
  }
}

/** The revision in the first line of a file that may be damaged; 0 where none can be read. */
export function revisionIn(bytes: Buffer): number {
  const found = /^\{"kind":"dawnlist","format":\d+,"revision":(\d{1,15}),/.exec(
    bytes.toString('latin1', 0, 256),
  )
  return found === null ? 0 : Number(found[1])
}
