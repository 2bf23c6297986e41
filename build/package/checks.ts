/** What the installed program must do, run as its user runs it. */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { firstHerd, tableNames } from '../docs/first-herd.ts'
import { type Ended, run } from './nodes.ts'

/** Runs `dawnlist` with words. */
export type Dawnlist = (...words: string[]) => Ended

type Check = readonly [what: string, holds: (dawnlist: Dawnlist, home: Home) => Ended | undefined]

interface Home {
  /** The empty folder in which the package was installed. */
  readonly folder: string
  readonly version: string
}

/** What a run came to, where it is not as it must be. */
const unless = (good: boolean, ended: Ended): Ended | undefined => (good ? undefined : ended)

const installed = ({ folder }: Home, ...parts: string[]): string =>
  join(folder, 'node_modules', 'dawnlist', ...parts)

/** Makes the herd of the book's first page from its tables. @returns how its list of the day ended */
function firstMorning(dawnlist: Dawnlist, home: Home, herd: string): { list: Ended; expected: string } {
  const { tables, list } = firstHerd(readFileSync(installed(home, 'docs', 'first-morning.md'), 'utf8'))
  for (const [name, text] of tables) writeFileSync(join(home.folder, name), text)
  const from = tableNames.flatMap((name) => [`--${name}`, `${name}.csv`])
  const steps = [
    () => dawnlist('new', herd, '--farm', 'Long Acre', '--zone', 'Europe/Dublin'),
    () => dawnlist('import', herd, ...from, '--write'),
  ]
  for (const step of steps) {
    const ended = step()
    if (ended.status !== 0) return { list: ended, expected: list }
  }
  return { list: dawnlist('list', herd, '--date', '2026-05-28'), expected: list }
}

export const checks: readonly Check[] = [
  [
    '--version',
    (dawnlist, { version }) => {
      const told = dawnlist('--version')
      return unless(told.status === 0 && told.out.startsWith(`${version}\n`), told)
    },
  ],
  [
    'demo without a terminal, and list of the sample herd, print the same list',
    (dawnlist, home) => {
      const demo = dawnlist('demo', '--fresh')
      const list = dawnlist(
        'list',
        installed(home, 'sample-herd', 'sample-herd.json'),
        '--date',
        '2026-05-28',
      )
      return unless(
        demo.status === 0 &&
          list.status === 0 &&
          demo.out === list.out &&
          /^Serve: \d+ to do/m.test(list.out),
        demo.status === 0 ? list : demo,
      )
    },
  ],
  [
    'new, import --write and list make the first morning of the book',
    (dawnlist, home) => {
      const { list, expected } = firstMorning(dawnlist, home, `herd-${process.hrtime.bigint()}.json`)
      return unless(list.status === 0 && list.out === expected, list)
    },
  ],
]

/** On a Node.js that is too old: one sentence, and nothing else. */
export const tooOld: Check = [
  'says in one sentence which Node.js it needs, status 1',
  (dawnlist) => {
    const told = dawnlist('--version')
    return unless(
      told.status === 1 && told.out === '' && /^dawnlist needs Node\.js .*\n$/.test(told.err),
      told,
    )
  },
]

/** Packs the program into a folder. @returns the name of the file */
export function packed(top: string, folder: string): string {
  const { status, out, err } = run(['npm', 'pack', '--silent', '--pack-destination', folder], top)
  const name = out.trim().split('\n').at(-1)
  if (status !== 0 || name === undefined) throw new Error(`npm pack ended with status ${status}\n${err}`)
  return join(folder, name)
}
