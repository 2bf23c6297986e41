/** `dawnlist list` as a whole process, beside a Node that does nothing. */
import { spawnSync } from 'node:child_process'
import { below } from '../build/paths.ts'
import { type Finding, inTurn, ms, time } from './measure.ts'

const rounds = 31
const warmUps = 4

/**
 * @param file a herd file
 * @param day the list's day, `YYYY-MM-DD`
 * @param size how the herd is called in the table
 */
export async function listProcess(file: string, day: string, size: string): Promise<Finding> {
  const what = `list, ${size}, whole process`
  const words = [below('dist/dawnlist.js'), 'list', file, '--date', day]
  const first = spawnSync(process.execPath, words, { encoding: 'utf8' })
  if (first.status !== 0)
    return { what, value: '', skipped: `list ended with status ${first.status}: ${first.stderr.trim()}` }
  const { one, other, ratio } = await inTurn(
    rounds,
    warmUps,
    () => time(() => spawnSync(process.execPath, words, { stdio: ['ignore', 'pipe', 'pipe'] })),
    () => time(() => spawnSync(process.execPath, ['-e', '0'], { stdio: ['ignore', 'pipe', 'pipe'] })),
  )
  return { what, value: ms(one), against: `node -e 0: ${ms(other)}`, ratio, bar: 3 }
}
