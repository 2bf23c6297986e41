import { fault } from '../breeding/problem.ts'
import type { Run } from './command.ts'
import { helpOf, overview } from './help-text.ts'

export const run: Run = async (given, shell, commands) => {
  const name = given.args.COMMAND
  if (name === undefined) {
    shell.print(overview(commands))
    return 0
  }
  const command = commands.find((one) => one.name === name)
  if (command === undefined) {
    shell.tell([fault('command-unknown', '', { command: name })])
    return 2
  }
  shell.print(helpOf(command))
  return 0
}
