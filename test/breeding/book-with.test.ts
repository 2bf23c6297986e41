/** A book that facts were added to is the book of all of them, and so is its list, on every day. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type HerdBook, openBook } from '../../source/breeding/book.ts'
import { bookAfter, withFacts } from '../../source/breeding/book-with.ts'
import { type Fact, HERD } from '../../source/breeding/facts.ts'
import { listAt, morningList } from '../../source/breeding/morning-list.ts'
import { type Places, placesOn } from '../../source/breeding/places.ts'
import { anyMorning } from './histories.ts'
import { calving, cow, dayAt, factsOf, type Happening, heat, maiden, on, service } from './support.ts'

/** A fact as the next one in a file. */
const fact = (told: Happening, about: string, id = told.id ?? 'next'): Fact =>
  ({ at: '2026-07-01T05:00:00Z', ...told, about, id }) as unknown as Fact
const correction = (voids: string, id: string): Fact =>
  fact({ kind: 'correction', date: on(0), voids }, HERD, id)

/** Facts of the herd as a whole and records of animals, such as a morning may bring. */
const ofHerd: readonly Fact[] = [
  fact({ kind: 'farm', date: on(3), name: 'Long Acre', zone: 'UTC', milkings: ['07:00'] }, HERD, 'farm-2'),
  fact({ kind: 'policy', date: on(3), set: { calvedToServe: 50 } }, HERD, 'policy-2'),
  fact(
    { kind: 'season', date: on(3), block: 'spring', matingStart: on(0), aiWeeks: 7, bullWeeks: 2 },
    HERD,
    'season-2',
  ),
  fact(
    { kind: 'stock-take', date: on(2), sire: 'S1', straw: 'sexed', count: 9, breed: 'JE' },
    HERD,
    'stock-2',
  ),
  fact({ kind: 'delivery', date: on(4), sire: 'S2', straw: 'beef', count: 1 }, HERD, 'delivery-2'),
  fact({ kind: 'nitrogen', date: on(4), depthCm: 20 }, HERD, 'nitrogen-2'),
  fact(
    { kind: 'animal', date: on(3), number: '1', sex: 'F', block: 'autumn', sire: 'S1' },
    'animal-1',
    'her-2',
  ),
  fact({ kind: 'animal', date: on(3), number: 'S1', sex: 'M', breed: 'AA' }, 'bull-1', 'bull'),
  fact({ kind: 'heat', date: on(3), how: 'paint', certainty: 'sure' }, 'bull-1', 'heat-of-bull'),
  fact({ kind: 'animal', date: on(3), number: '1', sex: 'F' }, 'twin-1', 'same-number'),
]

/** Any log: the facts of a herd in any order, corrections of any of them and of each other, at any place. */
const anyLog: fc.Arbitrary<readonly Fact[]> = fc
  .record({
    herd: anyMorning(),
    more: fc.subarray([...ofHerd]),
    inOrder: fc.boolean(),
    voids: fc.array(fc.nat(200), { maxLength: 6 }),
    places: fc.infiniteStream(fc.nat(10_000)),
  })
  .map(({ herd, more, inOrder, voids, places }) => {
    const told = herd.facts
    const isFirst = (one: Fact): boolean => inOrder && (one.about === HERD || one.kind === 'animal')
    const log = told.filter(isFirst)
    const first = log.length
    for (const one of [...told.filter((each) => !isFirst(each)), ...more])
      log.splice(first + ((places.next().value ?? 0) % (log.length - first + 1)), 0, one)
    for (const [index, which] of voids.entries()) {
      const voided = log[which % log.length] as Fact
      log.push(correction(voided.id, `correction-${index}`))
    }
    return log
  })

/** A log cut in pieces, as it grew. */
const anyGrowth: fc.Arbitrary<readonly (readonly Fact[])[]> = fc
  .tuple(anyLog, fc.array(fc.nat(60), { minLength: 1, maxLength: 12 }))
  .map(([log, cuts]) => {
    const ends = [...new Set(cuts.map((cut) => log.length - (cut % (log.length + 1))))].sort((a, b) => a - b)
    return [...ends, log.length].map((end, index) => log.slice(index === 0 ? 0 : ends[index - 1], end))
  })

/** All that a book says, the order of its maps included. */
const told = (book: HerdBook) => ({
  ...book,
  seasons: [...book.seasons],
  animals: [...book.animals],
  byNumber: [...book.byNumber].sort(([a], [b]) => (a < b ? -1 : 1)),
  byInternationalId: [...book.byInternationalId].sort(([a], [b]) => (a < b ? -1 : 1)),
  records: [...book.records],
  voided: [...book.voided].sort(),
})

describe('facts are added one after another', () => {
  test('to a book: it is the book of all of them', () => {
    fc.assert(
      fc.property(anyGrowth, (pieces) => {
        let book = openBook([])
        const log: Fact[] = []
        for (const piece of pieces) {
          log.push(...piece)
          book = withFacts(book, piece)
          expect(told(book)).toEqual(told(openBook([...log])))
        }
      }),
      { numRuns: 400 },
    )
  })

  test('to a list: it is the list of all of them, on any day', () => {
    fc.assert(
      fc.property(anyGrowth, fc.infiniteStream(fc.integer({ min: -60, max: 180 })), (pieces, days) => {
        let book = openBook([])
        let places: Places | undefined
        let day = dayAt(days.next().value ?? 0)
        const log: Fact[] = []
        for (const [index, piece] of pieces.entries()) {
          log.push(...piece)
          book = withFacts(book, piece)
          if (index % 3 === 2) day = dayAt(days.next().value ?? 0)
          places = placesOn(book, day, places)
          expect(listAt(places)).toEqual(morningList(openBook([...log]), day))
        }
      }),
      { numRuns: 400 },
    )
  })
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

  test('keeps all else as it was', () => {
    for (const later of [after, undone]) {
      expect(later.animals.get('animal-1')).not.toBe(book.animals.get('animal-1'))
      for (const part of ['farm', 'policy', 'seasons', 'allSeasons', 'records', 'stock', 'nitrogen'] as const)
        expect(later[part]).toBe(book[part])
      for (const names of [later.animals, new Map([...later.byNumber].map(([, one]) => [one.id, one]))])
        expect(names.get('animal-2')).toBe(book.animals.get('animal-2'))
      expect(later.byNumber.get('1')).toBe(later.animals.get('animal-1'))
    }
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
