import type { Run } from './command.ts'

export const run: Run = async (given, shell) => {
  shell.say(`There is no morning list yet of ${given.args.FILE}.`)
  return 1
}
