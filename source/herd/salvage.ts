import type { Fact } from '../breeding/facts.ts'
import { inSlices } from './breathe.ts'
import type { HerdFile } from './herd-file.ts'
import { KnownFacts } from './known-facts.ts'

/**
 * Facts that can still be read in a damaged file and that a copy of it lacks: whole lines that pass the schema.
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
  const lines = bytes.toString('utf8').split('\n')
  await inSlices(lines, 200, (line) => {
    const fact = factIn(line)
    if (fact === undefined || checkAdded(known, [fact]).length > 0) return
    known.add(fact)
    readable.push(fact)
  })
  return readable
}

/** A line as a fact, not judged yet. */
function factIn(line: string): Fact | undefined {
  const text = line.trim().replace(/,$/, '')
  if (!text.startsWith('{"id":')) return undefined
  try {
    return JSON.parse(text) as Fact
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
