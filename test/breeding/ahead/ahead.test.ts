import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { daysAhead } from '../../../source/breeding/ahead/ahead.ts'
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay, plusDays } from '../../../source/breeding/day.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'
import { bookOf, calving, cow, dayAt, empty, heat, left, service } from '../support.ts'

const sample = JSON.parse(
  readFileSync(new URL('../../../sample-herd/sample-herd.json', import.meta.url), 'utf8'),
)

for (const date of ['2025-12-28', '2026-05-28'])
  test(`the counts of the days after ${date} are those of their lists`, () => {
    const book = openBook(sample.facts)
    const today = isoDay(date)
    for (const { day, counts } of daysAhead(book, today, 14)) {
      const rows = morningList(book, day).rows
      const expected = Map.groupBy(rows, (row) => row.section)
      expect(Object.fromEntries(counts)).toEqual(
        Object.fromEntries([...expected].map(([section, ofSection]) => [section, ofSection.length])),
      )
    }
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
