import { expect, test } from 'vitest'
import { morningList } from '../../../source/breeding/morning-list.ts'
import { listText } from '../../../source/exchange/list/text.ts'
import { bookOf, calving, cow, dayAt, type Happening, service, withBull } from '../../breeding/support.ts'

const printed = (s: number, ...given: readonly Happening[]): readonly string[] => {
  const book = bookOf(['1', '2', '3'].map((number) => cow({ number }, calving(-60), ...given)))
  return listText(book, morningList(book, dayAt(s))).split('\n')
}

test('the printed list says that the bull goes in, or comes out, until it is done', () => {
  expect(printed(42, service(10))).toContain('Spring block: the bull goes in Fri 12 Jun, 3 animals')
  expect(printed(42, withBull(42)).join('\n')).not.toContain('the bull goes in')
  expect(printed(70, withBull(42))).toContain('Spring block: the bull comes out Fri 3 Jul, 3 animals')
  expect(printed(30, service(10)).join('\n')).not.toMatch(/the bull (goes in|comes out)/)
})

test('no line is longer than 80 characters', () => {
  for (const line of printed(42, service(20), service(41))) expect(line.length).toBeLessThanOrEqual(80)
})
