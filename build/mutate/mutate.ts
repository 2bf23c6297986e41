/**
 * npm run mutate                                  every file of source/breeding and source/herd
 * npm run mutate -- breeding/rules season         files with one of these words in their path
 * npm run mutate -- breeding --each=20 --seed=2   at most 20 mutants of each file, chosen by the seed (1 unless told)
 *
 * Changes the source in small ways, one at a time, and tells which changes no test noticed. The tests are those below
 * test/ in the folder of the same name and in test/published (--tests=folder,folder for others); of these only the
 * files that come by the changed place. A test file that takes long is left out (--longest=seconds, 5 unless told).
 * Ctrl+C ends it with the table of what was tried.
 */
import { globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { below } from '../paths.ts'
import { Asking } from './asking.ts'
import { equivalents } from './equivalent.ts'
import { meetings } from './meetings.ts'
import { type Mutant, mutantsOf } from './mutants.ts'
import { report, survivor, type Tried } from './report.ts'
import type { Ran } from './runs.ts'
import { sample } from './sample.ts'
import { weave } from './weave.ts'

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    each: { type: 'string', default: 'all' },
    seed: { type: 'string', default: '1' },
    longest: { type: 'string', default: '5' },
    workers: { type: 'string', default: '2' },
    tests: { type: 'string' },
  },
})
const each = values.each === 'all' ? Number.POSITIVE_INFINITY : Number(values.each)

const sources = globSync('source/{breeding,herd}/**/*.ts', { cwd: below() })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => positionals.length === 0 || positionals.some((word) => path.includes(word)))
  .sort()

interface Numbered extends Mutant {
  readonly number: number
  readonly source: string
}
const all: Numbered[] = []
const woven: [string, string][] = []
const chosen: Numbered[] = []
for (const source of sources) {
  const text = readFileSync(below(source), 'utf8')
  const found = mutantsOf(source, text)
  woven.push([source, weave(text, found, all.length)])
  const numbered = found.map((mutant, place) => ({ ...mutant, source, number: all.length + place }))
  all.push(...numbered)
  chosen.push(...sample(numbered, each, Number(values.seed)))
}

const notes = mkdtempSync(join(tmpdir(), 'dawnlist-mutate-'))
const folders = new Set(sources.map((source) => source.split('/')[1] ?? ''))
const tests =
  values.tests?.split(',') ?? [...folders].map((folder) => `test/${folder}`).concat('test/published')
const workers = Array.from({ length: Number(values.workers) }, () => new Asking({ woven, tests, notes }))
const known = new Map(
  equivalents.flatMap((one) =>
    one.becomes.map((becomes) => [`${one.file} ${one.at} ${becomes}`, one.why] as const),
  ),
)

/** Tries one mutant on its test files, until one of them fails or does not end. */
async function tryOne(asking: Asking, mutant: Numbered, files: readonly Ran[]): Promise<Tried> {
  const why = known.get(`${mutant.source} ${mutant.at} ${mutant.becomes}`)
  if (why !== undefined) return { ...mutant, outcome: 'equivalent', why }
  for (const { path, took } of files) {
    const ran = await asking.ask({ mutant: mutant.number, file: path }, 15_000 + 10 * took)
    if (ran === undefined || ran.some(({ passed }) => !passed)) return { ...mutant, outcome: 'killed' }
  }
  return { ...mutant, outcome: 'survived', tests: files.length }
}

try {
  process.stdout.write(`${all.length} mutants of ${sources.length} files, ${chosen.length} to be tried\n`)
  const meeting = await meetings(workers, notes, Number(values.longest) * 1000)
  const tried: Tried[] = []
  const waiting = chosen.values()
  let stopped = false
  process.once('SIGINT', () => {
    stopped = true
  })
  const work = async (asking: Asking): Promise<void> => {
    for (const mutant of waiting) {
      if (stopped) break
      const one = await tryOne(asking, mutant, meeting(mutant))
      tried.push(one)
      if (one.outcome === 'survived') process.stderr.write(survivor(one))
      if (tried.length % 50 === 0) process.stderr.write(`${tried.length} of ${chosen.length} tried\n`)
    }
  }
  await Promise.all(workers.map(work))
  process.stdout.write(report(sources, all.length, tried))
} finally {
  for (const asking of workers) asking.end()
  rmSync(notes, { recursive: true, force: true })
}
