/** Everything at random: durability table, row 13. The long form is in bench/torture.ts. */
import fc from 'fast-check'
import { test } from 'vitest'
import { anyStep, live } from './support/model.ts'

test('commit, fault, kill, power cut, reopen, merge and two programs at random: every acknowledged fact stays', async () => {
  await fc.assert(fc.asyncProperty(fc.array(anyStep, { maxLength: 60, size: 'max' }), live), {
    numRuns: 300,
    interruptAfterTimeLimit: 15_000,
  })
})
