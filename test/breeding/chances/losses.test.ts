import fc from 'fast-check'
import { expect, test } from 'vitest'
import { survivalByAge, survivalToAge } from '../../../source/breeding/chances/losses.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'

const survival = (age: number): number => survivalToAge(age, defaultRates.losses)

test('nothing is lost before day 30, 10 % by day 60, 2 % more by day 90, 3 % more to term', () => {
  expect([0, 29, 30].map(survival)).toEqual([1, 1, 1])
  expect(survival(45)).toBeCloseTo(Math.sqrt(0.9), 12)
  expect(survival(60)).toBeCloseTo(0.9, 12)
  expect(survival(75)).toBeCloseTo(0.9 * Math.sqrt(0.98), 12)
  expect(survival(90)).toBeCloseTo(0.9 * 0.98, 12)
  expect(survival(185)).toBeCloseTo(0.9 * 0.98 * 0.97 ** 0.5, 12)
  expect(survival(280).toFixed(3)).toBe('0.856')
  expect(survival(300)).toBe(survival(280))
})

test('by whole days the same, up to the end of the last period, reckoned once for a list', () => {
  const table = survivalByAge(defaultRates.losses)
  expect(table).toEqual(Array.from({ length: 281 }, (_, age) => survival(age)))
  expect(survivalByAge(defaultRates.losses)).toBe(table)
  expect(survivalByAge([])).toEqual([1])
})

test('never rises with age', () => {
  fc.assert(
    fc.property(fc.nat(320), (age) => {
      expect(survival(age + 1)).toBeLessThanOrEqual(survival(age))
    }),
  )
})
