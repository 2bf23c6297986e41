import type { Run } from './command.ts'

export const run: Run = async (given, shell) => {
  shell.say(`There is no page yet of animal ${given.args.NUMBER}.`)
  return 1
}
