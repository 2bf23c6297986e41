import { expect, test } from 'vitest'
import { openDesk } from '../../source/morning/desk.ts'
import { moveAt, rowAt } from '../../source/morning/page.ts'
import { calving, cow, dayAt, factsOf, type Happening, service, withBull } from '../breeding/support.ts'

const herd = (...given: readonly Happening[]) =>
  factsOf([
    cow({ number: '1' }, calving(-60), service(24), ...given),
    cow({ number: '2' }, calving(-60), ...given),
  ])
const opened = (s: number, ...given: readonly Happening[]) =>
  openDesk(herd(...given), { day: dayAt(s), time: '05:15' }, 'AB').page

test('on the day of a move the list opens with it; the day before, and once it is made, with the work', () => {
  expect(moveAt(opened(42))?.what).toBe('in')
  expect(opened(41).items.some((item) => item.is === 'move')).toBe(true)
  expect(moveAt(opened(41))).toBeUndefined()
  expect(rowAt(opened(44, withBull(42)))?.number).toBe('1')
  expect(moveAt(opened(63, withBull(42)))?.what).toBe('out')
})
