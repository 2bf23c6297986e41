import { expect, test } from 'vitest'
import { bit, stretches } from '../../source/screens/line.tsx'

test('signs and other text stand in stretches of their own, and nothing is lost', () => {
  const line = [bit('► ', 'light'), bit('○'), bit(' 412 ', 'strong'), bit('on heat'), bit(' ║ '), bit('why')]
  expect(stretches(line).map((stretch) => stretch.map((one) => one.text))).toEqual([
    ['► ', '○'],
    [' 412 ', 'on heat'],
    [' ║ '],
    ['why'],
  ])
  expect(stretches(line).flat()).toEqual(line)
  expect(stretches([])).toEqual([])
})
