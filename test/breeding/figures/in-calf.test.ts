import { expect, test } from 'vitest'
import { inCalfFigures } from '../../../source/breeding/figures/in-calf.ts'
import type { Outcome } from '../../../source/breeding/figures/outcome.ts'
import { seasonAt, told } from './herd.ts'

const { season } = seasonAt(0, [])
const inCalf = (day: number): Outcome => ({ kind: 'in-calf', day })
const unknown = (day: number): Outcome => ({ kind: 'unknown', day })
const empty: Outcome = { kind: 'empty' }

test('six weeks end with day 41, the season with day 62', () => {
  const figures = inCalfFigures([inCalf(41), inCalf(42), inCalf(62), empty], season)
  expect(told(figures.sixWeeks)).toBe('1/4')
  expect(told(figures.all)).toBe('3/4')
  expect(told(figures.empty)).toBe('1/4')
  expect([figures.sixWeeks.target, figures.empty.target]).toEqual([78, 10])
})

test('of whom it is not known from day 42 on, it is known for the six weeks', () => {
  const figures = inCalfFigures([unknown(41), unknown(42), empty], season)
  expect(told(figures.sixWeeks)).toBe('0/3 ?1')
  expect(told(figures.all)).toBe('0/3 ?2')
})

test('the curve: Kaplan and Meier 1958 with Greenwood’s error', () => {
  // One of two on day 3: half, √(1/4 x 1/(2 x 1)) = .3536. Then the other on his last day: all, without error.
  const { curve, knownTo } = inCalfFigures([inCalf(3), inCalf(62)], season)
  expect(curve.map(({ day, percent }) => [day, percent])).toEqual([
    [3, 50],
    [62, 100],
  ])
  expect(curve[0]?.standardError).toBeCloseTo(35.355, 3)
  expect(knownTo).toBe(62)
})

test('empties are at risk to the end, who conceived before the start from its first day', () => {
  const { curve } = inCalfFigures([inCalf(-20), inCalf(5), empty, empty], season)
  expect(curve.map(({ day, percent }) => [day, percent])).toEqual([
    [0, 25],
    [5, 50],
  ])
})

test('the curve goes on to the day before one in twenty and one more are not known', () => {
  const known = Array.from({ length: 18 }, (_, i) => inCalf(i))
  expect(inCalfFigures([...known, unknown(15)], season)).toMatchObject({ knownTo: 14 })
  const twenty = inCalfFigures([...known, inCalf(29), unknown(20), unknown(30)], season)
  expect(twenty.knownTo).toBe(29)
  expect(twenty.curve.at(-1)?.day).toBe(29)
  expect(inCalfFigures([...known, inCalf(18), unknown(30)], season).knownTo).toBe(62)
})
