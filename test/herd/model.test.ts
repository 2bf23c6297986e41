/** Everything at random: durability table, row 13. The long form is in bench/torture.ts. */
import { test } from 'vitest'
import { liveAtRandom } from './support/model.ts'

test('commit, fault, kill, power cut, reopen, merge and two programs at random: every acknowledged fact stays', {
  timeout: 120_000,
}, async () => {
  await liveAtRandom(4000)
})
