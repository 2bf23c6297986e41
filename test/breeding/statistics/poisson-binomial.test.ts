import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type CountDistribution,
  expectedCount,
  howMany,
  sumOfCounts,
} from '../../../source/breeding/statistics/poisson-binomial.ts'
import { bandOf } from '../../../source/breeding/statistics/quantiles.ts'
import reference from '../../fixtures/statistics.json' with { type: 'json' }

const at = (d: CountDistribution, count: number): number => d.chances[count - d.first] ?? 0
const total = (d: CountDistribution): number => d.chances.reduce((a, b) => a + b, 0)

test('equal chances are the binomial distribution of R', () => {
  for (const { of, count, chance, band } of reference.binomial) {
    const [n = 0, p = 0] = of
    const many = howMany(new Array<number>(n).fill(p))
    for (const [i, k] of count.entries())
      expect(at(many, k) / (chance[i] ?? Number.NaN), `${of} at ${k}`).toBeCloseTo(1, 10)
    expect(Object.values(bandOf(many))).toEqual(band)
  }
})

test('1,000 animals: sums to 1, right mean and variance', () => {
  const chances = Array.from({ length: 1000 }, (_, i) => ((i * 37) % 101) / 100)
  const many = howMany(chances)
  const mean = chances.reduce((a, p) => a + p, 0)
  const variance = many.chances.reduce((a, p, i) => a + p * (many.first + i - mean) ** 2, 0)
  expect(total(many)).toBeCloseTo(1, 12)
  expect(expectedCount(many)).toBeCloseTo(mean, 8)
  expect(variance).toBeCloseTo(
    chances.reduce((a, p) => a + p * (1 - p), 0),
    7,
  )
})

test('certain ones only move the count', () => {
  expect(howMany([1, 1, 0, 1])).toEqual({ first: 3, chances: [1] })
  expect(howMany([])).toEqual({ first: 0, chances: [1] })
})

test('every way of counting by hand agrees', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 9 }), (chances) => {
      const byHand = new Array<number>(chances.length + 1).fill(0)
      for (let set = 0; set < 2 ** chances.length; set += 1) {
        const inSet = chances.map((_, i) => Math.floor(set / 2 ** i) % 2 === 1)
        const chance = chances.reduce((product, p, i) => product * (inSet[i] ? p : 1 - p), 1)
        const count = inSet.filter(Boolean).length
        byHand[count] = (byHand[count] ?? 0) + chance
      }
      const many = howMany(chances)
      for (const [count, chance] of byHand.entries()) expect(at(many, count)).toBeCloseTo(chance, 12)
    }),
  )
})

test('sums of counts 0, 1 or 2 have the sum of the means', () => {
  const part = fc
    .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
    .map(([a, b]) => ({ first: 0, chances: [1 - a, a * (1 - b), a * b] }))
  fc.assert(
    fc.property(fc.array(part, { maxLength: 60 }), (parts) => {
      const sum = sumOfCounts(parts)
      expect(total(sum)).toBeCloseTo(1, 10)
      expect(expectedCount(sum)).toBeCloseTo(
        parts.reduce((a, p) => a + expectedCount(p), 0),
        8,
      )
    }),
  )
})
