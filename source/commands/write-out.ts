/** Writes one file that the user named, but never over the herd file itself. */
import { realpath } from 'node:fs/promises'
import { basename, dirname } from 'node:path'
import { fault, type Outcome } from '../breeding/problem.ts'
import type { Given } from './command.ts'
import { writeFiles } from './write-files.ts'

/**
 * Writes a file beside the herd.
 *
 * @param given the herd as FILE, and --replace, without which a file that holds something else stays
 * @returns its path; or out-is-herd, export-there, a failure of the system
 */
export async function writeOut(given: Given, out: string, content: string): Promise<Outcome<string[]>> {
  const there = await realpath(out).catch(() => undefined)
  if (there !== undefined && there === (await realpath(given.args.FILE ?? '')))
    return { ok: false, problems: [fault('out-is-herd', out)] }
  return writeFiles(dirname(out), [[basename(out), content]], given.switches.has('replace'))
}
