/**
 * The test command: types, lint, the bundle and a run of it, then the tests. Every stage runs whatever became of
 * the one before; the last line counts them all, and the status is 1 when anything failed.
 */
import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { staleness } from './fingerprint.ts'
import { below } from './paths.ts'
import { smoke } from './smoke.ts'
import type { Tally } from './tests.ts'
import { runTests } from './tests.ts'

/** Runs a tool of node_modules with this Node; its output is shown as it comes. */
const tool = (script: string, words: readonly string[]): Promise<string[]> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [below(script), ...words], {
      cwd: below(),
      stdio: ['ignore', 'inherit', 'inherit'],
    })
    child.on('error', reject)
    child.on('close', (status, signal) =>
      resolve(status === 0 ? [] : [`ended with ${signal ?? `status ${status}`}`]),
    )
  })

/** A stage that either holds or names the reasons why not. */
const check = async (run: () => Promise<string[]>): Promise<Tally> => {
  const reasons = await run()
  return { passed: reasons.length === 0 ? 1 : 0, failed: reasons.length === 0 ? 0 : 1, reasons }
}

/** With `--keep-dist` a bundle that stands there already is not built anew: a stale one is then a fault. */
const keepDist = process.argv.includes('--keep-dist')

const build = async (): Promise<string[]> => {
  const stale = staleness(below())
  if (stale === undefined) return []
  if (keepDist && existsSync(below('dist'))) return [stale]
  process.stdout.write(`${stale} Building it.\n`)
  return tool('build/build.ts', [])
}

const stages: ReadonlyArray<readonly [string, () => Promise<Tally>]> = [
  ['types', () => check(() => tool('node_modules/typescript/bin/tsc', ['--noEmit']))],
  [
    'lint',
    () => check(() => tool('node_modules/@biomejs/biome/bin/biome', ['check', '--error-on-warnings', '.'])),
  ],
  ['build', () => check(build)],
  ['smoke run', () => check(async () => smoke())],
  ['tests', runTests],
  ['bundle is of this source', () => check(async () => [staleness(below()) ?? []].flat())],
]

let passed = 0
let failed = 0
const reasons: string[] = []
const skipped: string[] = []

for (const [name, run] of stages) {
  process.stdout.write(`\n== ${name}\n`)
  const tally = await run().catch(
    (error: unknown): Tally => ({ passed: 0, failed: 1, reasons: [String(error)] }),
  )
  passed += tally.passed
  failed += tally.failed
  skipped.push(...(tally.skipped ?? []))
  reasons.push(...tally.reasons.map((reason) => `${name}: ${reason}`))
  process.stdout.write(tally.failed === 0 ? `${name}: good\n` : `${name}: FAILED\n`)
}

process.stdout.write('\n')
for (const test of skipped) process.stdout.write(`skipped ${test}\n`)
for (const reason of reasons) process.stdout.write(`FAILED ${reason}\n`)
process.stdout.write(`${passed} passed, ${failed} failed\n`)
process.exitCode = failed === 0 ? 0 : 1
