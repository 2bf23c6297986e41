/** `dawnlist check`: the whole file held against the schema and against itself. */
import { openBook } from '../breeding/book.ts'
import type { Problem } from '../breeding/problem.ts'
import { acceptEdits } from '../herd/accept-edits.ts'
import { checkFacts } from '../herd/check.ts'
import { openHerdFile } from '../herd/open.ts'
import { sentence } from '../words/index.ts'
import { safeText } from '../words/safe.ts'
import type { Run, Shell } from './command.ts'
import { herdNotices } from './herd-notices.ts'
import { today } from './today.ts'

export const run: Run = async (given, shell) => {
  const file = given.args.FILE ?? ''
  if (given.switches.has('accept-edits')) {
    const accepted = await acceptEdits(file)
    if (!accepted.ok) return fail(shell, accepted.problems)
    shell.say(
      `${safeText(file)}: the edits were taken over. The file as it was edited: ${safeText(accepted.value.kept)}`,
    )
  }
  const opened = await openHerdFile(file)
  if (!opened.ok) return fail(shell, opened.problems)
  const { facts, problems } = opened.value
  const book = openBook(facts)
  const found = [...problems, ...checkFacts(facts), ...herdNotices(book, today(book.farm.zone))]
  for (const problem of found) shell.print(`${sentence(problem)}\n`)
  shell.print(
    `${safeText(file)}: ${facts.length} facts, ${book.animals.size} animals, ${found.length === 0 ? 'nothing to report' : `${found.length} to look at`}.\n`,
  )
  return found.length === 0 ? 0 : 1
}

function fail(shell: Shell, problems: readonly Problem[]): number {
  shell.tell(problems)
  return 1
}
