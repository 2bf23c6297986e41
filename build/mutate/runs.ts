/**
 * Runs tests on mutants, in a process of its own: a mutant can make a loop endless, and then the process is ended by
 * the one that asked. Asked with a test file (or none: all of them) and the number of a mutant, or -1 for none;
 * answers with what became of each file.
 */
import { relative } from 'node:path'
import { createVitest, type TestSpecification, type Vitest } from 'vitest/node'
import { inkTableEsm } from '../ink-table-esm.ts'
import { below } from '../paths.ts'

export interface Start {
  /** Source files with all their mutants woven in. */
  readonly woven: readonly (readonly [path: string, text: string])[]
  /** Where test files are looked for. */
  readonly tests: readonly string[]
  /** Folder for the notes of what each test file comes by. */
  readonly notes: string
}
export interface Ask {
  readonly mutant: number
  /** A test file; undefined: all. */
  readonly file?: string
}
export interface Ran {
  readonly path: string
  readonly passed: boolean
  /** Milliseconds. */
  readonly took: number
}

async function vitestOn({ woven, tests, notes }: Start): Promise<Vitest> {
  const texts = new Map(woven.map(([path, text]) => [below(path), text]))
  const mutants = {
    name: 'mutants',
    enforce: 'pre' as const,
    load: (id: string) => texts.get(id.split('?')[0] ?? id),
  }
  return createVitest(
    {
      root: below(),
      config: false,
      watch: false,
      // A text with mutants in it must not be kept for another run.
      fsModuleCache: false,
      include: tests.map((folder) => (/\.tsx?$/.test(folder) ? folder : `${folder}/**/*.test.{ts,tsx}`)),
      setupFiles: [below('build/mutate/setup.ts')],
      server: { deps: { inline: ['ink-table'] } },
      pool: 'threads',
      maxWorkers: 1,
      testTimeout: 60_000,
      hookTimeout: 60_000,
      reporters: [{}],
      provide: { notes },
    },
    { plugins: [inkTableEsm, mutants] },
  )
}

let found: Promise<TestSpecification[]> | undefined

async function answer(vitest: Vitest, { mutant, file }: Ask): Promise<readonly Ran[]> {
  vitest.provide('mutant', mutant)
  found ??= vitest.globTestSpecifications()
  const all = await found
  const ran: Ran[] = []
  for (const one of all) {
    const path = relative(below(), one.moduleId)
    if (file !== undefined && file !== path) continue
    const start = performance.now()
    const { testModules, unhandledErrors } = await vitest.runTestSpecifications([one])
    const passed =
      unhandledErrors.length === 0 &&
      testModules.every((module) => module.moduleId !== one.moduleId || module.ok())
    ran.push({ path, passed, took: performance.now() - start })
  }
  return ran
}

// The one that asks says when to end.
process.on('SIGINT', () => {})

let vitest: Promise<Vitest> | undefined
process.on('message', async (message: Start | Ask) => {
  if ('woven' in message) vitest = vitestOn(message)
  else if (vitest !== undefined) process.send?.(await answer(await vitest, message))
})
