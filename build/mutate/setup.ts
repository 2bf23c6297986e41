/** Goes before each test file: switches on the one mutant that is meant to be, or notes which ones the tests come by. */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, expect, inject } from 'vitest'

declare module 'vitest' {
  export interface ProvidedContext {
    /** Number of the mutant, or -1: none, note them. */
    mutant: number
    /** Where what was come by is noted. */
    notes: string
  }
}

// What kills a mutant today kills it tomorrow.
fc.configureGlobal({ seed: 1 })

const mutant = inject('mutant')
const met: boolean[] = []
const isMutant = (one: number): boolean => {
  if (mutant >= 0) return one === mutant
  met[one] = true
  return false
}
Object.assign(globalThis, { isMutant })

afterAll(() => {
  const file = (expect.getState().testPath ?? '').replaceAll(/[^\w.]/g, '-')
  if (mutant < 0)
    writeFileSync(join(inject('notes'), `${file}.json`), JSON.stringify(Object.keys(met).map(Number)))
})
