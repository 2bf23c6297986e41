import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  betaBelow,
  betaMean,
  betaQuantile,
  logGamma,
  posterior,
} from '../../../source/breeding/statistics/beta.ts'
import reference from '../../fixtures/statistics.json' with { type: 'json' }

const pairs = (a: readonly number[], b: readonly number[]): [number, number][] =>
  a.map((x, i) => [x, b[i] ?? Number.NaN])

test('log-gamma agrees with R', () => {
  for (const [x, value] of pairs(reference.logGamma.x, reference.logGamma.value))
    expect(Math.abs(logGamma(x) - value), `x ${x}`).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(value)))
})

test('the beta distribution and its quantiles agree with R', () => {
  for (const { shape, at, below, q, quantile } of reference.beta) {
    const [alpha = 0, beta = 0] = shape
    for (const [x, value] of pairs(at, below))
      expect(Math.abs(betaBelow(x, { alpha, beta }) - value), `${shape} at ${x}`).toBeLessThanOrEqual(2e-12)
    for (const [chance, value] of pairs(q, quantile))
      expect(
        Math.abs(betaQuantile(chance, { alpha, beta }) - value),
        `${shape} q ${chance}`,
      ).toBeLessThanOrEqual(2e-12)
  }
})

test('the ends are exact', () => {
  const b = { alpha: 3, beta: 4 }
  expect([betaBelow(0, b), betaBelow(1, b), betaQuantile(0, b), betaQuantile(1, b)]).toEqual([0, 1, 0, 1])
})

const shape = fc.record({
  alpha: fc.double({ min: 0.05, max: 3000, noNaN: true }),
  beta: fc.double({ min: 0.05, max: 3000, noNaN: true }),
})

test('below 0 there is no rate, above 1 none either', () => {
  const b = { alpha: 3, beta: 4 }
  expect([betaBelow(-0.5, b), betaBelow(1.5, b)]).toEqual([0, 1])
})

test('both sides add up to 1, mirrored', () => {
  fc.assert(
    fc.property(shape, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (b, x) => {
      expect(betaBelow(x, b) + betaBelow(1 - x, { alpha: b.beta, beta: b.alpha })).toBeCloseTo(1, 9)
    }),
  )
})

test('a quantile gives its chance back', () => {
  fc.assert(
    fc.property(shape, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (b, q) => {
      const x = betaQuantile(q, b)
      // Nearer to 1 the numbers of a computer lie too far apart.
      fc.pre(x > 1e-12 && x < 1 - 1e-8)
      expect(betaBelow(x, b)).toBeCloseTo(q, 7)
    }),
  )
})

test('the cap on a posterior cuts the weight and keeps the mean', () => {
  const prior = { mean: 0.55, weight: 50 }
  const free = posterior(prior, { successes: 400, failures: 100 })
  const capped = posterior(prior, { successes: 400, failures: 100 }, 100)
  expect(free).toEqual({ alpha: 427.5, beta: 122.5 })
  expect(capped.alpha + capped.beta).toBeCloseTo(100, 12)
  expect(betaMean(capped)).toBeCloseTo(betaMean(free), 12)
  expect(posterior(prior, { successes: 3, failures: 1 }, 100)).toEqual(
    posterior(prior, { successes: 3, failures: 1 }),
  )
})
