import { expect, test } from 'vitest'
import {
  type Animal,
  bullService,
  calving,
  cow,
  type Happening,
  left,
  loss,
  maiden,
  pregnant,
  service,
} from '../support.ts'
import { figuresAt, told } from './herd.ts'

// Mating start on season day 0, 282 days: calving planned from season day -83.
const start = -83
const pattern = (s: number, ...animals: readonly Animal[]) => figuresAt(s, animals).calving
const calvedOn = (s: number): Animal => cow(calving(s))
const due = (s: number, ...more: readonly Happening[]): Animal =>
  cow(calving(-400), service(s - 282), pregnant(s - 240), ...more)

test('calved by day 21 and by day 42, the first day being the planned start', () => {
  const by = (s: number) => {
    const { byDay21, byDay42 } = pattern(30, calvedOn(s))
    return `${told(byDay21)} ${told(byDay42)}`
  }
  expect([start - 42, start, start + 20, start + 21, start + 41, start + 42].map(by)).toEqual([
    '1/1 1/1',
    '1/1 1/1',
    '1/1 1/1',
    '0/1 1/1',
    '0/1 1/1',
    '0/1 0/1',
  ])
  // A calving longer before belongs to another time.
  expect(by(start - 43)).toBe('0/0 0/0')
})

test('their targets', () => {
  expect([pattern(30).byDay21.target, pattern(30).byDay42.target]).toEqual([50, 90])
})

test('weeks from the first with a calving to the last, without gaps', () => {
  const { weeks } = pattern(
    30,
    calvedOn(start - 1),
    calvedOn(start),
    calvedOn(start + 6),
    calvedOn(start + 14),
  )
  expect(weeks).toEqual([
    { week: 0, calved: 1, expected: 0, cumulative: 1 },
    { week: 1, calved: 2, expected: 0, cumulative: 3 },
    { week: 2, calved: 0, expected: 0, cumulative: 3 },
    { week: 3, calved: 1, expected: 0, cumulative: 4 },
  ])
  expect(pattern(30, maiden()).weeks).toEqual([])
  const early = pattern(30, calvedOn(start - 10), calvedOn(start + 8)).weeks
  expect(early.map(({ week, calved, cumulative }) => [week, calved, cumulative])).toEqual([
    [-1, 1, 1],
    [0, 0, 1],
    [1, 0, 1],
    [2, 1, 2],
  ])
  expect(pattern(30, calvedOn(start + 8)).weeks).toEqual([{ week: 2, calved: 1, expected: 0, cumulative: 1 }])
})

test('those still to come are expected around their due dates, the overdue around today', () => {
  const middle = (s: number, ...animals: readonly Animal[]) =>
    pattern(s, ...animals).weeks.toSorted((a, b) => b.expected - a.expected)[0]
  // Due on day 4 of week 2 (start + 10), two of them: 52 in 100 calve within three days of it.
  const two = middle(start, due(start + 10), due(start + 10))
  expect(two?.week).toBe(2)
  expect(two?.expected).toBeCloseTo(2 * 0.516, 1)
  expect(middle(start + 17, due(start + 10))?.week).toBe(3)
  expect(pattern(start, due(start + 10)).weeks.at(-1)?.cumulative).toBeCloseTo(1, 1)
  expect(pattern(start, calvedOn(start - 1), due(start + 10)).weeks.at(-1)?.cumulative).toBeCloseTo(2, 1)
})

test('nothing is expected of one that left, nor of one that lost her calf', () => {
  expect(pattern(start, due(start + 10, left(start - 2))).weeks).toEqual([])
  expect(pattern(start, due(start + 10, loss(start - 2))).weeks).toEqual([])
})

test('still to calve: not known while the days are not over', () => {
  const by = (s: number) => told(pattern(s, due(start + 10)).byDay21)
  expect([start + 20, start + 21].map(by)).toEqual(['0/1 ?1', '0/1'])
})

test('a calving after the season is not the one before it', () => {
  expect(told(pattern(80, calvedOn(62)).byDay42)).toBe('0/1')
  expect(told(pattern(80, calvedOn(63)).byDay42)).toBe('0/0')
})

const toFirst = (...animals: readonly Animal[]) => figuresAt(60, animals).calvingToFirstService
const after = (calved: number, ...given: readonly Happening[]): Animal => cow(calving(calved), ...given)

test('days from calving to the first service by AI: mean and median', () => {
  expect(toFirst(after(-60, service(10)), after(-40, service(12)), after(-90, service(0)))).toEqual({
    animals: 3,
    mean: (70 + 52 + 90) / 3,
    median: 70,
  })
  expect(
    toFirst(
      after(-100, service(10)),
      after(-40, service(12)),
      after(-90, service(0)),
      after(-60, service(1)),
    ),
  ).toEqual({
    animals: 4,
    mean: (110 + 52 + 90 + 61) / 4,
    median: (61 + 90) / 2,
  })
})

test('neither a bull nor a second service counts, nor who has not calved', () => {
  expect(toFirst(after(-60, bullService(3), service(30), service(51))).mean).toBe(90)
  expect(toFirst(maiden(service(3)), after(-60, bullService(3)), after(-60)).animals).toBe(0)
})

test('of two calvings the one before the service', () => {
  expect(toFirst(cow(calving(-400), calving(-50), service(10))).mean).toBe(60)
})
