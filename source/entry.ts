#!/usr/bin/env node
// The first file that runs: small, and readable by an older Node, so that it can say in one sentence what is needed.
import module from 'node:module'

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)

if (major < 22 || (major === 22 && minor < 13)) {
  process.stderr.write(`dawnlist needs Node.js 22.13 or newer; this is ${process.versions.node}.\n`)
  process.exitCode = 1
} else {
  module.enableCompileCache?.()
  const { main } = await import('./cli.ts')
  process.exitCode = await main(process.argv.slice(2))
  // Leaves once all is written, and does not stay to clear up the memory first.
  process.stdout.write('', () => process.exit())
}
