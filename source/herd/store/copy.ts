import type { Fact } from '../../breeding/facts.ts'
import { currentFormat, encodeFile, encodeLines, joinLines } from '../format.ts'
import type { HerdFile } from '../herd-file.ts'
import type { Environment } from './environment.ts'
import { createFile } from './write.ts'

/**
 * Writes a herd and facts that are not in its file yet to a new file, as its next revision.
 *
 * @param path a file that does not exist
 * @throws Refusal where it cannot be written
 */
export async function saveCopyTo(
  world: Environment,
  path: string,
  herd: HerdFile,
  unsaved: readonly Fact[],
): Promise<void> {
  const saved = herd.lines.length > 0 ? herd.lines : await encodeLines(herd.facts)
  const header = { format: currentFormat, revision: herd.revision + 1, herdId: herd.herdId }
  const { parts } = await encodeFile(header, joinLines(saved, await encodeLines(unsaved)))
  await createFile(world, path, parts)
}
