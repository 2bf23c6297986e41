import type { Fact } from '../source/breeding/facts.ts'
import { currentFormat, encodeFile, encodeLines } from '../source/herd/format.ts'

/**
 * The bytes of a herd file that holds the facts, as if saved once.
 *
 * @param herdId letters and digits, 32 at most
 */
export async function herdBytes(facts: readonly Fact[], herdId: string): Promise<Buffer> {
  const { parts } = await encodeFile({ format: currentFormat, revision: 1, herdId }, await encodeLines(facts))
  return Buffer.concat(parts)
}
