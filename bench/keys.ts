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
/** So soon a frame should stand while what the screen shows is still being reckoned, in nine of ten presses. */
const BAR_MEANWHILE = 50

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
    const printed = execFileSync(process.execPath, [join(folder, 'dawnlist.js')], {
      encoding: 'utf8',
      env: { ...process.env, SAMPLE_HERD: below('sample-herd/sample-herd.json') },
    })
    const [alone, inARow, ...ours] = JSON.parse(printed) as [Measured, Measured, ...Measured[]]
    return ours.map((one) =>
      one.what.startsWith('while ')
        ? meanwhile(one)
        : finding(one, one.what.endsWith('alone') ? alone : inARow),
    )
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const quantile = (took: Measured['took'], share: number): number => {
  const drawn = took.filter((one) => one !== null).toSorted((a, b) => a - b)
  return drawn[Math.floor(drawn.length * share)] ?? Number.NaN
}

/** Of the sample herd, opened anew; the worst key too. */
function meanwhile({ what, took }: Measured): Finding {
  const p90 = quantile(took, 0.9)
  return {
    what: `key to frame, ${what}`,
    value: `${ms(quantile(took, 0.5))}, p90 ${ms(p90)}, worst ${ms(quantile(took, 0.9999))}`,
    against: `${BAR_MEANWHILE} ms`,
    ratio: p90 / BAR_MEANWHILE,
    bar: 1,
  }
}

/** Beside the bar in milliseconds stands what a plain list took in the same run: a busy machine troubles both. */
function finding({ what, took, worked }: Measured, plain: Measured): Finding {
  const p90 = quantile(took, 0.9)
  const missing = took.filter((one) => one === null).length
  return {
    what: `key to frame, ${what}${missing === 0 ? '' : `, ${missing} not drawn`}`,
    value: `${ms(quantile(took, 0.5))}, p90 ${ms(p90)}, processor ${ms(median(worked))}`,
    against: `${BAR} ms; plain Ink list ${ms(quantile(plain.took, 0.5))}, p90 ${ms(quantile(plain.took, 0.9))}, processor ${ms(median(plain.worked))}`,
    ratio: p90 / BAR,
    bar: 1,
  }
}
