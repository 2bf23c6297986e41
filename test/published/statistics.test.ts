import { expect, test } from 'vitest'
import { betaMean, betaQuantile, posterior } from '../../source/breeding/statistics/beta.ts'
import { kaplanMeier } from '../../source/breeding/statistics/kaplan-meier.ts'
import { howMany } from '../../source/breeding/statistics/poisson-binomial.ts'
import { wilson } from '../../source/breeding/statistics/wilson.ts'

// NIST/SEMATECH e-Handbook of Statistical Methods 7.2.4.1 (formula); values by R and SciPy.
test('Wilson intervals', () => {
  const printed = ([successes, trials]: readonly [number, number]) =>
    Object.values(wilson(successes, trials)).map((x) => x.toFixed(4))
  expect(printed([6, 32])).toEqual(['0.0889', '0.3531'])
  expect(printed([27, 45])).toEqual(['0.4545', '0.7298'])
  expect(printed([0, 20])).toEqual(['0.0000', '0.1611'])
})

// Gelman et al., Bayesian Data Analysis, chapter 2: 437 girls of 980 births, uniform prior.
test('a beta posterior', () => {
  const known = posterior({ mean: 0.5, weight: 2 }, { successes: 437, failures: 543 })
  expect(betaMean(known).toFixed(8)).toBe('0.44602851')
  expect(betaQuantile(0.025, known).toFixed(8)).toBe('0.41506549')
  expect(betaQuantile(0.975, known).toFixed(8)).toBe('0.47719977')
})

// Bewick, Cheek and Ball 2004, Statistics review 12: survival analysis, Critical Care 8:389: 1, 1, 4, 5, 6+, 9, 9+, 22.
test('a Kaplan-Meier curve with ties and censoring', () => {
  const steps = kaplanMeier(
    [1, 1, 4, 5, 6, 9, 9, 22].map((time, i) => ({ time, happened: i !== 4 && i !== 6 })),
  )
  expect(steps.map((s) => s.time)).toEqual([1, 4, 5, 9, 22])
  expect(steps.map((s) => s.survival.toFixed(3))).toEqual(['0.750', '0.625', '0.500', '0.333', '0.000'])
  expect(steps.slice(0, 4).map((s) => s.standardError.toFixed(4))).toEqual([
    '0.1531',
    '0.1712',
    '0.1768',
    '0.1800',
  ])
})

// Hong 2013, Computational Statistics and Data Analysis 59:41-51 (input); values by R and SciPy.
test('a Poisson-binomial distribution', () => {
  const many = howMany([0.1, 0.1, 0.2, 0.2, 0.3, 0.3, 0.4, 0.4, 0.5, 0.5])
  expect(many.first).toBe(0)
  expect(many.chances.map((x) => x.toFixed(8))).toEqual([
    '0.02286144',
    '0.11231136',
    '0.23694372',
    '0.28171848',
    '0.20829484',
    '0.09968032',
    '0.03113484',
    '0.00623848',
    '0.00076372',
    '0.00005136',
    '0.00000144',
  ])
})
