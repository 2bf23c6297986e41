import fc from 'fast-check'
import { expect, test } from 'vitest'
import { calvingPattern } from '../../../source/breeding/forecast/calving-pattern.ts'

test('one cow due on the planned start calves as often before it as after it', () => {
  const weeks = calvingPattern({ first: 282, expected: [1] }, 282)
  expect(weeks.map(({ week }) => week)).toEqual([-1, 0, 1, 2])
  const before = weeks.filter(({ week }) => week <= 0).reduce((sum, { expected }) => sum + expected, 0)
  // The start itself, a share of 0.0797 (one day under a curve of deviation 5), belongs to the first week.
  expect(before).toBeCloseTo((1 - 0.0797) / 2, 2)
  expect(weeks.at(-1)?.cumulative).toBeGreaterThan(0.99)
})

test('nothing due, no weeks', () => {
  expect(calvingPattern({ first: 0, expected: [] }, 282)).toEqual([])
})

test('no calving is lost or made up', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 230, max: 300 }),
      fc.array(fc.double({ min: 0.1, max: 9, noNaN: true }), { minLength: 1, maxLength: 90 }),
      (first, expected) => {
        const weeks = calvingPattern({ first, expected }, 282)
        const all = expected.reduce((a, b) => a + b, 0)
        expect(Math.abs((weeks.at(-1)?.cumulative ?? 0) - all)).toBeLessThan(0.02)
        for (const [i, { week, cumulative }] of weeks.entries()) {
          if (i === 0) continue
          expect(week).toBe((weeks[i - 1]?.week ?? 0) + 1)
          expect(cumulative).toBeGreaterThanOrEqual(weeks[i - 1]?.cumulative ?? 0)
        }
      },
    ),
  )
})
