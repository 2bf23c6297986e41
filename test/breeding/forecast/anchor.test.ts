import { expect, test } from 'vitest'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'
import { startOf } from '../../../source/breeding/forecast/anchor.ts'
import type { Anchor } from '../../../source/breeding/forecast/outlook.ts'
import { cow, seasonOn } from './cow.ts'

const start = (anchor: Anchor, today = 20) => startOf({ ...cow, anchor }, seasonOn(today), defaultRates)
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0)

test('first heats after calving: nine in ten around day 38, the rest around day 95', () => {
  const days = start({ kind: 'calved', day: 0 }).heats
  expect(sum(days)).toBeCloseTo(1, 12)
  expect(days.findIndex((chance) => chance > 0)).toBe(14)
  expect(days).toHaveLength(151)
  expect(days.indexOf(Math.max(...days))).toBe(38)
  expect(sum(days.slice(81))).toBeCloseTo(0.1 * 0.76, 2)
})

test('anywhere in the cycle: today one in 22, hardly later than a long cycle', () => {
  const days = start({ kind: 'anywhere', day: 0 }).heats
  expect(sum(days)).toBeCloseTo(1, 12)
  expect(days[0]).toBeCloseTo(1 / 22, 4)
  expect(days[10]).toBeCloseTo(1 / 22, 4)
  expect(sum(days.slice(31))).toBeLessThan(0.001)
  for (let d = 1; d < days.length; d += 1) expect(days[d] ?? 1).toBeLessThanOrEqual(days[d - 1] ?? 0)
})

test('each anchor starts where it says', () => {
  expect(start({ kind: 'heat', day: 3 })).toMatchObject({ day: 4, heatsFrom: 3 })
  expect(start({ kind: 'heat', day: 50 })).toMatchObject({ day: 50, heatsFrom: 50, heats: [1] })
  expect(start({ kind: 'heat', day: -9 }).heats).toHaveLength(41)
  expect(start({ kind: 'serve-today' })).toMatchObject({ day: 20, servedForCertain: true })
  expect(start({ kind: 'served', day: 5, by: 'sexed', gestation: 280 }).conceived).toMatchObject({
    share: 0.4675,
    day: 5,
  })
})
