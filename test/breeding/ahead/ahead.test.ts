import { expect, test } from 'vitest'
import { type DayAhead, daysAheadInSteps } from '../../../source/breeding/ahead/ahead.ts'
import type { HerdBook } from '../../../source/breeding/book.ts'
import { type Day, plusDays } from '../../../source/breeding/day.ts'
import { morningList, rowsBySection } from '../../../source/breeding/morning-list.ts'
import { finished } from '../../../source/breeding/steps.ts'
import { bookOf, calving, cow, dayAt, empty, heat, hold, left, maiden, service } from '../support.ts'

const daysAhead = (book: HerdBook, today: Day, days: number): readonly DayAhead[] =>
  finished(daysAheadInSteps(book, today, days))

test('the counts of the days to come are those of their lists, today left out', () => {
  const herd = [
    cow(calving(-60), service(0)),
    cow(calving(-60), service(1)),
    cow(calving(-60), service(5)),
    cow(calving(-100)),
    cow(calving(-10)),
    cow(calving(-60), hold(10, 25)),
    maiden(heat(2)),
    cow(calving(-200), calving(-60), left(3)),
    cow(calving(-60), service(0), left(3)),
  ]
  const book = bookOf(herd.map((one, i) => ({ ...one, record: { ...one.record, number: String(i + 1) } })))
  const ahead = daysAhead(book, dayAt(18), 30)
  expect(ahead.map(({ day }) => day - dayAt(0))).toEqual(Array.from({ length: 30 }, (_, i) => 19 + i))
  for (const { day, counts } of ahead) {
    const rows = [...rowsBySection(morningList(book, day))]
    expect(Object.fromEntries(counts)).toEqual(
      Object.fromEntries(rows.map(([section, ofSection]) => [section, ofSection.length])),
    )
  }
  expect(ahead[3]?.counts.get('repeat-heat-watch')).toBe(3)
})

test('no return is expected of an animal that has left', () => {
  const gone = cow(calving(-60), service(0), left(5))
  for (const { returns } of daysAhead(bookOf(gone), dayAt(10), 20)) expect(returns).toBe(0)
})

test('an animal that left with facts that cannot all be right stands on every list to come', () => {
  const gone = cow({ number: '7' }, calving(-200), calving(-60), left(3))
  const fine = cow({ number: '8' }, calving(-60), left(3))
  const ahead = daysAhead(bookOf([gone, fine]), dayAt(10), 3)
  expect(ahead.map(({ counts }) => counts.get('take-care'))).toEqual([1, 1, 1])
})

test('a return is expected around three weeks after a service, and never of an animal checked empty or seen again', () => {
  const ahead = daysAhead(bookOf(cow(calving(-60), service(0))), dayAt(10), 30)
  const best = ahead.reduce((a, b) => (b.returns > a.returns ? b : a))
  expect(best.day - dayAt(0)).toBe(22)
  const none = [
    cow({ number: '2' }, calving(-60), service(0), empty(30)),
    cow({ number: '3' }, calving(-60), service(0), heat(20)),
    cow({ number: '4' }, calving(-60)),
  ]
  for (const { returns } of daysAhead(bookOf(none), dayAt(31), 14)) expect(returns).toBe(0)
})

test('returns of several animals add up', () => {
  const herd = (count: number) =>
    bookOf(Array.from({ length: count }, (_, i) => cow({ number: String(i + 1) }, calving(-60), service(0))))
  const one = daysAhead(herd(1), dayAt(15), 10)
  const five = daysAhead(herd(5), dayAt(15), 10)
  for (const [i, { returns, day }] of five.entries()) {
    expect(day).toBe(plusDays(dayAt(15), i + 1))
    expect(returns).toBeCloseTo(5 * (one[i]?.returns ?? 0), 10)
  }
})
