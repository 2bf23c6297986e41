import fc from 'fast-check'
import { expect, test } from 'vitest'
import { wilson } from '../../../source/breeding/statistics/wilson.ts'
import reference from '../../fixtures/statistics.json' with { type: 'json' }

test('agrees with R (prop.test without correction)', () => {
  for (const { of, interval } of reference.wilson) {
    const [successes = 0, trials = 0] = of
    const { low, high } = wilson(successes, trials)
    expect(low, `${of}`).toBeCloseTo(interval[0] ?? Number.NaN, 12)
    expect(high, `${of}`).toBeCloseTo(interval[1] ?? Number.NaN, 12)
  }
})

test('without trials anything is possible', () => {
  expect(wilson(0, 0)).toEqual({ low: 0, high: 1 })
})

test('none of some may be none, and all of some all', () => {
  for (let trials = 1; trials <= 60; trials += 1)
    expect([wilson(0, trials).low, wilson(trials, trials).high]).toEqual([0, 1])
})

test('holds the share itself and stays within 0 and 1', () => {
  fc.assert(
    fc.property(fc.nat(2000), fc.nat(2000), (a, b) => {
      fc.pre(a + b > 0)
      const { low, high } = wilson(a, a + b)
      expect(low).toBeGreaterThanOrEqual(0)
      expect(high).toBeLessThanOrEqual(1)
      expect(low).toBeLessThanOrEqual(a / (a + b))
      expect(high).toBeGreaterThanOrEqual(a / (a + b))
    }),
  )
})
