import { expect, test } from 'vitest'
import { figureOf } from '../../../source/breeding/figures/figure.ts'

test('a share in percent with the ends of its interval', () => {
  // Wilson for 8 of 10 and z 1.96: (.8 + z²/20 ± z √(.8 x .2 / 10 + z²/400)) / (1 + z²/10), reckoned by hand.
  const { percent, low, high } = figureOf(8, 10)
  expect(percent).toBe(80)
  expect(low).toBeCloseTo(49.016, 3)
  expect(high).toBeCloseTo(94.332, 3)
})

test('of one animal there is a share, of none there is not', () => {
  expect(figureOf(1, 1).percent).toBe(100)
  expect(figureOf(0, 0, { unknown: 3 })).toEqual({
    numerator: 0,
    denominator: 0,
    unknown: 3,
    percent: undefined,
    low: undefined,
    high: undefined,
    target: undefined,
    source: undefined,
  })
})
