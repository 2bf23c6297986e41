import { expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { withFacts } from '../../source/breeding/book-with.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { placesOn } from '../../source/breeding/places.ts'
import { bookOf, calving, cow, dayAt, factsOf, type Happening, heat, on, service } from './support.ts'

const animals = [
  cow({ number: '1' }, calving(-60), heat(9)),
  cow({ number: '2' }, calving(-60), service(0)),
  cow({ number: '3' }, calving(-60)),
]
const facts = factsOf(animals)
const book = openBook(facts)
const today = dayAt(10)
const before = placesOn(book, today)

/** For each animal of the next places, whether hers were kept. */
function kept(told: Happening, about = 'herd', day = today): boolean[] {
  const fact = { id: 'next', at: '2026-07-01T05:00:00Z', about, ...told } as unknown as Fact
  const next = placesOn(withFacts(book, [fact]), day, before)
  expect(next.each).toEqual(placesOn(openBook([...facts, fact]), day).each)
  return next.each.map((place, index) => place === before.each[index])
}

test('the places of those to whom nothing happened are kept', () => {
  expect(kept(heat(10), 'animal-2')).toEqual([true, false, true])
  expect(kept(heat(10), 'animal-3')).toEqual([true, true, false])
})

test.each<[string, Happening]>([
  [
    'the farm',
    { kind: 'farm', date: on(3), name: 'Long Acre', zone: 'UTC', milkings: ['07:00'] } as Happening,
  ],
  ['the settings', { kind: 'policy', date: on(3), set: { calvedToServe: 75 } }],
  [
    'a season',
    { kind: 'season', date: on(3), block: 'spring', matingStart: on(20), aiWeeks: 7, bullWeeks: 2 },
  ],
  ['what is in store', { kind: 'delivery', date: on(4), sire: 'S2', straw: 'beef', count: 1 }],
])('%s changed: none is kept', (_, told) => {
  expect(kept(told)).toEqual([false, false, false])
})

test('the record of an animal changed: none is kept', () => {
  const record = { kind: 'animal', date: on(3), number: '3', sex: 'F', block: 'autumn' } as Happening
  expect(kept(record, 'animal-3')).toEqual([false, false, false])
})

test('on another day none is kept', () => {
  expect(kept(heat(10), 'animal-2', dayAt(11))).toEqual([false, false, false])
})

test('what contradicts itself is to be taken care of, be it one thing alone', () => {
  const reasons = (...happenings: Happening[]) =>
    placesOn(bookOf(cow(...happenings)), today).each.map(({ takeCare }) => takeCare?.reasons)
  expect(reasons(calving(-60))).toEqual([undefined])
  expect(reasons(calving(-60), calving(-30))).toEqual([['contradiction']])
})

test('a check that waits for a visit leaves her to the sections after it', () => {
  const placed = (s: number) =>
    placesOn(bookOf(cow(calving(-60), service(0)), { scans: [60] }), dayAt(s)).each.map(
      ({ further, visit }) => [further?.section, visit?.visit],
    )
  expect([placed(35), placed(50), placed(60)]).toEqual([
    [[undefined, dayAt(60)]],
    [['sweep-bull', dayAt(60)]],
    [['pregnancy-check', undefined]],
  ])
})
