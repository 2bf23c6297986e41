import { chmodSync, writeFileSync } from 'node:fs'
import { type InputOptions, type OutputOptions, rolldown } from 'rolldown'
import { recordOf, sourceSum } from './fingerprint.ts'
import { inkTableEsm } from './ink-table-esm.ts'
import { inkWithoutDevtools } from './ink-without-devtools.ts'
import { notices } from './notices.ts'
import { below } from './paths.ts'
import { yogaWithoutFetch } from './yoga-without-fetch.ts'

/** How anything of ours is bundled; the benchmarks bundle an empty program the same way. */
export const inputOptions: InputOptions = {
  cwd: below(),
  platform: 'node',
  tsconfig: below('tsconfig.json'),
  plugins: [inkTableEsm, inkWithoutDevtools, yogaWithoutFetch, notices],
  transform: { define: { 'process.env.NODE_ENV': '"production"' } },
  onLog(level, log) {
    if (level === 'warn') throw new Error(`the bundler warns: ${log.message}`)
  },
}

/** Ink and the schema stand in chunks of their own, so that a command which needs neither loads neither. */
export const outputOptions: OutputOptions = {
  format: 'esm',
  minify: true,
  cleanDir: true,
  entryFileNames: 'dawnlist.js',
  chunkFileNames: '[name].js',
  comments: { legal: false },
  codeSplitting: {
    groups: [
      { name: 'schema', test: /[\\/]node_modules[\\/]zod[\\/]/, priority: 2 },
      {
        name: 'ink',
        test: /[\\/]node_modules[\\/](?:ink|ink-table|react|react-reconciler|scheduler|yoga-layout)[\\/]/,
        priority: 1,
      },
    ],
  },
}

/** Bundles source/entry.ts into dist and writes down what it was made from. */
export async function bundle(): Promise<void> {
  const source = sourceSum(below())
  const build = await rolldown({ ...inputOptions, input: below('source/entry.ts') })
  await build.write({ ...outputOptions, dir: below('dist') })
  await build.close()
  chmodSync(below('dist/dawnlist.js'), 0o755)
  writeFileSync(below('dist/build.json'), `${JSON.stringify(recordOf(below(), source), null, 2)}\n`)
}
