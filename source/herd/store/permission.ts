import { notice, type Problem } from '../../breeding/problem.ts'
import type { Environment } from './environment.ts'
import { attempt, failure } from './failure.ts'
import type { Paths } from './paths.ts'

/**
 * Why a herd may be looked at only: `herd-edited` where it was changed by hand, `herd-read-only` where file or
 * folder may not be written.
 */
export async function whyReadOnly(
  world: Environment,
  paths: Paths,
  path: string,
  edited: boolean,
): Promise<Problem[]> {
  if (edited) return [notice('herd-edited', path)]
  try {
    await world.files.mayWrite(paths.file)
    await world.files.mayWrite(paths.folder)
    return []
  } catch (error) {
    return [notice('herd-read-only', path, { reason: failure(error, path).code })]
  }
}

/**
 * Asked before anything is written: putting a new file in the place of one does not ask whether that may be written.
 *
 * @param path the name the user gave, for the problem
 * @throws Refusal where the file or its folder may not be written, or is not there
 */
export async function refuseReadOnly(world: Environment, paths: Paths, path: string): Promise<void> {
  await attempt(path, () => world.files.mayWrite(paths.file))
  await attempt(paths.folder, () => world.files.mayWrite(paths.folder))
}
