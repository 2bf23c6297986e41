import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { below } from '../../build/paths.ts'

/** Code that breaks a rule of the house: where it stands, what it says, and the rule. */
const faults: ReadonlyArray<readonly [path: string, code: string, rule: string]> = [
  ['source/breeding/a1.ts', "import { x } from '../herd/x.ts'", 'noRestrictedImports'],
  ['source/breeding/a2.ts', "import type { X } from '../morning/x.ts'", 'noRestrictedImports'],
  ['source/breeding/a3.ts', "import { x } from '../words/x.ts'", 'noRestrictedImports'],
  ['source/breeding/a4.ts', "import { join } from 'node:path'", 'noRestrictedImports'],
  ['source/breeding/a5.ts', "import { addDays } from 'date-fns'", 'noRestrictedImports'],
  ['source/breeding/a6.ts', "export const x = await import('../screens/x.tsx')", 'noRestrictedImports'],
  ['source/breeding/rules/a7.ts', "export * from '../../exchange/x.ts'", 'noRestrictedImports'],
  ['source/herd/b1.ts', "import { x } from '../morning/x.ts'", 'noRestrictedImports'],
  ['source/herd/store/b2.ts', "import { x } from '../../words/x.ts'", 'noRestrictedImports'],
  ['source/morning/c1.ts', "import { x } from '../screens/x.ts'", 'noRestrictedImports'],
  ['source/morning/c2.ts', "import { x } from '../exchange/x.ts'", 'noRestrictedImports'],
  ['source/screens/d1.tsx', "import { x } from '../exchange/x.ts'", 'noRestrictedImports'],
  ['source/screens/d2.tsx', "import { x } from '../commands/x.ts'", 'noRestrictedImports'],
  ['source/exchange/e1.ts', "import { x } from '../screens/x.ts'", 'noRestrictedImports'],
  ['source/exchange/e2.ts', "import { x } from '../commands/x.ts'", 'noRestrictedImports'],
  ['source/commands/f1.ts', "import { x } from '../cli.ts'", 'noRestrictedImports'],
  ['source/words/g1.ts', "import { x } from '../screens/x.ts'", 'noRestrictedImports'],
  ['source/breeding/h1.ts', 'export const x = Date.now()', 'plugin'],
  ['source/breeding/h2.ts', 'export const x = new Date()', 'plugin'],
  ['source/herd/h3.ts', 'export const x = Date.now', 'plugin'],
  ['source/morning/h4.ts', 'export const x = performance.now()', 'plugin'],
  ['source/screens/h5.tsx', 'export const x = globalThis.Date.now()', 'plugin'],
  ['source/commands/h6.ts', 'export const x = process.hrtime.bigint()', 'plugin'],
  ['source/exchange/h7.ts', "export const x = new Intl.DateTimeFormat('en').format()", 'plugin'],
  ['source/breeding/i1.ts', 'export const x = (y: any): number => y.z', 'noExplicitAny'],
  ['source/morning/j1.ts', "import { y } from './j2.ts'\nexport const x = () => y", 'noImportCycles'],
  ['source/morning/j2.ts', "import { x } from './j1.ts'\nexport const y = () => x", 'noImportCycles'],
  ['source/morning/k1.ts', "import type { Y } from './k2.ts'\nexport type X = Y[]", 'noImportCycles'],
  ['source/morning/k2.ts', "import type { X } from './k1.ts'\nexport type Y = X | 1", 'noImportCycles'],
]

/** Code that keeps the rules of the house. */
const sound: ReadonlyArray<readonly [path: string, code: string]> = [
  [
    'source/breeding/rules/z1.ts',
    "import { x } from '../day.ts'\nimport { y } from './y.ts'\n\nexport const z = x + y",
  ],
  ['source/breeding/z2.ts', "export const x = new Date('2026-05-28').getTime() + Date.UTC(2026, 4, 28)"],
  [
    'source/herd/z3.ts',
    "import { z } from 'zod'\nimport { x } from '../breeding/day.ts'\n\nexport const y = z.literal(x)",
  ],
  [
    'source/screens/z4.tsx',
    "import { x } from '../morning/x.ts'\nimport { y } from '../words/y.ts'\n\nexport const z = x + y",
  ],
  ['source/cli.ts', "import { x } from './commands/x.ts'\n\nexport const y = x + Date.now()"],
  ['source/commands/today.ts', 'export const x = Date.now()'],
]

let folder = ''
let found: ReadonlyArray<{ path: string; rule: string }> = []

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'dawnlist-house-'))
  for (const path of ['biome.json', 'build/no-clock.grit']) cpSync(below(path), join(folder, path))
  for (const [path, code] of [...faults, ...sound]) {
    mkdirSync(join(folder, dirname(path)), { recursive: true })
    writeFileSync(join(folder, path), `${code}\n`)
  }
  const tool = below('node_modules/@biomejs/biome/bin/biome')
  const words = ['lint', '--reporter=json', '--max-diagnostics=none', 'source']
  const { stdout, error } = spawnSync(process.execPath, [tool, ...words], { cwd: folder, encoding: 'utf8' })
  if (error) throw error
  const report = JSON.parse(stdout) as {
    diagnostics: Array<{ category: string; location: { path: string } }>
  }
  found = report.diagnostics.map(({ category, location }) => ({
    path: location.path.replaceAll('\\', '/'),
    rule: category.split('/').at(-1) ?? '',
  }))
})

afterAll(() => rmSync(folder, { recursive: true, force: true }))

test.each(faults)('%s: %s breaks %s', (path, _code, rule) => {
  expect(found).toContainEqual({ path, rule })
})

test.each(sound)('%s is as the house wants it', (path) => {
  expect(found.filter((diagnostic) => diagnostic.path === path)).toEqual([])
})
