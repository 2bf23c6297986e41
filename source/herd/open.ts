import { Low } from 'lowdb'
import { fault, notice, type Outcome, type Problem } from '../breeding/problem.ts'
import { type HerdFile, Refusal } from './herd-file.ts'
import { DurableFile } from './store/adapter.ts'
import { dayCopies } from './store/backups.ts'
import { type Environment, thisComputer } from './store/environment.ts'
import { locate, type Paths } from './store/paths.ts'
import { whyReadOnly } from './store/permission.ts'
import { sweep } from './store/sweep.ts'
import { HerdStore } from './store.ts'

const nothing: HerdFile = { format: 0, revision: 0, herdId: '', facts: [], lines: [] }

/**
 * Opens a herd file.
 *
 * @param path the file; a missing one is a fault, never a new herd
 * @param world the computer; tests hand in another
 * @returns the open herd; or the faults: herd-missing, herd-empty, herd-too-large, herd-damaged, herd-other-json,
 *   herd-newer, herd-format-unknown, herd-invalid with what is wrong, or a failure of the system. Where there are
 *   day copies to restore from, a notice `backups-there` names the newest
 * @example
 * const opened = await openHerdFile('farm.json')
 * if (opened.ok) await opened.value.record([{ kind: 'looked', about, date: '2026-05-28' }], 'MK')
 */
export async function openHerdFile(
  path: string,
  world: Environment = thisComputer,
): Promise<Outcome<HerdStore>> {
  const paths = await locate(world, path)
  try {
    await sweep(world, paths)
    const durable = new DurableFile(world, paths, path)
    const low = new Low<HerdFile>(durable, nothing)
    await low.read()
    const readOnly = await whyReadOnly(world, paths, path, durable.edited)
    return { ok: true, value: new HerdStore({ world, paths, path, low, durable, readOnly }) }
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    const problems = error.problems.map((problem) =>
      problem.code === 'path-missing' ? fault('herd-missing', path) : problem,
    )
    return { ok: false, problems: [...problems, ...(await backupsThere(world, paths, path))] }
  }
}

async function backupsThere(world: Environment, paths: Paths, path: string): Promise<Problem[]> {
  const names = await dayCopies(world, paths)
  const newest = names.at(-1)
  if (newest === undefined) return []
  return [notice('backups-there', paths.backups, { newest, count: names.length, file: path })]
}
