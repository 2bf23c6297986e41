import { expect, test } from 'vitest'
import { figureOf } from '../../source/breeding/figures/figure.ts'
import { returnIntervals } from '../../source/breeding/figures/returns.ts'
import { paceTarget } from '../../source/breeding/figures/submission.ts'

// Pregnancy diagnosis in cows with linear-array ultrasound: a preliminary note: 129 right and 3 wrong pregnant results, 62
// right and 7 wrong empty ones.
test('shares of a table of results', () => {
  const percent = (numerator: number, denominator: number) =>
    figureOf(numerator, denominator).percent?.toFixed(2)
  expect(percent(129, 129 + 7)).toBe('94.85')
  expect(percent(62, 62 + 3)).toBe('95.38')
  expect(percent(129, 129 + 3)).toBe('97.73')
  // Printed as 89.86 %.
  expect(percent(62, 62 + 7)).toBe('89.86')
})

// agriland.ie, breeding season: monitoring submission rates: 90 % in 21 days is 4.3 % of the herd a day. agriland.ie
// (Teagasc), achieving your breeding targets for 2021: 30, 60 and 90 % after 7, 14 and 21 days.
test('pace of submission', () => {
  expect(paceTarget(0).toFixed(1)).toBe('4.3')
  expect([6, 13, 20].map(paceTarget)).toEqual([30, 60, 90])
  expect(paceTarget(30)).toBe(90)
})

// J. Baird, Field margins, 2024: 200 of 250 served in three weeks.
test('submission of one herd', () => {
  expect(figureOf(200, 250).percent).toBe(80)
})

// G. Selk, Oklahoma State University, 2009: the 24-day test.
test('heat detection', () => {
  expect(figureOf(15, 50).percent).toBe(30)
  expect(figureOf(40, 50).percent).toBe(80)
})

// Remnant 2019, Measuring dairy herd heat detection (University of Nottingham): classes of intervals, and their shares in
// the best quarter of UK herds, 6, 40, 16, 19 and 19 %. The days within a class are ours: its ends.
test('classes of return intervals', () => {
  const best = [
    [2, 17, 6],
    [18, 24, 40],
    [25, 35, 16],
    [36, 48, 19],
    [49, 80, 19],
  ] as const
  const days = best.flatMap(([from, to, share]) =>
    Array.from({ length: share }, (_, i) => (i % 2 === 0 ? from : to)),
  )
  expect(Object.values(returnIntervals(days).counts)).toEqual([6, 40, 16, 19, 19])
  expect(returnIntervals(days).ratio).toBeCloseTo(40 / 19, 12)
})

// NZ artificial-breeding series part VIII: 207,884 services after a first one, 52,075 by day 17, 135,759 on days 18-24.
test('shares of return intervals', () => {
  const days = [
    ...new Array<number>(52_075).fill(17),
    ...new Array<number>(135_759).fill(21),
    ...new Array<number>(207_884 - 52_075 - 135_759).fill(25),
  ]
  const { counts, all, regular } = returnIntervals(days)
  expect(((100 * counts['short-irregular']) / all).toFixed(2)).toBe('25.05')
  expect(regular.percent?.toFixed(2)).toBe('65.31')
  expect(((100 * counts['long-irregular']) / all).toFixed(2)).toBe('9.64')
})
