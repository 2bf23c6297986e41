import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import { servicesSettled } from '../../../source/breeding/straws/settled.ts'
import { stockOn } from '../../../source/breeding/straws/stock.ts'
import { cow, type Draft, dayOn, delivery, facts, farm, herd, service, spoiled, stockTake } from './herd.ts'

/** Ids of the services that the stock does not rest on any more at the end of season day s. */
const settled = (s: number, ...drafts: (Draft | Draft[])[]): string[] => [
  ...servicesSettled(herd(farm(), cow('1'), drafts.flat()), dayOn(s)),
]
const used = (id: string, s: number, fields: object = {}): Draft =>
  service('1', s, 'S1', 'sexed', { id, ...fields })
const bought = delivery(0, 'S1', 'sexed', 10)

describe('a service is settled', () => {
  test.each<[string, string[], ...Draft[]]>([
    ['before the first stock fact', ['first'], used('first', -1), bought],
    ['where no stock is kept', ['first'], used('first', 1)],
    ['by a bull', ['first'], bought, used('first', 1, { natural: true })],
    ['by a count after it', ['first'], bought, used('first', 1), stockTake(2, 'S1', 'sexed', 9)],
    [
      'by a later count where an earlier one left it open',
      ['first', 'second'],
      bought,
      used('first', 1),
      stockTake(2, 'S1', 'sexed', 9),
      used('second', 3),
      stockTake(4, 'S1', 'sexed', 8),
    ],
    [
      'by a count that found what the book did not have',
      ['first'],
      delivery(0, 'S1', 'beef', 1),
      used('first', 1),
      stockTake(2, 'S1', 'sexed', 9),
    ],
    [
      'by the first count of a sire of whom no stock was kept before',
      ['first'],
      delivery(0, 'S2', 'sexed', 1),
      used('first', 1),
      stockTake(2, 'S1', 'sexed', 9),
    ],
  ])('%s', (_, expected, ...drafts) => expect(settled(9, drafts)).toEqual(expected))
})

describe('the stock rests on a service', () => {
  test.each<[string, ...Draft[]]>([
    ['while its straws were not counted again', bought, used('first', 1)],
    [
      'of the day of a count, which is made in the morning',
      bought,
      used('first', 1),
      stockTake(1, 'S1', 'sexed', 9),
    ],
    ['after a count', bought, stockTake(1, 'S1', 'sexed', 9), used('first', 2)],
    ['where another sire was counted', bought, used('first', 1), stockTake(2, 'S2', 'sexed', 9)],
    ['where another kind of his was counted', bought, used('first', 1), stockTake(2, 'S1', 'beef', 9)],
    [
      'where another batch was counted than it took of',
      delivery(0, 'S1', 'sexed', 5, { batch: 'B1' }),
      delivery(0, 'S1', 'sexed', 5, { batch: 'B2' }),
      used('first', 1, { batch: 'B1' }),
      stockTake(2, 'S1', 'sexed', 5, { batch: 'B2' }),
    ],
    ['where the count is of a day to come', bought, used('first', 1), stockTake(10, 'S1', 'sexed', 9)],
    [
      'that names no sire: it is told of for ever',
      bought,
      used('first', 1, { sire: undefined }),
      stockTake(2, 'S1', 'sexed', 9),
    ],
  ])('%s', (_, ...drafts) => expect(settled(9, drafts)).toEqual([]))
})

test('a service of a day to come is not judged yet', () => {
  expect(settled(0, bought, used('today', 0), used('tomorrow', 1))).toEqual([])
  expect(settled(-3, bought, used('then', -3), used('later', -2))).toEqual(['then'])
})

const change = fc.record({
  kind: fc.constantFrom('delivery', 'spoiled', 'stock-take', 'stock-take', 'service', 'service'),
  s: fc.integer({ min: 0, max: 8 }),
  sire: fc.constantFrom('S1', 'S2'),
  straw: fc.constantFrom('sexed', 'beef'),
  batch: fc.constantFrom(undefined, undefined, 'B1', 'B2'),
  count: fc.integer({ min: 1, max: 4 }),
})

test('without the services that are settled the stock is the same, on the day and later', () => {
  let dropped = 0
  fc.assert(
    fc.property(fc.array(change, { maxLength: 30 }), (changes) => {
      const drafts = changes.map(({ kind, s, sire, straw, count, batch }, i) => {
        const fields = { id: `c${i}`, ...(batch === undefined ? {} : { batch }) }
        if (kind === 'service') return service('1', s, sire, straw, fields)
        return { delivery, spoiled, 'stock-take': stockTake }[kind as 'delivery'](
          s,
          sire,
          straw,
          count,
          fields,
        )
      })
      const all = facts(farm(), cow('1'), drafts)
      const book = openBook(all)
      const gone = servicesSettled(book, dayOn(5))
      dropped += gone.size
      const without = openBook(all.filter(({ id }) => !gone.has(id)))
      for (const s of [5, 6, 8]) {
        const [whole, rest] = [stockOn(book, dayOn(s)), stockOn(without, dayOn(s))]
        expect([rest.lots, rest.pools, rest.notices]).toEqual([whole.lots, whole.pools, whole.notices])
      }
    }),
    { numRuns: 200 },
  )
  expect(dropped).toBeGreaterThan(20)
})
