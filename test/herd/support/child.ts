import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'

const run = promisify(execFile)

/** How a program is started: as another user, in other surroundings, through another program. */
interface ChildOptions {
  readonly uid?: number
  readonly env?: Readonly<Record<string, string>>
  /** Program and words that start Node in their turn. */
  readonly through?: readonly string[]
}

/**
 * Runs a TypeScript file of this folder as a program.
 *
 * @returns what it printed, read as JSON
 */
export async function child(
  script: string,
  words: readonly string[],
  options: ChildOptions = {},
): Promise<unknown> {
  const command = [
    ...(options.through ?? []),
    process.execPath,
    fileURLToPath(new URL(script, import.meta.url)),
    ...words,
  ]
  const { stdout } = await run(command[0] ?? '', command.slice(1), {
    ...(options.uid === undefined ? {} : { uid: options.uid, gid: options.uid }),
    env: { ...process.env, ...options.env },
  })
  return JSON.parse(stdout)
}

/** Whether a program ends well here. */
export async function works(program: string, words: readonly string[]): Promise<boolean> {
  try {
    await run(program, [...words])
    return true
  } catch {
    return false
  }
}
