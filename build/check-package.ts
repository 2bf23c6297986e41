/**
 * Packs the program, installs the package in an empty folder and runs it there on every Node.js that it says it runs
 * on, and on one that is too old. A Node.js that cannot be had is named and counts as skipped.
 */
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { checks, type Dawnlist, packed, tooOld } from './package/checks.ts'
import { installNode, run, withFirst } from './package/nodes.ts'
import { below } from './paths.ts'

const good = ['22.13.0', '24.21.0', '26.10.0']
const old = '20.19.5'

const { version } = JSON.parse(readFileSync(below('package.json'), 'utf8')) as { version: string }
const work = mkdtempSync(join(tmpdir(), 'dawnlist-package-'))
const home = { folder: join(work, 'empty'), version }
let [passed, failed, skipped] = [0, 0, 0]
const say = (line: string): void => void process.stdout.write(`${line}\n`)

try {
  mkdirSync(home.folder)
  const tarball = packed(below(), work)
  const installed = run(['npm', 'install', '--no-audit', '--no-fund', tarball], home.folder)
  if (installed.status !== 0) throw new Error(`the package cannot be installed:\n${installed.err}`)
  say(`installed ${tarball.split(/[\\/]/).at(-1)} in an empty folder`)
  for (const node of [...good, old]) {
    const here = installNode(node, join(work, node))
    if ('why' in here) {
      say(`Node.js ${node}: skipped, it cannot be had: ${here.why}`)
      skipped += 1
      continue
    }
    const program = join(home.folder, 'node_modules', '.bin', 'dawnlist')
    const dawnlist: Dawnlist = (...words) => run([program, ...words], home.folder, withFirst(here.path))
    for (const [what, holds] of node === old ? [tooOld] : checks) {
      const wrong = holds(dawnlist, home)
      say(`Node.js ${node}: ${wrong === undefined ? 'good' : 'FAILED'}: ${what}`)
      if (wrong === undefined) passed += 1
      else {
        failed += 1
        say(`status ${wrong.status}\n${wrong.out}${wrong.err}`)
      }
    }
  }
} finally {
  rmSync(work, { recursive: true, force: true })
}
say(`${passed} passed, ${failed} failed, ${skipped} skipped`)
process.exitCode = failed === 0 ? 0 : 1
