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
  expect(start({ kind: 'heat', day: 41 })).toMatchObject({ day: 42, heatsFrom: 41 })
  expect(start({ kind: 'heat', day: 42 })).toMatchObject({ day: 42, heatsFrom: 42, heats: [1] })
  expect(start({ kind: 'calved', day: -30 })).toMatchObject({ day: -29, heatsFrom: -30 })
  expect(start({ kind: 'anywhere', day: -35 })).toMatchObject({ day: -35, heatsFrom: -35 })
  expect(start({ kind: 'evenly', day: 3, days: 4 })).toMatchObject({
    day: 3,
    heats: [0.25, 0.25, 0.25, 0.25],
  })
  expect(start({ kind: 'served', day: 5, by: 'natural', gestation: 282 })).toMatchObject({
    day: 6,
    heatsFrom: 5,
  })
  expect(start({ kind: 'in-calf', conceived: 3, confirmed: 25, by: 'beef', gestation: 283 })).toMatchObject({
    day: 26,
    heatsFrom: 26,
    heats: [],
    conceived: { day: 3, by: 'beef', share: 1, gestation: 283, now: 1 },
  })
  expect(start({ kind: 'serve-today' })).toMatchObject({ day: 20, servedForCertain: true })
  expect(start({ kind: 'served', day: 5, by: 'sexed', gestation: 280 }).conceived).toMatchObject({
    share: 0.4675,
    day: 5,
  })
})

test('after AI a heat that was too soon for a service, and is over, tells nothing; one to come is let pass', () => {
  const season = { ...seasonOn(15), returnsFrom: 18 }
  const heats = (by: 'conventional' | 'natural', today: number) =>
    startOf(
      { ...cow, anchor: { kind: 'served', day: 5, by, gestation: 280 } },
      { ...season, today },
      defaultRates,
    ).heats
  const share = (of: readonly number[], from: number, before: number) => sum(of.slice(from, before))
  const plain = heats('natural', 15)
  // Of day 15 on, ten days after her service: what would have come in days 10 to 17 comes a cycle later.
  expect(share(heats('conventional', 15), 0, 10)).toBeCloseTo(share(plain, 0, 10), 12)
  expect(share(heats('conventional', 15), 10, 18)).toBe(0)
  expect(share(heats('conventional', 23), 0, 60)).toBeCloseTo(share(plain, 0, 60), 12)
  expect(heats('conventional', 23)).toEqual(plain)
  // Before the day of the service nothing is over yet.
  expect(share(heats('conventional', 3), 0, 18)).toBe(0)
})
