import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { below } from './paths.ts'

const entry = below('dist/dawnlist.js')

/** Makes the entry believe that it runs on an old Node: the only part of it that an old Node must get through. */
const asNode20 = `data:text/javascript,Object.defineProperty(process,'versions',{value:{...process.versions,node:'20.11.0'}})`

const run = (words: string[], nodeOptions: string[] = []) =>
  spawnSync(process.execPath, [...nodeOptions, entry, ...words], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  })

const { version, engines } = JSON.parse(readFileSync(below('package.json'), 'utf8')) as {
  version: string
  engines: { node: string }
}

/** What the built program must do, each as a sentence and the reason why it does not hold (undefined: it holds). */
const checks: ReadonlyArray<readonly [string, () => string | undefined]> = [
  [
    'tells its version',
    () => {
      const { status, stdout, stderr } = run(['--version'])
      return status === 0 && stdout === `${version}\n` ? undefined : `status ${status}\n${stdout}${stderr}`
    },
  ],
  [
    'says in one sentence that a Node is too old, status 1',
    () => {
      const { status, stdout, stderr } = run(['--version'], ['--import', asNode20])
      const least = engines.node.replace('>=', '')
      const told = stderr === `dawnlist needs Node.js ${least} or newer; this is 20.11.0.\n`
      return status === 1 && stdout === '' && told ? undefined : `status ${status}\n${stdout}${stderr}`
    },
  ],
]

/**
 * Runs the bundle as a user would.
 *
 * @returns the reasons of what does not hold, empty when all holds
 */
export const smoke = (): string[] =>
  checks.flatMap(([sentence, check]) => {
    const reason = check()
    return reason === undefined ? [] : [`the built program does not do this: ${sentence}\n${reason}`]
  })
