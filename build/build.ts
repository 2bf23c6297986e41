/**
 * node build/build.ts             builds dist
 * node build/build.ts --if-stale  builds it where it is missing or older than the source
 * node build/build.ts --check     fails where it is missing or older than the source
 */
import { staleness } from './fingerprint.ts'
import { below } from './paths.ts'

const [mode] = process.argv.slice(2)
const reason = mode === undefined ? undefined : staleness(below())

if (mode === '--check') {
  if (reason !== undefined) {
    process.stderr.write(`${reason} Run: npm run build\n`)
    process.exitCode = 1
  }
} else if (mode === undefined || reason !== undefined) {
  if (reason !== undefined) process.stderr.write(`${reason} Building it takes a few seconds.\n`)
  const { bundle } = await import('./bundle.ts')
  await bundle().catch((error: Error) => {
    process.stderr.write(`${error.message}\n`)
    process.exitCode = 1
  })
}
