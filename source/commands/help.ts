import { fault } from '../breeding/problem.ts'
import type { Run } from './command.ts'
import { helpOf, overview } from './help-text.ts'
import { commandNamed } from './table.ts'

export const run: Run = async (given, shell) => {
  const name = given.args.COMMAND
  if (name === undefined) {
    shell.print(overview())
    return 0
  }
  const command = commandNamed(name)
  if (command === undefined) {
    shell.tell([fault('command-unknown', '', { command: name })])
    return 2
  }
  shell.print(helpOf(command))
  return 0
}
