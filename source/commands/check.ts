/** `dawnlist check`: the whole file held against the schema and against itself. */

import { openBook } from '../breeding/book.ts'
import { fault, type Problem } from '../breeding/problem.ts'
import { acceptEdits } from '../herd/accept-edits.ts'
import { checkFacts } from '../herd/check.ts'
import { mergeFiles } from '../herd/merge-files.ts'
import { openHerdFile } from '../herd/open.ts'
import { counted } from '../words/counted.ts'
import { sentence } from '../words/index.ts'
import { safeText } from '../words/safe.ts'
import type { Run, Shell } from './command.ts'
import { herdNotices } from './herd-notices.ts'
import { today } from './today.ts'

export const run: Run = async (given, shell) => {
  const file = given.args.FILE ?? ''
  const { merge } = given.options
  if (given.switches.has('accept-edits')) {
    if (merge !== undefined) return fail(shell, [fault('edits-merge', '')], 2)
    const accepted = await acceptEdits(file)
    if (!accepted.ok) return fail(shell, accepted.problems)
    shell.say(
      `${safeText(file)}: the edits were taken over. As it was edited: ${safeText(accepted.value.kept)}`,
    )
  }
  if (merge !== undefined) {
    const merged = await mergeFiles(file, merge)
    if (!merged.ok) return fail(shell, merged.problems)
    shell.tell(merged.value.notices)
    shell.say(
      `${safeText(file)}: ${counted(merged.value.added.length, 'fact')} added from ${safeText(merge)}.`,
    )
  }
  const opened = await openHerdFile(file)
  if (!opened.ok) return fail(shell, opened.problems)
  await opened.value.poll()
  const { facts, trouble, problems } = opened.value.state
  const book = openBook(facts)
  const found = [...trouble, ...problems, ...checkFacts(facts), ...herdNotices(book, today(book.farm.zone))]
  for (const problem of found) shell.print(`${sentence(problem)}\n`)
  const result = found.length === 0 ? 'nothing to report' : `${found.length} to look at`
  shell.print(`${safeText(file)}: ${facts.length} facts, ${book.animals.size} animals, ${result}.\n`)
  return found.length === 0 ? 0 : 1
}

function fail(shell: Shell, problems: readonly Problem[], status = 1): number {
  shell.tell(problems)
  return status
}
