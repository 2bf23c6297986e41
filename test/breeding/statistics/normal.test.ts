import fc from 'fast-check'
import { expect, test } from 'vitest'
import { normalBelow, normalDays } from '../../../source/breeding/statistics/normal.ts'
import reference from '../../fixtures/statistics.json' with { type: 'json' }

test('agrees with R to a relative error of 1e-12 in the lower tail and 1e-15 elsewhere', () => {
  for (const [i, x] of reference.normal.x.entries()) {
    const expected = reference.normal.below[i] ?? Number.NaN
    expect(Math.abs(normalBelow(x) - expected), `x ${x}`).toBeLessThanOrEqual(
      Math.max(expected * 1e-12, 1e-320),
    )
    expect(Math.abs(normalBelow(x) - expected), `x ${x}`).toBeLessThanOrEqual(1e-15)
  }
})

test('ends at 0 and 1', () => {
  expect(normalBelow(Number.NEGATIVE_INFINITY)).toBe(0)
  expect(normalBelow(Number.POSITIVE_INFINITY)).toBe(1)
})

test('never falls, and both sides add up to 1', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -9, max: 9, noNaN: true }),
      fc.double({ min: 0, max: 3, noNaN: true }),
      (x, step) => {
        expect(normalBelow(x + step)).toBeGreaterThanOrEqual(normalBelow(x) - 1e-16)
        expect(normalBelow(x) + normalBelow(-x)).toBeCloseTo(1, 14)
      },
    ),
  )
})

test('whole days under the curve sum to 1 and lie evenly around a mean in the middle', () => {
  const days = normalDays(24, 3.2, 8, 40)
  expect(days).toHaveLength(33)
  expect(days.reduce((a, b) => a + b)).toBeCloseTo(1, 14)
  for (const [i, share] of days.entries()) expect(share).toBeCloseTo(days[32 - i] ?? Number.NaN, 14)
})
