import { writeFileSync } from 'node:fs'
import type { Fact } from '../source/breeding/facts.ts'
import { currentFormat, encodeFile, encodeLines } from '../source/herd/format.ts'

/** Saves facts as a herd file that the program trusts. */
export async function saveHerd(path: string, facts: readonly Fact[]): Promise<void> {
  const header = { format: currentFormat, revision: 1, herdId: 'bench' }
  const { parts } = await encodeFile(header, await encodeLines(facts))
  writeFileSync(path, Buffer.concat(parts))
}
