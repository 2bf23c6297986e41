import { expect, test } from 'vitest'
import { compareTexts } from '../../source/breeding/compare-texts.ts'

test.each([
  ['A', 'B', -1],
  ['B', 'A', 1],
  ['A', 'A', 0],
  ['A10', 'A9', -1],
  ['Z', 'a', -1],
])('%s and %s: %i', (a, b, sign) => {
  expect(Math.sign(compareTexts(a, b))).toBe(sign)
})
