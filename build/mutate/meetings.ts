import { existsSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { below } from '../paths.ts'
import type { Asking } from './asking.ts'
import type { Ran } from './runs.ts'

interface Place {
  readonly number: number
  readonly source: string
}

/**
 * Runs every test file once without a mutant.
 *
 * @param longest milliseconds; a test file that takes longer is left out, and named
 * @returns the test files that come by a mutant: those of its own name first, then the quickest
 * @throws where a test fails without a mutant
 */
export async function meetings(
  workers: readonly Asking[],
  notes: string,
  longest: number,
): Promise<(place: Place) => readonly Ran[]> {
  const ran = await workers[0]?.ask({ mutant: -1 }, 3_600_000)
  if (ran === undefined) throw new Error('the tests could not be run')
  const failing = ran.filter(({ passed }) => !passed).map(({ path }) => path)
  if (failing.length > 0) throw new Error(`these fail without a mutant: ${failing.join(', ')}`)
  const quick = ran.filter(({ took }) => took <= longest).sort((a, b) => a.took - b.took)
  const slow = ran.filter(({ took }) => took > longest).map(({ path }) => path)
  process.stdout.write(`${ran.length} test files; left out as slow: ${slow.join(', ') || 'none'}\n`)
  const met = quick.map((one) => {
    const note = join(notes, `${below(one.path).replaceAll(/[^\w.]/g, '-')}.json`)
    const numbers: number[] = existsSync(note) ? JSON.parse(readFileSync(note, 'utf8')) : []
    return { one, numbers: new Set(numbers) }
  })
  return ({ number, source }) => {
    const name = `${basename(source, '.ts')}.`
    const files = met.filter(({ numbers }) => numbers.has(number)).map(({ one }) => one)
    const own = ({ path }: Ran): number => (basename(path).startsWith(name) ? 0 : 1)
    return files.sort((a, b) => own(a) - own(b))
  }
}
