import { expect, test } from 'vitest'
import { movesDue, withBull } from '../../../source/breeding/ahead/moves-due.ts'
import { turnOut } from '../../../source/breeding/ahead/turn-out.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'
import {
  type Animal,
  bookOf,
  calving,
  cow,
  dayAt,
  fromBull,
  type Happening,
  type Herd,
  left,
  pregnant,
  withBull as put,
  service,
} from '../support.ts'

const numbered = (number: number, ...given: readonly Happening[]): Animal =>
  cow({ number: String(number) }, calving(-60), ...given)
const due = (animals: readonly Animal[], s: number, herd?: Herd): readonly string[] => {
  const book = bookOf(animals, herd)
  return movesDue(book, morningList(book, dayAt(s))).map(
    ({ block, what, day, count }) => `${block} ${what} ${day - dayAt(0)}: ${count}`,
  )
}
const four = (...given: readonly Happening[]): readonly Animal[] =>
  [1, 2, 3, 4].map((n) => numbered(n, ...given))

test('to the bull: from the last day of AI to his last', () => {
  const herd = four()
  expect(due(herd, 40)).toEqual([])
  expect(due(herd, 41)).toEqual(['spring in 42: 4'])
  expect(due(herd, 42)).toEqual(['spring in 42: 4'])
  expect(due(herd, 62)).toEqual(['spring in 42: 4'])
  expect(due(herd, 63)).toEqual([])
})

test('it is made once half of those that go are with him, also when it was agreed the day before', () => {
  expect(due(four(put(42)), 41)).toEqual([])
  expect(due(four(put(43)), 41)).toEqual(['spring in 42: 4'])
  expect(due(four(put(42)), 42)).toEqual([])
  expect(due([numbered(1, put(42)), numbered(2, put(42)), numbered(3), numbered(4)], 50)).toEqual([])
  expect(due([numbered(1, put(42)), numbered(2), numbered(3), numbered(4)], 50)).toEqual(['spring in 42: 3'])
})

test('an animal put with him early, one by one, is not the move', () => {
  expect(due([numbered(1, put(30)), numbered(2), numbered(3), numbered(4)], 41)).toEqual(['spring in 42: 3'])
})

test('who is in calf does not go', () => {
  expect(due(four(service(0), pregnant(35)), 41)).toEqual([])
  expect(due(four(service(0), pregnant(35)), 50)).toEqual([])
})

test('out: from the day after his last on, until none is with him', () => {
  const herd = four(put(42))
  expect(due(herd, 62)).toEqual([])
  expect(due(herd, 63)).toEqual(['spring out 63: 4'])
  expect(due(herd, 62 + 84)).toEqual(['spring out 63: 4'])
  expect(due(herd, 62 + 85)).toEqual([])
  expect(due([numbered(1, put(42)), numbered(2, put(42), fromBull(63))], 63)).toEqual(['spring out 63: 1'])
  expect(due(four(put(42), fromBull(63)), 63)).toEqual([])
  expect(due(four(put(42), left(50)), 63)).toEqual([])
})

test('a bull of the block is not moved to himself', () => {
  const bull: Animal = { record: { number: 'B1', sex: 'M', block: 'spring' }, happenings: [] }
  expect(due([...four(), bull], 42)).toEqual(['spring in 42: 4'])
})

test('without bull weeks there is no move', () => {
  expect(due(four(), 41, { bullWeeks: 0 })).toEqual([])
  expect(due(four(), 42, { bullWeeks: 0 })).toEqual([])
})

test('each block has its own', () => {
  const herd: Herd = { seasons: [{ block: 'spring' }, { block: 'autumn', matingStart: '2026-02-27' }] }
  const autumn = cow({ number: '9', block: 'autumn' }, calving(-120), put(-20))
  expect(due([...four(), autumn], 41, herd)).toEqual(['autumn out 0: 1', 'spring in 42: 4'])
})

test('who is with which bull, since when', () => {
  const book = bookOf([numbered(1, put(42, { bull: 'B1' }), put(45, { bull: 'B2' })), numbered(2)])
  expect(withBull(book, 'spring', dayAt(44))).toEqual([
    { id: 'animal-1', number: '1', since: dayAt(42), bulls: ['B1'] },
  ])
  expect(withBull(book, 'spring', dayAt(45))[0]?.bulls).toEqual(['B1', 'B2'])
  expect(withBull(book, 'spring', dayAt(41))).toEqual([])
})

test('the step counts whom it moves: those of the repeat-heat watch go with him too', () => {
  const herd = [...four(), numbered(5, service(24))]
  expect(due(herd, 42)).toEqual(['spring in 42: 5'])
  const book = bookOf(herd)
  const [season] = book.allSeasons
  if (season === undefined) throw new Error('the herd has a season')
  expect(turnOut(book, season, dayAt(42), dayAt(43)).goes).toHaveLength(5)
})
