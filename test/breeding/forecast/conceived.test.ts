import { expect, test } from 'vitest'
import { conceivedChances } from '../../../source/breeding/forecast/conceived.ts'
import type { Conception } from '../../../source/breeding/forecast/outlook.ts'

const on = (day: number, share: number): Conception => ({ day, by: 'conventional', share, gestation: 280 })
const losses = [{ from: 30, to: 31, lost: 0.5 }]

test('those conceived by the end of each day, that day included', () => {
  const conceptions = [on(5, 0.2), on(6, 0.3), on(13, 0.1)]
  const chances = conceivedChances(conceptions, [5, 6, 12, 13], 20, [])
  for (const [i, chance] of [0.2, 0.5, 0.5, 0.6].entries()) expect(chances[i]).toBeCloseTo(chance, 12)
})

test('less those that are lost by the later day', () => {
  const of = (day: number) => conceivedChances([on(5, 0.8)], [41], day, losses)[0]
  expect([35, 36, 300].map(of)).toEqual([0.8, 0.4, 0.4])
})

test('a conception after the later day has lost nothing yet', () => {
  expect(conceivedChances([on(40, 0.8)], [41], 5, losses)).toEqual([0.8])
})

test('never more than certain, though what she tells of is the share before losses', () => {
  expect(conceivedChances([on(5, 1.1)], [41], 20, [])).toEqual([1])
})
