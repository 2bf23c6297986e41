import fc from 'fast-check'
import { expect, test } from 'vitest'
import { defaultRates, type Rates } from '../../source/breeding/chances/rates.ts'
import {
  inCalfWithoutReturn,
  morningChances,
  returnsAfter,
  returnToday,
} from '../../source/breeding/chances.ts'

const plain: Rates = { ...defaultRates, heatSeen: 0.8, lateReturn: { ...defaultRates.lateReturn, share: 0 } }
const printed = (values: readonly number[]): string[] => values.map((value) => value.toFixed(4))
const days = (values: readonly number[], at: readonly number[]): number[] =>
  at.map((k) => values[k] ?? Number.NaN)

test('heats seen 0.80 and no late returns', () => {
  const returns = returnsAfter('service', 22, plain)
  expect(printed(days(returns.byDay, [17, 24, 35, 48]))).toEqual(['0.0639', '0.6261', '0.8049', '0.9343'])
  expect(printed([24, 35].map((k) => inCalfWithoutReturn(0.55, k, returns)))).toEqual(['0.7658', '0.8623'])
  expect(printed([18, 21, 22, 24].map((k) => returnToday(0.55, k, returns)))).toEqual([
    '0.0212',
    '0.0481',
    '0.0531',
    '0.0488',
  ])
})

test('the defaults: heats seen 0.90, one in twenty late', () => {
  const returns = returnsAfter('service', 22, defaultRates)
  expect(printed(days(returns.byDay, [17, 24, 35, 48]))).toEqual(['0.0682', '0.6702', '0.8853', '0.9722'])
  expect(printed([24, 35].map((k) => inCalfWithoutReturn(0.55, k, returns)))).toEqual(['0.7875', '0.9142'])
  expect(printed([18, 21, 22, 24].map((k) => returnToday(0.55, k, returns)))).toEqual([
    '0.0227',
    '0.0519',
    '0.0576',
    '0.0536',
  ])
})

test('first-calvers and maidens have the shorter cycle', () => {
  const returns = returnsAfter('service', 21, defaultRates)
  expect(printed([returns.byDay[24] ?? 0, inCalfWithoutReturn(0.55, 24, returns)])).toEqual([
    '0.7389',
    '0.8240',
  ])
})

test('the morning shows what is known before the day', () => {
  const returns = returnsAfter('service', 22, defaultRates)
  const morning = morningChances(0.55, 22, returns)
  expect(morning.inCalf).toBe(inCalfWithoutReturn(0.55, 21, returns))
  expect(morning.returnToday).toBe(returnToday(0.55, 22, returns))
  expect(morningChances(0.55, 1, returns).inCalf).toBeCloseTo(0.55, 12)
})

test('a heat not served: a return is certain in the end, and she is not in calf', () => {
  const returns = returnsAfter('heat', 22, defaultRates)
  expect(returns.byDay[200]).toBeCloseTo(1, 6)
  expect(inCalfWithoutReturn(0, 24, returns)).toBe(0)
  const anyDay = Array.from({ length: 60 }, (_, k) => {
    const unseen = 1 - (k === 0 ? 0 : (returns.byDay[k - 1] ?? 0))
    return returnToday(0, k, returns) * unseen
  })
  expect(anyDay.reduce((a, b) => a + b)).toBeCloseTo(returns.byDay[59] ?? 0, 12)
})

test('a service that always holds, one that never does, and one of which nothing is known yet', () => {
  const returns = returnsAfter('heat', 22, { ...plain, heatSeen: 1 })
  expect([0, 24, 300].map((k) => inCalfWithoutReturn(1, k, returns))).toEqual([1, 1, 1])
  expect([0, 24, 300].map((k) => inCalfWithoutReturn(0, k, returns))).toEqual([0, 0, 0])
  expect([24, 300].map((k) => returnToday(1, k, returns))).toEqual([0, 0])
  expect(morningChances(0.55, 0, returns)).toEqual({ inCalf: 0.55, returnToday: 0 })
})

test('where she was seen to return for certain, no return is to come', () => {
  const seen = { onDay: [0, 1, 0.5], byDay: [0, 1, 1] }
  expect(returnToday(0, 2, seen)).toBe(0)
  expect(returnToday(0.5, 2, seen)).toBe(0.5)
})

test('after 200 days nothing changes any more', () => {
  const returns = returnsAfter('service', 22, plain)
  expect([returns.onDay.length, returns.byDay.length]).toEqual([201, 201])
  expect(inCalfWithoutReturn(0.55, 300, returns)).toBe(inCalfWithoutReturn(0.55, 200, returns))
  expect(inCalfWithoutReturn(0.55, 300, returns)).toBeGreaterThan(0.99)
  expect(returnToday(0.55, 200, returns)).toBeGreaterThan(0)
  expect([201, 300].map((k) => returnToday(0.55, k, returns))).toEqual([0, 0])
})

test('a return on a later day is less likely the less silence lies behind it', () => {
  const returns = returnsAfter('service', 22, plain)
  const open = 0.45
  const onDay = (k: number): number => returns.onDay[k] ?? Number.NaN
  expect(returnToday(0.55, 22, returns, 0)).toBeCloseTo(open * onDay(22), 12)
  expect(returnToday(0.55, 22, returns, 20)).toBeCloseTo(
    (open * onDay(22)) / (1 - open * (returns.byDay[20] ?? Number.NaN)),
    12,
  )
  expect(returnToday(0.55, 22, returns, 21)).toBe(returnToday(0.55, 22, returns))
})

test('a single day without watching is one too', () => {
  const returns = returnsAfter('service', 22, plain, new Set([22]))
  expect(returns.onDay[22]).toBe(0)
  expect(returns.onDay[21]).toBe(returnsAfter('service', 22, plain).onDay[21])
  expect(returnsAfter('service', 22, plain, new Set())).toEqual(returnsAfter('service', 22, plain))
})

test('computed once for the same rates, also where they are another object', () => {
  expect(returnsAfter('service', 22, { ...defaultRates })).toBe(returnsAfter('service', 22, defaultRates))
  expect(returnsAfter('service', 22, { ...defaultRates, heatSeen: 0.5 })).not.toBe(
    returnsAfter('service', 22, defaultRates),
  )
  expect(
    returnsAfter('heat', 22, { ...defaultRates, cycle: { ...defaultRates.cycle, sd: 3 } }).byDay[20],
  ).not.toBe(returnsAfter('heat', 22, defaultRates).byDay[20])
})

test('on days without watching nothing is seen and the return comes a cycle later', () => {
  const week = new Set([17, 18, 19, 20, 21, 22, 23, 24, 25])
  const returns = returnsAfter('service', 22, plain, week)
  const watched = returnsAfter('service', 22, plain)
  expect(days(returns.onDay, [...week])).toEqual(new Array(week.size).fill(0))
  expect(returns.byDay[24]).toBe(watched.byDay[16])
  expect(returns.onDay[44] ?? 0).toBeGreaterThan(watched.onDay[44] ?? 1)
  expect(inCalfWithoutReturn(0.55, 24, returns)).toBeLessThan(inCalfWithoutReturn(0.55, 24, watched))
})

const rates = fc
  .record({
    heatSeen: fc.double({ min: 0.05, max: 0.99, noNaN: true }),
    late: fc.double({ min: 0, max: 0.3, noNaN: true }),
    mean: fc.double({ min: 19, max: 25, noNaN: true }),
    conception: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
  })
  .map(({ late, mean, conception, heatSeen }) => ({
    mean,
    conception,
    rates: { ...defaultRates, heatSeen, lateReturn: { ...defaultRates.lateReturn, share: late } },
  }))

test('every day without a return makes a pregnancy likelier, never certain beyond 1', () => {
  fc.assert(
    fc.property(rates, fc.nat(260), ({ mean, conception, rates }, k) => {
      const returns = returnsAfter('service', mean, rates)
      const before = inCalfWithoutReturn(conception, k, returns)
      const after = inCalfWithoutReturn(conception, k + 1, returns)
      expect(after).toBeGreaterThanOrEqual(before - 1e-12)
      expect(after).toBeLessThanOrEqual(1 + 1e-9)
      expect(before).toBeGreaterThanOrEqual(conception - 1e-12)
      expect(returnToday(conception, k, returns)).toBeGreaterThanOrEqual(0)
      expect(returnToday(conception, k, returns)).toBeLessThanOrEqual(1 + 1e-9)
    }),
  )
})

test('the two chances fit together: those without a return today are what the next morning shows', () => {
  fc.assert(
    fc.property(rates, fc.integer({ min: 1, max: 100 }), ({ mean, conception, rates }, k) => {
      const returns = returnsAfter('service', mean, rates)
      const today = morningChances(conception, k, returns)
      fc.pre(today.returnToday < 0.999)
      const next = today.inCalf / (1 - today.returnToday)
      expect(morningChances(conception, k + 1, returns).inCalf).toBeCloseTo(next, 8)
    }),
  )
})

test('a better watch makes silence mean more', () => {
  fc.assert(
    fc.property(rates, fc.integer({ min: 1, max: 60 }), ({ mean, conception, rates }, k) => {
      const better = { ...rates, heatSeen: Math.min(0.99, rates.heatSeen + 0.1) }
      expect(
        inCalfWithoutReturn(conception, k, returnsAfter('service', mean, better)),
      ).toBeGreaterThanOrEqual(
        inCalfWithoutReturn(conception, k, returnsAfter('service', mean, rates)) - 1e-9,
      )
    }),
  )
})
