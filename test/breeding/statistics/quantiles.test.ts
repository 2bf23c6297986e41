import fc from 'fast-check'
import { expect, test } from 'vitest'
import { howMany } from '../../../source/breeding/statistics/poisson-binomial.ts'
import { averageOf, bandOf, countAt } from '../../../source/breeding/statistics/quantiles.ts'

test('the least count that reaches the chance', () => {
  const many = { first: 5, chances: [0.1, 0.4, 0.4, 0.1] }
  expect([0.1, 0.11, 0.5, 0.51, 0.9, 0.95, 1].map((q) => countAt(many, q))).toEqual([5, 6, 6, 7, 7, 8, 8])
  expect(bandOf(many)).toEqual({ low: 5, middle: 6, high: 7 })
})

test('where chances were rounded away, the last count holds the rest', () => {
  expect(countAt({ first: 5, chances: [0.5, 0.49] }, 1)).toBe(6)
})

test('a chance that is reached but for rounding counts as reached', () => {
  const tenths = { first: 0, chances: new Array<number>(10).fill(0.1) }
  expect(countAt(tenths, 0.3)).toBe(2)
  expect(countAt(tenths, 0.8)).toBe(7)
})

test('the average of nine equal distributions is the same distribution', () => {
  const many = howMany([0.2, 0.5, 0.9])
  const average = averageOf(new Array(9).fill(many))
  expect(average.first).toBe(many.first)
  for (const [i, chance] of average.chances.entries())
    expect(chance).toBeCloseTo(many.chances[i] ?? Number.NaN, 14)
})

test('distributions that start apart are laid side by side', () => {
  const average = averageOf([
    { first: 1, chances: [1] },
    { first: 4, chances: [0.5, 0.5] },
  ])
  expect(average).toEqual({ first: 1, chances: [0.5, 0, 0, 0.25, 0.25] })
})

test('nothing to average is a programming error', () => {
  expect(() => averageOf([])).toThrow(new RangeError('no distribution to average'))
  expect(averageOf([{ first: 2, chances: [0.5, 0.5] }])).toEqual({ first: 2, chances: [0.5, 0.5] })
})

test('a higher chance never gives a lower count', () => {
  const chance = fc.double({ min: 0, max: 1, noNaN: true })
  fc.assert(
    fc.property(fc.array(chance, { maxLength: 40 }), chance, chance, (chances, a, b) => {
      const many = howMany(chances)
      expect(countAt(many, Math.min(a, b))).toBeLessThanOrEqual(countAt(many, Math.max(a, b)))
    }),
  )
})
