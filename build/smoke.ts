import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { below } from './paths.ts'

const entry = below('dist/dawnlist.js')

/** Makes the entry believe that it runs on an old Node: the only part of it that an old Node must get through. */
const asNode20 = `data:text/javascript,Object.defineProperty(process,'versions',{value:{...process.versions,node:'20.11.0'}})`

/** The reason against a run of the program, undefined where it is as it must be. */
const unless = (good: boolean, { status, stdout, stderr }: ReturnType<typeof run>): string | undefined =>
  good ? undefined : `status ${status}\n${stdout}${stderr}`

const run = (words: string[], nodeOptions: string[] = []) =>
  spawnSync(process.execPath, [...nodeOptions, entry, ...words], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  })

const { version, engines } = JSON.parse(readFileSync(below('package.json'), 'utf8')) as {
  version: string
  engines: { node: string }
}

/** A chunk and all that it imports before it runs; what it imports later on demand is not among them. */
function loadedWith(chunk: string, known = new Set<string>()): ReadonlySet<string> {
  if (known.has(chunk)) return known
  known.add(chunk)
  const code = readFileSync(below('dist', chunk), 'utf8')
  for (const [, next] of code.matchAll(/(?:from|import)\s*"\.\/([^"]+)"/g)) loadedWith(next ?? '', known)
  return known
}

/** What the built program must do, each as a sentence and the reason why it does not hold (undefined: it holds). */
const checks: ReadonlyArray<readonly [string, () => string | undefined]> = [
  [
    'tells its version',
    () => {
      const told = run(['--version'])
      return unless(told.status === 0 && told.stdout.split('\n')[0] === version, told)
    },
  ],
  [
    'says in one sentence that a Node is too old, status 1',
    () => {
      const told = run(['--version'], ['--import', asNode20])
      const sentence = `dawnlist needs Node.js ${engines.node.replace('>=', '')} or newer; this is 20.11.0.\n`
      return unless(told.status === 1 && told.stdout === '' && told.stderr === sentence, told)
    },
  ],
  [
    'names its commands',
    () => {
      const told = run(['--help'])
      return unless(told.status === 0 && /^ +list /m.test(told.stdout) && told.stderr === '', told)
    },
  ],
  [
    'prints the list without loading Ink or the schema',
    () => {
      const heavy = [...loadedWith('cli.js'), ...loadedWith('list.js')].filter((chunk) =>
        /^(?:ink|schema)/.test(chunk),
      )
      return heavy.length === 0 ? undefined : `it loads ${heavy.join(' and ')}`
    },
  ],
  [
    'refuses a command that it does not know, status 2',
    () => {
      const told = run(['no-such-command'])
      return unless(told.status === 2 && told.stdout === '' && told.stderr.includes('no-such-command'), told)
    },
  ],
  [
    'names a herd file that is not there, status 1',
    () => {
      const told = run(['list', 'no-such-herd.json'])
      const named = told.stderr.includes('no-such-herd.json') && !told.stderr.includes('    at ')
      return unless(told.status === 1 && told.stdout === '' && named, told)
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
