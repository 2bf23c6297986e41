import { describe, expect, test } from 'vitest'
import { DUE_BAND, gestationDays } from '../../source/breeding/gestation.ts'
import { standardPolicy } from '../../source/breeding/policy.ts'

const days = (breed: string, maiden = false): number => gestationDays({ breed }, maiden, standardPolicy)

// Norman et al. 2009, J Dairy Sci 92:2259-2269: mean days of gestation of US dairy breeds. Irish beef-on-dairy gestation
// study, 977,037 progeny: Angus and Limousin sires on dairy cows.
describe('days of gestation lie within a day of the published means', () => {
  test.each([
    ['Holstein', false, 279.4],
    ['Holstein', true, 277.8],
    ['Jersey', false, 280.0],
    ['Ayrshire', false, 281.7],
    ['Brown Swiss', false, 287.5],
    ['Angus', false, 282.3],
    ['Limousin', false, 287.4],
  ] as const)('%s (maiden: %s): %f', (breed, maiden, published) => {
    expect(Math.abs(days(breed, maiden) - published)).toBeLessThan(1)
  })
})

// The same: a standard deviation of about 5 days, so that 95 % calve within 1.96 of it.
test('the band around a due date holds 95 %', () => {
  expect(DUE_BAND).toBe(Math.round(1.96 * 5))
})
