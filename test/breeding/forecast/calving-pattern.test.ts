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

test('what is due on several days falls into the weeks of those days', () => {
  const weeks = calvingPattern(
    { first: 282, expected: [0, 0, 0, 100, ...new Array<number>(20).fill(0), 100] },
    282,
  )
  const most = weeks.toSorted((a, b) => b.expected - a.expected).slice(0, 2)
  // Due in the middle of weeks 1 and 4: half a week on either side of each is a deviation of 0.7, 52 in 100.
  expect(most.map(({ week }) => week).sort()).toEqual([1, 4])
  expect(most[0]?.expected).toBeCloseTo(51.6, 0)
  expect(weeks.find(({ week }) => week === 1)?.cumulative).toBeCloseTo(75.8, 0)
  expect(weeks.map(({ week }) => week)).toEqual([-2, -1, 0, 1, 2, 3, 4, 5, 6, 7])
})

test('weeks without a calving between two others are shown as such', () => {
  const weeks = calvingPattern({ first: 285, expected: [1, ...new Array<number>(76).fill(0), 1] }, 282)
  const empty = weeks.filter(({ expected }) => expected === 0).map(({ week }) => week)
  expect(empty).toEqual([5, 6, 7, 8])
  expect(weeks.at(-1)?.cumulative).toBeCloseTo(2, 2)
})

test('a week is shown from a hundredth of a calving on', () => {
  const weeks = calvingPattern({ first: 285, expected: [0.03] }, 282)
  expect(weeks.map(({ week }) => week)).toEqual([1])
  expect(calvingPattern({ first: 285, expected: [0.005] }, 282)).toEqual([])
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
