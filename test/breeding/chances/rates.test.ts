import { expect, test } from 'vitest'
import { defaultRates, serviceClass } from '../../../source/breeding/chances/rates.ts'
import { standardPolicy } from '../../../source/breeding/policy.ts'
import { ratesOfPolicy } from '../../../source/breeding/rates-of-policy.ts'

test('the standard policy gives the default rates', () => {
  expect(ratesOfPolicy(standardPolicy)).toEqual(defaultRates)
})

// Common practice, no source, but for the sexed calves (Norman & Hutchison 2009, USDA ARS).
test('what the policy does not set', () => {
  // Nine cows in ten come in heat around day 38 after calving, between days 14 and 80; the others around day 95.
  expect(defaultRates.firstHeat).toEqual([
    { share: 0.9, mean: 38, sd: 12, from: 14, to: 80 },
    { share: 0.1, mean: 95, sd: 20, from: 45, to: 150 },
  ])
  // A late return comes around day 34, between days 22 and 48, after one failed service in twenty.
  expect(defaultRates.lateReturn).toEqual({ share: 0.05, mean: 34, sd: 5, from: 22, to: 48 })
  // No cycle is shorter than 8 days or longer than 40.
  expect([defaultRates.cycle.from, defaultRates.cycle.to]).toEqual([8, 40])
  // The bull finds nine heats in ten; of calves to other than sexed straws 48.5 % are heifers.
  expect([defaultRates.bullFinds, defaultRates.femaleSexed, defaultRates.femaleOther]).toEqual([
    0.9, 0.9, 0.485,
  ])
  // The guess weighs 50 services, both together at most 100.
  expect([defaultRates.priorWeight, defaultRates.weightCap]).toEqual([50, 100])
})

test('sexed straws follow the rate of the class they belong to', () => {
  const { conception } = ratesOfPolicy({ ...standardPolicy, cowConception: 0.5, maidenConception: 0.6 })
  expect(conception.cowSexed).toBeCloseTo(0.425, 12)
  expect(conception.maidenSexed).toBeCloseTo(0.522, 12)
})

test('class of a service: beef counts as conventional, a bull is a class of its own', () => {
  expect(serviceClass(false, 'beef')).toBe('cowConventional')
  expect(serviceClass(true, 'beef')).toBe('maidenConventional')
  expect(serviceClass(false, 'sexed')).toBe('cowSexed')
  expect(serviceClass(true, 'sexed')).toBe('maidenSexed')
  expect(serviceClass(true, 'natural')).toBe('natural')
})
