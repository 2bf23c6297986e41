/** `dawnlist restore`: puts a day copy in the place of a herd file that is missing or damaged. */
import { restoreHerdFile } from '../herd/restore.ts'
import { safeText } from '../words/safe.ts'
import type { Run } from './command.ts'

export const run: Run = async (given, shell) => {
  const file = given.args.FILE ?? ''
  const restored = await restoreHerdFile(file, given.options.from)
  if (!restored.ok) {
    shell.tell(restored.problems)
    return 1
  }
  const { from, facts, recovered, kept } = restored.value
  shell.print(`${safeText(file)}: restored from ${safeText(from)}, ${facts.length} facts.\n`)
  if (recovered.length > 0)
    shell.print(
      `${recovered.length} of them were recorded later and could still be read in the damaged file. Look them through.\n`,
    )
  if (kept !== undefined) shell.print(`The file as it was is kept: ${safeText(kept)}\n`)
  return 0
}
