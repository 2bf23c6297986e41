/** Start to the first full frame in a pseudo-terminal, beside an empty Ink program bundled the same way. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { rolldown } from 'rolldown'
import { inputOptions, outputOptions } from '../build/bundle.ts'
import { below } from '../build/paths.ts'
import { type Finding, inTurn, ms } from './measure.ts'
import { firstFrame, hasTerminal } from './terminal.ts'

const rounds = 15
const warmUps = 3

/** Bundles the empty program and returns its folder. */
async function emptyProgram(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'dawnlist-bench-empty-'))
  const build = await rolldown({ ...inputOptions, input: below('bench/empty/entry.ts') })
  await build.write({ ...outputOptions, dir: folder })
  await build.close()
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}\n')
  return folder
}

/**
 * @param file a herd file
 * @param size how the herd is called in the table
 */
export async function firstFrames(file: string, size: string): Promise<Finding> {
  const what = `start to first full frame, ${size}, 120x40`
  if (!hasTerminal()) return { what, value: '', skipped: 'this needs `script` of util-linux' }
  const ours = [process.execPath, below('dist/dawnlist.js'), file]
  const { lines } = await firstFrame(ours)
  const filled = lines.filter((line) => line !== '').length
  if (filled < 20)
    return { what, value: '', skipped: `the program filled ${filled} of 40 lines: ${lines.join(' ').trim()}` }
  const folder = await emptyProgram()
  try {
    const empty = [process.execPath, join(folder, 'dawnlist.js')]
    const { one, other, ratio } = await inTurn(
      rounds,
      warmUps,
      async () => (await firstFrame(ours)).at,
      async () => (await firstFrame(empty)).at,
    )
    return { what, value: ms(one), against: `empty Ink program: ${ms(other)}`, ratio, bar: 1.3 }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
