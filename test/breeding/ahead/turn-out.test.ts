import { expect, test } from 'vitest'
import { bullsOnHand, isWithBull, turnOut } from '../../../source/breeding/ahead/turn-out.ts'
import type { AnimalRecord } from '../../../source/breeding/book.ts'
import type { Season } from '../../../source/breeding/season.ts'
import {
  type Animal,
  bar,
  bookOf,
  bullService,
  calving,
  cow,
  dayAt,
  fromBull,
  type Happening,
  hold,
  left,
  maiden,
  note,
  on,
  pregnant,
  service,
  withBull,
} from '../support.ts'

const bull = (number: string, more: Record<string, unknown> = {}): Animal => ({
  record: { number, sex: 'M', block: undefined, ready: true, ...more },
  happenings: [],
})
const numbered = (number: string, ...given: readonly Happening[]): Animal => cow({ number }, ...given)

const moveOf = (animals: readonly Animal[], s = 41) => {
  const book = bookOf(animals)
  return turnOut(book, book.allSeasons[0] as Season, dayAt(42), dayAt(s))
}
const numbers = (standings: readonly { readonly animal: AnimalRecord }[]): readonly string[] =>
  standings.map(({ animal }) => animal.number)

test('who goes with the bull, who is in calf, who is kept from him and why', () => {
  const move = moveOf([
    numbered('1', calving(-60), service(10)),
    numbered('2', calving(-60)),
    numbered('3', calving(-60), service(0), pregnant(35)),
    numbered('4', calving(-60), bar(5)),
    numbered('5', calving(-60), hold(30, 50)),
    numbered('6', calving(21)),
    numbered('7', calving(20)),
    maiden({ number: '8' }),
    maiden({ number: '9', ready: false }),
    numbered('10', calving(-60), left(20)),
    cow({ number: '11', block: 'autumn' }, calving(-60)),
    maiden({ number: '12', born: on(-270) }, bullService(20)),
    bull('B1', { block: 'spring' }),
  ])
  expect(numbers(move.goes)).toEqual(['1', '2', '7', '8'])
  expect(numbers(move.inCalf)).toEqual(['3'])
  expect(move.kept.map(({ standing, reason }) => [standing.animal.number, reason])).toEqual([
    ['4', 'barred'],
    ['5', 'hold'],
    ['6', 'ready-after-bull'],
    ['9', 'maiden-not-ready'],
    ['12', 'maiden-not-ready'],
  ])
  expect([move.from, move.to]).toEqual([dayAt(42), dayAt(62)])
})

test('a bull works here when he is marked so, or was with a cow in the past 400 days, and has not left', () => {
  const animals = [
    bull('B1', { born: on(-1000) }),
    bull('B2', { born: on(42 - 729) }),
    bull('B7', { born: on(42 - 730) }),
    bull('B3', { ready: undefined }),
    { ...bull('B4'), happenings: [left(10)] },
    { ...bull('B8'), happenings: [note(10), left(43)] },
    bull('B5', { ready: undefined }),
    bull('B6', { ready: undefined }),
    numbered('1', calving(-60), withBull(42 - 400, { bull: 'B5' }), withBull(42 - 401, { bull: 'B6' })),
  ]
  expect(
    bullsOnHand(bookOf(animals), dayAt(42)).map(({ bull: { number }, young }) => [number, young]),
  ).toEqual([
    ['B1', false],
    ['B2', true],
    ['B7', false],
    ['B8', false],
    ['B5', false],
  ])
})

test('a bull on hold does not work, until the hold is over', () => {
  const animals = [
    { ...bull('B1'), happenings: [hold(30)] },
    { ...bull('B2'), happenings: [hold(30, 42)] },
    { ...bull('B5'), happenings: [hold(30, 43)] },
    { ...bull('B6'), happenings: [hold(42)] },
    { ...bull('B3'), happenings: [hold(30, 41)] },
    { ...bull('B4'), happenings: [hold(30), hold(35, 38)] },
  ]
  expect(bullsOnHand(bookOf(animals), dayAt(42)).map(({ bull: { number } }) => number)).toEqual([
    'B2',
    'B3',
    'B4',
  ])
})

test('with a bull from the day of it to the day he is taken away', () => {
  const with2 = numbered(
    '1',
    calving(-60),
    withBull(42, { bull: 'B1' }),
    withBull(42, { bull: 'B2' }),
    fromBull(50, { bull: 'B1' }),
    fromBull(63),
  )
  const animal = bookOf(with2).byNumber.get('1') as AnimalRecord
  expect([41, 42, 50, 62, 63].map((s) => isWithBull(animal, dayAt(s)))).toEqual([
    false,
    true,
    true,
    true,
    false,
  ])
})
