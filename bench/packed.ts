/** Size of the program as npm packs it. */
import { spawnSync } from 'node:child_process'
import { below } from '../build/paths.ts'
import type { Finding } from './measure.ts'

export function packed(): Finding {
  const what = 'packed'
  const { stdout, status } = spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    cwd: below(),
    encoding: 'utf8',
    shell: process.platform === 'win32',
  })
  if (status !== 0) return { what, value: '', skipped: `npm pack ended with status ${status}` }
  const size = /"size": (\d+)/.exec(stdout)?.[1]
  if (size === undefined) return { what, value: '', skipped: 'npm pack did not tell the size' }
  return {
    what,
    value: `${Math.round(Number(size) / 1000)} kB`,
    against: '1 MB',
    ratio: Number(size) / 1e6,
    bar: 1,
  }
}
