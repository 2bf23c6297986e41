/** Node.js of an exact version, from its npm package, in a folder of its own. */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { delimiter, join } from 'node:path'

/** On Windows npm is a script that only a shell can start. */
const shell = process.platform === 'win32'

export interface Ended {
  readonly status: number | null
  readonly out: string
  readonly err: string
}

/** Runs a program to its end; nobody sits before it. */
export function run(words: readonly string[], folder: string, env: NodeJS.ProcessEnv = process.env): Ended {
  const [program = '', ...rest] = words
  const { status, stdout, stderr, error } = spawnSync(program, rest, {
    cwd: folder,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    env,
    shell,
  })
  return { status, out: stdout ?? '', err: error === undefined ? stderr : error.message }
}

/**
 * Installs a Node.js.
 *
 * @param version exact, as `22.13.0`
 * @returns the folder to put in front of PATH, or why it could not be had
 */
export function installNode(version: string, folder: string): { path: string } | { why: string } {
  mkdirSync(folder, { recursive: true })
  const wish = { private: true, allowScripts: { node: true }, dependencies: { node: version } }
  writeFileSync(join(folder, 'package.json'), JSON.stringify(wish))
  const installed = run(['npm', 'install', '--no-audit', '--no-fund'], folder)
  const path = join(folder, 'node_modules', '.bin')
  const told = existsSync(path) ? run(['node', '--version'], folder, withFirst(path)) : installed
  if (told.out.trim() === `v${version}`) return { path }
  return { why: (installed.err || told.out || told.err).trim().split('\n').at(-1) ?? 'npm said nothing' }
}

/** The variables with a folder in front of PATH; a data folder beside it, so that nothing of the user's is touched. */
export const withFirst = (path: string): NodeJS.ProcessEnv => ({
  ...process.env,
  PATH: [path, process.env.PATH].join(delimiter),
  XDG_DATA_HOME: join(path, 'data'),
  APPDATA: join(path, 'data'),
  NO_COLOR: '1',
})
