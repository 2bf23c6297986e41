/** Memory and time of a large import: a process of its own reads a herd from its exports, and says what it took. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { benchHerd, factsPerAnimal } from './herd.ts'
import { saveHerd } from './herd-file.ts'
import type { Finding } from './measure.ts'

const entry = fileURLToPath(new URL('../source/entry.ts', import.meta.url))
/** The most memory that an import may take, MB. */
const MOST_MEMORY = 600
const FACTS = 100_000

/** Tells its largest memory, in kB, on the last line of standard error. */
const teller = `data:text/javascript,process.on('exit',()=>process.stderr.write('\\n'+process.resourceUsage().maxRSS))`

/** A herd of 100,000 facts read into an empty one, from CSV and from the standard, and read once more. */
export async function importsOfLargeHerds(): Promise<Finding[]> {
  const folder = mkdtempSync(join(tmpdir(), 'dawnlist-import-'))
  try {
    const herd = join(folder, 'herd.json')
    await saveHerd(herd, benchHerd(Math.ceil(FACTS / factsPerAnimal)))
    const tables = ['animals', 'facts', 'straws', 'stock', 'seasons']
    const csv = tables.flatMap((table) => [`--${table}`, join(folder, 'csv', `${table}.csv`)])
    run('export', herd, '--to', join(folder, 'csv'))
    run('export', herd, '--to', join(folder, 'ade'), '--ade')
    const findings: Finding[] = []
    for (const [what, words] of [
      ['CSV', csv],
      ['ICAR ADE', ['--ade', join(folder, 'ade')]],
    ] as const) {
      const fresh = join(folder, `${what}.json`)
      run('new', fresh, '--farm', 'Measuring Farm', '--zone', 'Europe/Dublin')
      findings.push(finding(`${what} read and recorded`, run('import', fresh, ...words, '--write'), fresh))
      findings.push(
        finding(`${what} read again, all known`, run('import', fresh, ...words, '--write'), fresh),
      )
    }
    return findings
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

interface Took {
  readonly megabytes: number
  readonly seconds: number
}

function run(...words: string[]): Took {
  const start = performance.now()
  const ended = spawnSync(process.execPath, ['--import', teller, entry, ...words], { encoding: 'utf8' })
  const seconds = (performance.now() - start) / 1000
  if (ended.status === null || ended.status > 1) throw new Error(ended.stderr)
  return { megabytes: Number(ended.stderr.split('\n').at(-1)) / 1024, seconds }
}

const finding = (what: string, { megabytes, seconds }: Took, herd: string): Finding => ({
  what: `${what}, ${(readFileSync(herd, 'utf8').split('\n').length - 1).toLocaleString('en')} facts`,
  value: `${Math.round(megabytes)} MB, ${seconds.toFixed(1)} s`,
  against: `${MOST_MEMORY} MB`,
  ratio: megabytes / MOST_MEMORY,
  bar: 1,
})
