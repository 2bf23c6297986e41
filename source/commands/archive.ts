/** `dawnlist archive`: closes old seasons into a file beside the herd. A dry run, unless `--write` is given. */

import { isoDay } from '../breeding/day.ts'
import { type Archived, archiveHerdFile, lookAtArchive } from '../herd/archive.ts'
import { openHerdFile } from '../herd/open.ts'
import { counted } from '../words/counted.ts'
import { dateInWords } from '../words/dates.ts'
import { safeText } from '../words/safe.ts'
import type { Run } from './command.ts'

export const run: Run = async (given, shell) => {
  const file = given.args.FILE ?? ''
  const opened = await openHerdFile(file)
  if (!opened.ok) {
    shell.tell(opened.problems)
    return 1
  }
  const write = given.switches.has('write')
  const archived = write ? await archiveHerdFile(file, given.options.by) : await lookAtArchive(file)
  if (!archived.ok) {
    shell.tell(archived.problems)
    return 1
  }
  shell.tell(archived.value.notices)
  shell.print(report(safeText(file), archived.value))
  return 0
}

/**
 * What went, or would go, and what stays.
 *
 * @example report('herd.json', { before: '2024-03-27', went: [], … }) // 'herd.json: nothing to archive. …'
 */
function report(name: string, { before, went, stay, file }: Archived): string {
  if (before === undefined)
    return `${name}: nothing to archive. Every season of the herd is younger than two years, or still needed.\n`
  const day = dateInWords(isoDay(before))
  if (went.length === 0) return `${name}: nothing to archive. No fact from before ${day} can be spared.\n`
  const counts = [...Map.groupBy(went, ({ kind }) => kind)]
    .map(([kind, facts]) => `${kind} ${facts.length}`)
    .sort()
  const told = `${counted(went.length, 'fact')} from before ${day} (${counts.join(', ')})`
  return file === undefined
    ? `${name}: ${told} can be archived, ${stay} stay. Nothing was written: add --write to do it.\n`
    : `${name}: ${told} went to the archive, ${stay} stay. The whole herd as it was: ${safeText(file)}\n`
}
