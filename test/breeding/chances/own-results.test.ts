import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  ownConception,
  ownHeatSeen,
  rateEnds,
  withOwnResults,
} from '../../../source/breeding/chances/own-results.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { betaBelow } from '../../../source/breeding/statistics/beta.ts'

test('without results the guess stands, with the weight of 50 services', () => {
  const own = ownConception(defaultRates, {})
  expect(own.cowConventional.mean).toBeCloseTo(0.55, 12)
  expect(own.cowConventional.known.alpha).toBeCloseTo(27.5, 12)
  expect(own.cowConventional.known.beta).toBeCloseTo(22.5, 12)
  expect(own.maidenSexed.mean).toBeCloseTo(0.5655, 12)
  expect(own.natural.held + own.natural.failed).toBe(0)
})

test('results move the mean; 500 services make it no surer than 100', () => {
  const own = ownConception(defaultRates, { cowConventional: { held: 300, failed: 200 } })
  expect(own.cowConventional.mean).toBeCloseTo((27.5 + 300) / 550, 12)
  expect(own.cowConventional.known.alpha + own.cowConventional.known.beta).toBeCloseTo(100, 9)
  expect(rateEnds(own.cowConventional).low).toBeLessThan(own.cowConventional.mean - 0.08)
  expect(rateEnds(own.cowConventional).high).toBeGreaterThan(own.cowConventional.mean + 0.08)
  expect(own.cowSexed.mean).toBeCloseTo(0.4675, 12)
})

test('between the ends lies 95 % of what is known', () => {
  const own = ownConception(defaultRates, { cowSexed: { held: 12, failed: 20 } }).cowSexed
  const { low, high } = rateEnds(own)
  expect(betaBelow(low, own.known)).toBeCloseTo(0.025, 9)
  expect(betaBelow(high, own.known)).toBeCloseTo(0.975, 9)
})

test('heats seen: the share seen again over 0.98, weighed against 50 heats', () => {
  expect(ownHeatSeen(defaultRates, { again: 0, notAgain: 0 })).toBeCloseTo(0.9, 12)
  expect(ownHeatSeen(defaultRates, { again: 49, notAgain: 51 })).toBeCloseTo((45 + 50) / 150, 12)
  expect(ownHeatSeen(defaultRates, { again: 100, notAgain: 0 })).toBeCloseTo(145 / 150, 12)
})

test('more held never lowers, more failed never raises the mean; the ends hold it', () => {
  fc.assert(
    fc.property(fc.nat(800), fc.nat(800), (held, failed) => {
      const mean = (h: number, f: number) =>
        ownConception(defaultRates, { cowSexed: { held: h, failed: f } }).cowSexed
      const here = mean(held, failed)
      expect(rateEnds(here).low).toBeLessThan(here.mean)
      expect(rateEnds(here).high).toBeGreaterThan(here.mean)
      expect(mean(held + 1, failed).mean).toBeGreaterThan(here.mean)
      expect(mean(held, failed + 1).mean).toBeLessThan(here.mean)
    }),
    { numRuns: 30 },
  )
})

test('the rates take the means', () => {
  const own = ownConception(defaultRates, { natural: { held: 50, failed: 0 } })
  const rates = withOwnResults(defaultRates, own, 0.8)
  expect(rates.heatSeen).toBe(0.8)
  expect(rates.conception.natural).toBeCloseTo(0.775, 12)
  expect(rates.conception.cowConventional).toBeCloseTo(0.55, 12)
})
