/** `npm start`: builds where the bundle is missing or stale, then runs it; without words it opens the sample herd. */
import { spawnSync } from 'node:child_process'
import { below } from './paths.ts'

const run = (words: readonly string[]): number =>
  spawnSync(process.execPath, words, { stdio: 'inherit' }).status ?? 1

const words = process.argv.slice(2)
const built = run([below('build/build.ts'), '--if-stale'])
process.exitCode =
  built === 0 ? run([below('dist/dawnlist.js'), ...(words.length > 0 ? words : ['demo'])]) : built
