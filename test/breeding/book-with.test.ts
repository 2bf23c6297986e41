/** A book to which facts were added keeps, object for object, what they do not concern. */
import { describe, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { bookAfter, withFacts } from '../../source/breeding/book-with.ts'
import { type Fact, HERD } from '../../source/breeding/facts.ts'
import { placesOn } from '../../source/breeding/places.ts'
import { correction, fact, told } from './book-told.ts'
import { calving, cow, dayAt, factsOf, heat, maiden, on, service } from './support.ts'

/** A log in which facts of the herd, of animals, and corrections of both follow each other. */
const log: readonly Fact[] = [
  ...factsOf([
    cow({ number: '1', internationalId: 'X1' }, calving(-60), service(0, { id: 'served' })),
    maiden({ number: '2', internationalId: 'X2' }, heat(0)),
    cow({ number: '3' }),
  ]),
  correction('to-come', 'too-early'),
  fact(heat(3), 'animal-1', 'to-come'),
  fact(heat(2), 'animal-1', 'seen'),
  fact(service(3), 'animal-2', 'of-two'),
  fact(heat(3), 'nobody', 'stray'),
  fact({ kind: 'farm', date: on(3), name: 'Hill', zone: 'UTC', milkings: ['07:00'] }, HERD, 'farm-2'),
  correction('farm-2', 'farm-as-before'),
  fact({ kind: 'animal', date: on(4), number: '1', sex: 'F', internationalId: 'X1' }, 'twin', 'twin-record'),
  fact(heat(5), 'animal-1', 'again'),
  fact(heat(5), 'twin', 'of-twin'),
  correction('served', 'undo'),
  correction('undo', 'redo'),
  correction('twin-record', 'no-twin'),
  correction('of-two', 'undo-of-two'),
  fact({ kind: 'nitrogen', date: on(4), depthCm: 20 }, HERD, 'nitrogen'),
  fact(heat(9), 'animal-2', 'late'),
  correction('seen', 'undo-seen'),
]

test('wherever a log is cut, the rest added makes the book of all of it', () => {
  const whole = told(openBook([...log]))
  for (const cut of log.keys()) {
    const book = openBook(log.slice(0, cut))
    expect(told(withFacts(book, log.slice(cut)))).toEqual(whole)
    expect(told(withFacts(book, log.slice(cut, cut + 1)))).toEqual(told(openBook(log.slice(0, cut + 1))))
  }
})

describe('a fact about one animal', () => {
  const facts = factsOf([
    cow({ number: '1' }, calving(-60), service(0, { id: 'served' })),
    maiden({ number: '2' }),
  ])
  const book = openBook(facts)
  const seen = fact(heat(21), 'animal-1')
  const after = withFacts(book, [seen])
  const undone = withFacts(after, [correction('served', 'undo')])
  const together = withFacts(book, [seen, correction('served', 'undo')])

  test('keeps all else as it was', () => {
    for (const later of [after, undone, together]) {
      expect(later.animals.get('animal-1')).not.toBe(book.animals.get('animal-1'))
      for (const part of ['farm', 'policy', 'seasons', 'allSeasons', 'records', 'stock', 'nitrogen'] as const)
        expect(later[part]).toBe(book[part])
      for (const names of [later.animals, new Map([...later.byNumber].map(([, one]) => [one.id, one]))])
        expect(names.get('animal-2')).toBe(book.animals.get('animal-2'))
      expect(later.byNumber.get('1')).toBe(later.animals.get('animal-1'))
    }
  })

  test('may come with a correction of another’s, and each has her own', () => {
    const added = [fact(heat(21), 'animal-2'), correction('served', 'undo')]
    expect(told(withFacts(book, added))).toEqual(told(openBook([...facts, ...added])))
  })

  test('leaves the places of the others, on the same day only', () => {
    const before = placesOn(book, dayAt(21))
    const [her, other] = placesOn(after, dayAt(21), before).each
    expect(her).not.toBe(before.each[0])
    expect(other).toBe(before.each[1])
    expect(placesOn(after, dayAt(22), before).each[1]).not.toBe(before.each[1])
  })

  test('leaves no place where the herd is another', () => {
    const before = placesOn(book, dayAt(21))
    for (const other of [
      { ...after, policy: { ...after.policy } },
      { ...after, farm: { ...after.farm } },
      { ...after, stock: [] },
      { ...after, allSeasons: [] },
      { ...after, records: new Map(after.records) },
    ])
      expect(placesOn(other, dayAt(21), before).each[1]).not.toBe(before.each[1])
  })
})

describe('the book of a log', () => {
  const facts = factsOf([cow(calving(-60)), maiden({ number: '2' })])
  const book = openBook(facts)
  const kept = book.animals.get('animal-2')

  test.each([
    ['that goes on keeps the others', [...facts, fact(heat(5), 'animal-1')], true],
    ['read from the disk again too', [...structuredClone(facts), fact(heat(5), 'animal-1')], true],
    ['that is the same keeps all', facts, true],
    ['that is another is opened anew', [facts[0], fact(heat(5), 'animal-1'), ...facts.slice(1)], false],
    ['that is shorter is opened anew', facts.slice(0, -1), false],
  ] as const)('%s', (_, log, keeps) => {
    const after = bookAfter(book, log as Fact[])
    expect(told(after)).toEqual(told(openBook(log as Fact[])))
    expect(after.animals.get('animal-2') === kept).toBe(keeps)
  })
})
