import { expect, test } from 'vitest'
import { newId } from '../../source/herd/ids.ts'

test('an id is twelve letters and digits, none of them one that is misread', () => {
  const ids = Array.from({ length: 1000 }, newId)
  for (const id of ids) expect(id).toMatch(/^[0-9a-hjkmnp-tv-z]{12}$/)
  expect(new Set(ids).size).toBe(1000)
  // Each of the 32 comes: that one does not among 12,000 happens once in more than 10^160 runs.
  expect(new Set(ids.join('')).size).toBe(32)
})
