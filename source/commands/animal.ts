/** `dawnlist animal`: what is known of one animal. */
import { morningList } from '../breeding/morning-list.ts'
import { fault } from '../breeding/problem.ts'
import { ratesOfHerd } from '../breeding/rates-of-herd.ts'
import { standingOn } from '../breeding/standing.ts'
import { animalJson } from '../exchange/animal/json.ts'
import { animalText } from '../exchange/animal/text.ts'
import type { Run } from './command.ts'
import { openForReading, statusOf } from './open-book.ts'

export const run: Run = async (given, shell) => {
  const opened = await openForReading(given, shell)
  if (!opened.ok) {
    shell.tell(opened.problems)
    return statusOf(opened.problems)
  }
  const { book, day } = opened.value
  const number = given.args.NUMBER ?? ''
  const animal = book.byNumber.get(number) ?? book.byInternationalId.get(number)
  if (animal === undefined) {
    shell.tell([fault('animal-not-found', given.args.FILE ?? '', { number })])
    return 1
  }
  const standing = standingOn(book, animal, day)
  const known = animalJson(book, standing, ratesOfHerd(book, day).rates, morningList(book, day).rows)
  shell.print(
    given.switches.has('json') ? `${JSON.stringify(known, null, 1)}\n` : animalText(book, standing, known),
  )
  return 0
}
