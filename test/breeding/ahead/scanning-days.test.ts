import { expect, test } from 'vitest'
import { bestScanningDays, scanningDays } from '../../../source/breeding/ahead/scanning-days.ts'
import { weekday } from '../../../source/breeding/day.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bar,
  bookOf,
  calving,
  cow,
  dayAt,
  empty,
  type Herd,
  heat,
  left,
  matingStart,
  on,
  pregnant,
  service,
} from '../support.ts'

const daysFrom = (s: number, animals: readonly Animal[], to: number, herd?: Herd) => {
  const book = bookOf(animals, herd)
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  return scanningDays(book, standings, dayAt(s), dayAt(to))
}
const served = (number: number, s: number): Animal =>
  cow({ number: String(number) }, calving(-60), service(s))

test('ready 30 days after her service by ultrasound, 42 by hand', () => {
  const ready = daysFrom(20, [served(1, 0), served(2, 5)], 50)
  expect(ready.find((one) => one.day === dayAt(29))).toBeUndefined()
  expect(ready.find((one) => one.day === dayAt(30))?.ready).toBe(1)
  expect(ready.find((one) => one.day === dayAt(35))?.ready).toBe(2)
  expect(ready.at(-1)?.day).toBe(dayAt(50))
  const byHand = daysFrom(20, [served(1, 0)], 50, { policy: { checkMethod: 'hand' } })
  expect(byHand[0]).toMatchObject({ day: dayAt(42), ready: 1 })
})

test('who is in calf, checked empty, seen again or not to be bred is not awaited', () => {
  const animals = [
    cow({ number: '1' }, calving(-60), service(0), pregnant(35)),
    cow({ number: '2' }, calving(-60), service(0), empty(35)),
    cow({ number: '3' }, calving(-60), service(0), heat(21)),
    cow({ number: '4' }, calving(-60), service(0), bar(20)),
    cow({ number: '5' }, calving(-60), service(0), left(20)),
  ]
  expect(daysFrom(40, animals, 60)).toEqual([])
})

test('foetal age tells the sires from 35 days after the last day of AI to season day 98', () => {
  const telling = daysFrom(40, [served(1, 10)], 110).filter((one) => one.tellsSires)
  expect(telling[0]?.day).toBe(dayAt(41 + 35))
  expect(telling.at(-1)?.day).toBe(dayAt(98))
})

test('one working day a week, the first with as many as the week will have; a week that adds nothing is left out', () => {
  // The mating start is a Friday. Ready on s 30-34 (Sunday to Thursday), 36 (Saturday), 60.
  const animals = [0, 1, 2, 2, 4, 6, 30].map((s, index) => served(index + 1, s))
  const best = bestScanningDays(daysFrom(31, animals, 110))
  expect(best.map(({ day, ready, tellsSires }) => [day - matingStart, ready, tellsSires])).toEqual([
    [34, 5, false],
    [38, 6, false],
    [60, 7, false],
    [76, 7, true],
  ])
  expect(best.every(({ day }) => weekday(day) >= 1 && weekday(day) <= 5)).toBe(true)
})

test('a week that begins to tell the sires on its Friday has its visit on that Friday, though nobody more is ready', () => {
  const best = bestScanningDays(daysFrom(31, [served(1, 3)], 110, { matingStart: on(1) }))
  expect(best.map(({ day, ready, tellsSires }) => [day - matingStart, ready, tellsSires])).toEqual([
    [33, 1, false],
    [77, 1, true],
  ])
})

test('blocks stand by themselves', () => {
  const animals = [served(1, 0), cow({ number: '2', block: 'autumn' }, calving(-60), service(3))]
  const best = bestScanningDays(
    daysFrom(30, animals, 60, { seasons: [{ block: 'spring' }, { block: 'autumn' }] }),
  )
  expect(best.map(({ block, ready }) => [block, ready])).toEqual([
    ['spring', 1],
    ['autumn', 1],
  ])
})
