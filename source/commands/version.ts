import program from '../../package.json' with { type: 'json' }
import { ANIMAL_VERSION } from '../exchange/animal/json.ts'
import { LIST_VERSION } from '../exchange/list/json.ts'
import { SEASON_VERSION } from '../exchange/season/json.ts'
import { currentFormat } from '../herd/format.ts'
import { versionLines } from '../words/commands.ts'
import type { Run } from './command.ts'

/** The numbers of this program, each of which rises for a reason of its own. */
export const versions = {
  program: program.version,
  file: currentFormat,
  list: LIST_VERSION,
  animal: ANIMAL_VERSION,
  season: SEASON_VERSION,
} as const

export const run: Run = async (_given, shell) => {
  shell.print(versionLines(versions))
  return 0
}
