import { expect, test } from 'vitest'
import { defaultRates, serviceClass } from '../../../source/breeding/chances/rates.ts'
import { standardPolicy } from '../../../source/breeding/policy.ts'
import { ratesOfPolicy } from '../../../source/breeding/rates-of-policy.ts'

test('the standard policy gives the default rates', () => {
  expect(ratesOfPolicy(standardPolicy)).toEqual(defaultRates)
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
