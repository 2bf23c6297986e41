import program from '../../package.json' with { type: 'json' }
import type { Run } from './command.ts'

export const run: Run = async (_given, shell) => {
  shell.print(`${program.version}\n`)
  return 0
}
