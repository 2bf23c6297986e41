import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative } from 'node:path'
import { below } from './paths.ts'

/** What a stage of the test command comes to. */
export interface Tally {
  readonly passed: number
  readonly failed: number
  readonly reasons: readonly string[]
  /** Tests that did not run, by name. */
  readonly skipped?: readonly string[]
}

/** The part of the test runner's JSON report that is counted. */
interface Report {
  readonly testResults: ReadonlyArray<{
    readonly name: string
    readonly status: string
    readonly message: string
    readonly assertionResults: ReadonlyArray<{
      readonly status: string
      readonly fullName: string
      readonly failureMessages?: readonly string[] | null
    }>
  }>
}

const firstLine = (text: string | undefined): string => text?.trim().split('\n')[0] ?? ''

/**
 * Counts a report: a failed test counts as one, and so does a file that fails without a failed test, such as one
 * that does not load. A skipped test is named and counts as neither.
 *
 * @param report the test runner's JSON report
 * @param status its exit status: one that no failure explains counts as one failed
 */
export function tallyOf(report: Report, status: number): Tally {
  let passed = 0
  const reasons: string[] = []
  const skipped: string[] = []
  for (const { name, status: fileStatus, message, assertionResults } of report.testResults) {
    const file = relative(below(), name)
    const failuresBefore = reasons.length
    for (const test of assertionResults) {
      if (test.status === 'passed') passed += 1
      else if (test.status === 'failed')
        reasons.push(`${file}: ${test.fullName}: ${firstLine(test.failureMessages?.[0])}`)
      else skipped.push(`${file}: ${test.fullName}`)
    }
    if (fileStatus === 'failed' && reasons.length === failuresBefore)
      reasons.push(`${file}: ${firstLine(message)}`)
  }
  if (status !== 0 && reasons.length === 0)
    reasons.push(`the run ended with status ${status}; the cause stands above`)
  if (passed + reasons.length === 0) reasons.push('no test was found')
  return { passed, failed: reasons.length, reasons, skipped }
}

/** Runs all tests, shows them as they go, and counts them. What starts the program starts the bundle just built. */
export async function runTests(): Promise<Tally> {
  const folder = mkdtempSync(join(tmpdir(), 'dawnlist-test-'))
  const output = join(folder, 'report.json')
  const words = ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${output}`]
  try {
    const status = await new Promise<number>((resolve, reject) => {
      const child = spawn(process.execPath, [below('node_modules/vitest/vitest.mjs'), ...words], {
        cwd: below(),
        stdio: ['ignore', 'inherit', 'inherit'],
        env: { ...process.env, NODE_ENV: 'test', DAWNLIST_PROGRAM: below('dist/dawnlist.js') },
      })
      child.on('error', reject)
      child.on('close', (code) => resolve(code ?? 1))
    })
    return tallyOf(JSON.parse(readFileSync(output, 'utf8')) as Report, status)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
