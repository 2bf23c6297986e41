/** `dawnlist draft`: the numbers of the animals to draft, one a line. */
import type { SessionName } from '../breeding/facts.ts'
import { morningList } from '../breeding/morning-list.ts'
import { fault } from '../breeding/problem.ts'
import { draftRows } from '../exchange/draft/draft.ts'
import { safeText } from '../words/safe.ts'
import type { Run } from './command.ts'
import { openForReading, statusOf } from './open-book.ts'

export const run: Run = async (given, shell) => {
  const { session } = given.options
  if (session !== undefined && session !== 'morning' && session !== 'evening') {
    shell.tell([fault('option-session', '', { value: session })])
    return 2
  }
  const opened = await openForReading(given, shell)
  if (!opened.ok) {
    shell.tell(opened.problems)
    return statusOf(opened.problems)
  }
  const { book, day } = opened.value
  const milking = session as SessionName | undefined
  const rows = draftRows(book, morningList(book, day), {
    vet: given.switches.has('vet'),
    ...(milking === undefined ? {} : { session: milking }),
  })
  if (!given.switches.has('electronic')) {
    shell.print(rows.map(({ number }) => `${safeText(number)}\n`).join(''))
    return 0
  }
  let missing = 0
  for (const { animal, number } of rows) {
    const id = book.animals.get(animal)?.record.electronicId
    if (id === undefined) {
      shell.tell([fault('draft-no-electronic', '', {}, number)])
      missing += 1
    } else shell.print(`${safeText(id)}\n`)
  }
  return missing === 0 ? 0 : 1
}
