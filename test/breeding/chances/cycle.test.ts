import { expect, test } from 'vitest'
import { cycleMean, daysToHeat, servedAfter } from '../../../source/breeding/chances/cycle.ts'
import { defaultRates } from '../../../source/breeding/chances/rates.ts'

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0)

test('the plain cycle lies on days 8-40 and sums to 1', () => {
  const days = daysToHeat('heat', 22, defaultRates)
  expect(sum(days)).toBeCloseTo(1, 12)
  expect(sum(days.slice(8, 41))).toBeCloseTo(1, 12)
  expect(days[22]).toBeCloseTo(0.1242, 4)
  expect(days.indexOf(Math.max(...days))).toBe(22)
})

test('a plain cycle ends by day 40, and is computed once for the same rates', () => {
  expect(daysToHeat('heat', 22, defaultRates)).toHaveLength(41)
  expect(daysToHeat('heat', 22, { ...defaultRates })).toBe(daysToHeat('heat', 22, defaultRates))
  expect(daysToHeat('heat', 21, defaultRates)).not.toEqual(daysToHeat('heat', 22, defaultRates))
  const wider = { ...defaultRates, cycle: { ...defaultRates.cycle, sd: 4 } }
  expect(daysToHeat('heat', 22, wider)).not.toEqual(daysToHeat('heat', 22, defaultRates))
  // Late returns tell nothing of a plain cycle.
  const later = { ...defaultRates, lateReturn: { ...defaultRates.lateReturn, share: 0.1 } }
  expect(daysToHeat('heat', 22, later)).toBe(daysToHeat('heat', 22, defaultRates))
  expect(daysToHeat('service', 22, later)).not.toEqual(daysToHeat('service', 22, defaultRates))
})

test('after a failed service one in twenty comes late, up to day 48', () => {
  const days = daysToHeat('service', 22, defaultRates)
  expect(sum(days)).toBeCloseTo(1, 12)
  expect(sum(days.slice(41))).toBeGreaterThan(0)
  expect(days[48]).toBeGreaterThan(0)
  expect(days).toHaveLength(49)
  const plain = daysToHeat('heat', 22, defaultRates)
  for (const d of [8, 15, 21]) expect(days[d]).toBeCloseTo(0.95 * (plain[d] ?? 0), 14)
})

test('without late returns a failed service is like any heat', () => {
  const rates = { ...defaultRates, lateReturn: { ...defaultRates.lateReturn, share: 0 } }
  expect(daysToHeat('service', 22, rates)).toEqual(daysToHeat('heat', 22, rates))
})

test('98 % of plain cycles end on days 15-29', () => {
  expect(sum(daysToHeat('heat', 22, defaultRates).slice(15, 30))).toBeCloseTo(0.98, 2)
})

test('maidens and first-calvers have the mean of the young', () => {
  expect([0, 1, 2, 7].map((parity) => cycleMean(parity, defaultRates))).toEqual([21, 21, 22, 22])
})

test('a heat too soon after a service passes, and the next comes a cycle later', () => {
  const service = daysToHeat('service', 22, defaultRates)
  const heat = daysToHeat('heat', 22, defaultRates)
  const served = servedAfter(service, heat, 0, 18)
  expect(sum(served)).toBeCloseTo(1, 12)
  expect(sum(served.slice(0, 18))).toBe(0)
  // Those that came on days 8-17 were let pass, and come again a cycle later; on days 16 and 17 hardly any twice.
  const again = (d: number): number =>
    sum(Array.from({ length: 10 }, (_, i) => (service[8 + i] ?? 0) * (heat[d - 8 - i] ?? 0)))
  for (const d of [18, 22, 25, 32]) expect(served[d]).toBeCloseTo((service[d] ?? 0) + again(d), 6)
  expect(again(32)).toBeGreaterThan(0.001)
  expect(servedAfter(service, heat, 20, 18)).toBe(service)
  expect(servedAfter(service, heat, 18, 18)).toBe(service)
})

test('by hand: heats of days 1 and 2, too soon until day 3, pass by one or two days', () => {
  // Day 1 goes half to day 2 and half to day 3; what is then on day 2, to days 3 and 4.
  expect(servedAfter([0, 0.5, 0.25, 0.25], [0, 0.5, 0.5], 0, 3)).toEqual([0, 0, 0, 0.75, 0.25])
  // Of day 2 alone: the heat of day 1 stands.
  expect(servedAfter([0, 0.5, 0.25, 0.25], [0, 0.5, 0.5], 2, 3)).toEqual([0, 0.5, 0, 0.375, 0.125])
})
