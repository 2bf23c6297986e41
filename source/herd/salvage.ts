import type { Fact } from '../breeding/facts.ts'
import { inSlices } from './breathe.ts'
import type { HerdFile } from './herd-file.ts'
import { KnownFacts } from './known-facts.ts'

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

/** The lines of a file, a character for each byte, for not all of it need be text. */
const linesOf = (bytes: Buffer): string[] => bytes.toString('latin1').split('\n')

/** A line as a fact, not judged yet; undefined where it is none, or not all of it is text. */
function factIn(line: string): Fact | undefined {
  if (!line.startsWith('{"id":')) return undefined
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.from(line, 'latin1'))
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
