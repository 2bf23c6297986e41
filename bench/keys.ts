/** From a key to its frame on the real screen, bundled as the program is. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { rolldown } from 'rolldown'
import { inputOptions, outputOptions } from '../build/bundle.ts'
import { below } from '../build/paths.ts'
import { type Finding, median, ms } from './measure.ts'

/** A frame should stand so soon after its key, in nine of ten presses. */
const BAR = 16

interface Measured {
  readonly what: string
  readonly took: readonly (number | null)[]
  readonly worked: readonly number[]
}

/** Milliseconds from key to frame: median, and p90 with the bar it should not pass. */
export async function keysToFrames(): Promise<Finding[]> {
  const folder = mkdtempSync(join(tmpdir(), 'dawnlist-bench-keys-'))
  try {
    const build = await rolldown({ ...inputOptions, input: below('bench/keys/program.tsx') })
    await build.write({ ...outputOptions, dir: folder })
    await build.close()
    writeFileSync(join(folder, 'package.json'), '{"type":"module"}\n')
    const printed = execFileSync(process.execPath, [join(folder, 'dawnlist.js')], { encoding: 'utf8' })
    return (JSON.parse(printed) as Measured[]).map(finding)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function finding({ what, took, worked }: Measured): Finding {
  const drawn = took.filter((one) => one !== null).toSorted((a, b) => a - b)
  const p90 = drawn[Math.floor(drawn.length * 0.9)] ?? Number.NaN
  const missing = took.length - drawn.length
  return {
    what: `key to frame, ${what}${missing === 0 ? '' : `, ${missing} not drawn`}`,
    value: `${ms(median(drawn))}, p90 ${ms(p90)}, processor ${ms(median(worked))}`,
    against: `${BAR} ms`,
    ratio: p90 / BAR,
    bar: 1,
  }
}
