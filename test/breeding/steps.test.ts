import { expect, test } from 'vitest'
import { finished, mapInSteps } from '../../source/breeding/steps.ts'

const doubled = (one: number): number => 2 * one

test('done at once, all items are mapped in their order', () => {
  expect(finished(mapInSteps([1, 2, 3], doubled, 2))).toEqual([2, 4, 6])
  expect(finished(mapInSteps([], doubled))).toEqual([])
})

test('so many items a step, and the result after the last', () => {
  const steps = mapInSteps([1, 2, 3, 4, 5], doubled, 2)
  expect([steps.next(), steps.next(), steps.next()]).toEqual([
    { done: false, value: undefined },
    { done: false, value: undefined },
    { done: true, value: [2, 4, 6, 8, 10] },
  ])
})

test('a long list rests in between also where no number is said', () => {
  const steps = mapInSteps(Array(100).fill(1), doubled)
  expect(steps.next().done).toBe(false)
})
