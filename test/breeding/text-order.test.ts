import { expect, test } from 'vitest'
import { textOrder } from '../../source/breeding/text-order.ts'

test('texts stand in the order of their characters, equal ones side by side', () => {
  expect(['b', 'S2', 'a', 'S17', 'S2', ''].sort(textOrder)).toEqual(['', 'S17', 'S2', 'S2', 'a', 'b'])
  expect([textOrder('S2', 'S2'), Math.sign(textOrder('a', 'b')), Math.sign(textOrder('b', 'a'))]).toEqual([
    0, -1, 1,
  ])
})
