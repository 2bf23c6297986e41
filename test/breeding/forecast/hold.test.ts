import { expect, test } from 'vitest'
import { holdEnd } from '../../../source/breeding/forecast/hold.ts'
import { type Animal, calving, cow, dayAt, hold, standingAt } from '../support.ts'

const calved = calving(-60)

/** The last day of the hold as a season day. */
function endAt(s: number, one: Animal): number | 'open' | undefined {
  const end = holdEnd(standingAt(s, one))
  return end === undefined || end === 'open' ? end : end - dayAt(0)
}

test.each([
  ['on no hold', 5, cow(calved), undefined],
  ['on a hold', 5, cow(calved, hold(3, 14)), 14],
  ['on its last day', 14, cow(calved, hold(3, 14)), 14],
  ['over', 15, cow(calved, hold(3, 14)), undefined],
  ['without an end', 5, cow(calved, hold(3)), 'open'],
  ['a second one ends later', 9, cow(calved, hold(3, 14), hold(5, 20)), 20],
  ['a second one ends sooner', 9, cow(calved, hold(3, 20), hold(5, 14)), 20],
  ['one without an end before one with', 9, cow(calved, hold(3), hold(5, 14)), 14],
  ['one without an end after one with', 9, cow(calved, hold(3, 14), hold(5)), 'open'],
  ['one that begins today counts from tomorrow on', 9, cow(calved, hold(3, 14), hold(9, 30)), 14],
] as const)('%s', (_, s, one, expected) => {
  expect(endAt(s, one)).toBe(expected)
})
