/** A book that facts were added to is the book of all of them, and so is its list, on every day. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { withFacts } from '../../source/breeding/book-with.ts'
import { type Fact, HERD } from '../../source/breeding/facts.ts'
import { listAt, morningList } from '../../source/breeding/morning-list.ts'
import { type Places, placesOn } from '../../source/breeding/places.ts'
import { correction, fact, told } from './book-told.ts'
import { anyMorning } from './histories.ts'
import { dayAt, on } from './support.ts'

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
