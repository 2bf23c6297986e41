import { defineConfig } from 'vitest/config'
import { inkTableEsm } from './build/ink-table-esm.ts'

export default defineConfig({
  plugins: [inkTableEsm],
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    exclude: ['node_modules', 'dist', 'coverage'],
    server: { deps: { inline: ['ink-table'] } },
    maxWorkers: 2,
    testTimeout: 30_000,
    hookTimeout: 30_000,
  },
})
