import { defineConfig } from 'vitest/config'
import { inkTableEsm } from './build/ink-table-esm.ts'

export default defineConfig({
  plugins: [inkTableEsm],
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    exclude: ['node_modules', 'dist', 'coverage'],
    server: { deps: { inline: ['ink-table'] } },
    maxWorkers: 2,
    // Nothing is timed here: the limit only ends what hangs, on the busiest machine.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    coverage: {
      // The rules, and what they rest on: every branch is taken by a test.
      include: [
        'source/breeding/rules/*.ts',
        'source/breeding/{standing,questions,cycle,pregnancy,places,marks,season,session,order,done}.ts',
      ],
      reporter: ['text'],
      thresholds: { branches: 100 },
    },
  },
})
