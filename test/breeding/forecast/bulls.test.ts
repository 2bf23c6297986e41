import { expect, test } from 'vitest'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { bullFindsWith, bullsNeeded } from '../../../source/breeding/forecast/bulls.ts'

test('one bull to 30 open animals, rounded up, never fewer than two', () => {
  const need = (open: number, openPerBull = 30, halfRest = false) =>
    bullsNeeded({ open, openPerBull, halfRest })
  expect([0, 1, 30, 60, 61, 90, 91].map((open) => need(open))).toEqual([0, 2, 2, 2, 3, 3, 4])
  expect(need(0.5)).toBe(2)
  expect(need(61, 20)).toBe(4)
  expect(need(61, 15)).toBe(5)
  expect(need(61, 30, true)).toBe(6)
})

test('short of bulls, each finds fewer', () => {
  expect(bullFindsWith(3, 90, defaultRates)).toBe(0.9)
  expect(bullFindsWith(4, 90, defaultRates)).toBe(0.9)
  expect(bullFindsWith(2, 80, defaultRates)).toBeCloseTo(0.675, 12)
  expect(bullFindsWith(0, 80, defaultRates)).toBe(0)
  expect(bullFindsWith(0, 0, defaultRates)).toBe(0.9)
  expect(bullFindsWith(0, 0.5, defaultRates)).toBe(0)
  expect(bullFindsWith(0, 1, defaultRates)).toBe(0)
})
