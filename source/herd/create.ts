import { resolve } from 'node:path'
import type { NewFact } from '../breeding/facts.ts'
import type { Outcome } from '../breeding/problem.ts'
import { checkAdded } from './check.ts'
import { currentFormat, encodeFile, encodeLines } from './format.ts'
import { Refusal } from './herd-file.ts'
import { newId } from './ids.ts'
import { KnownFacts } from './known-facts.ts'
import { asOutcome } from './outcome.ts'
import { asFacts } from './recording.ts'
import { type Environment, thisComputer } from './store/environment.ts'
import { attempt } from './store/failure.ts'
import { withLock } from './store/locking.ts'
import { pathsOf } from './store/paths.ts'
import { createFile } from './store/write.ts'

/**
 * Makes the file of a new herd, whole or not at all. A file that is there already is never touched.
 *
 * @param path where the file shall be; its folder exists
 * @param newFacts what is known at the start: the farm, blocks, animals
 * @param by initials of the person
 * @returns the id of the herd; or path-taken, path-missing, no-permission, disk-full, or what is wrong with the facts
 * @example await createHerdFile('farm.json', [{ kind: 'farm', about: 'herd', date: '2026-05-28', name: 'Long Acre', zone: 'Europe/Dublin', milkings: ['05:30', '15:30'] }])
 */
export const createHerdFile = (
  path: string,
  newFacts: readonly NewFact[],
  by?: string,
  world: Environment = thisComputer,
): Promise<Outcome<string>> =>
  asOutcome(async () => {
    const facts = asFacts(newFacts, { at: world.now(), by })
    const problems = checkAdded(new KnownFacts(), facts)
    if (problems.length > 0) throw new Refusal(...problems)
    const herdId = newId()
    const paths = pathsOf(resolve(path))
    const header = { format: currentFormat, revision: 1, herdId }
    const { parts } = await encodeFile(header, await encodeLines(facts))
    await attempt(paths.folder, () => world.files.mayWrite(paths.folder))
    await withLock(world, paths, () => createFile(world, paths.file, parts))
    return herdId
  })
