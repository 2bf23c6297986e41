import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import type { Fact } from '../../../source/breeding/facts.ts'
import type { Problem } from '../../../source/breeding/problem.ts'
import { stockOn, volumeOf } from '../../../source/breeding/straws/stock.ts'
import { cow, type Draft, dayOn, delivery, facts, farm, herd, service, spoiled, stockTake } from './herd.ts'

const left = (s: number, ...drafts: (Draft | Draft[])[]): number =>
  stockOn(herd(farm(), cow('1'), ...drafts), dayOn(s)).left('S1', 'sexed')

describe('straws left', () => {
  test('counted, delivered, used, spoiled', () => {
    const done = [
      stockTake(0, 'S1', 'sexed', 10),
      delivery(1, 'S1', 'sexed', 5),
      service('1', 2, 'S1', 'sexed'),
      spoiled(3, 'S1', 'sexed', 2),
    ]
    expect([0, 1, 2, 3].map((s) => left(s, done))).toEqual([10, 15, 14, 12])
  })

  test('a fact of tomorrow does not count, one of today does', () => {
    expect(
      left(1, delivery(0, 'S1', 'sexed', 5), service('1', 1, 'S1', 'sexed'), service('1', 2, 'S1', 'sexed')),
    ).toBe(4)
  })

  test('another kind of the same sire is another stock, and a bull takes no straw', () => {
    const other = [service('1', 1, 'S1', 'beef'), service('1', 1, 'S1', 'sexed', { natural: true })]
    expect(left(1, delivery(0, 'S1', 'sexed', 5), other)).toBe(5)
  })

  test('a count without a time is made before the services of its day', () => {
    expect(left(0, service('1', 0, 'S1', 'sexed', { time: '05:00' }), stockTake(0, 'S1', 'sexed', 10))).toBe(
      9,
    )
  })

  test('a count with a time holds what was used before it', () => {
    const used = [
      service('1', 0, 'S1', 'sexed', { time: '05:40' }),
      service('1', 0, 'S1', 'sexed', { session: 'evening' }),
    ]
    expect(left(0, used, stockTake(0, 'S1', 'sexed', 10, { time: '12:00' }))).toBe(9)
  })

  test('services before the first stock fact are not counted and no notice', () => {
    const book = herd(farm(), cow('1'), service('1', -1, 'S1', 'sexed'), delivery(0, 'S1', 'sexed', 5))
    const stock = stockOn(book, dayOn(0))
    expect([stock.left('S1', 'sexed'), stock.notices]).toEqual([5, []])
  })

  test('a correction gives the straw back', () => {
    const drafts = [
      farm(),
      cow('1'),
      delivery(0, 'S1', 'sexed', 5),
      service('1', 1, 'S1', 'sexed', { id: 'wrong' }),
    ].flat()
    const voided = {
      kind: 'correction',
      about: '1',
      date: drafts.at(-1)?.date ?? '',
      voids: 'wrong',
    } as const
    expect(stockOn(herd(drafts), dayOn(1)).left('S1', 'sexed')).toBe(4)
    expect(stockOn(herd(drafts, voided), dayOn(1)).left('S1', 'sexed')).toBe(5)
  })
})

describe('a straw that is not there', () => {
  const used = [
    delivery(0, 'S1', 'sexed', 1),
    service('1', 1, 'S1', 'sexed'),
    service('1', 2, 'S1', 'sexed', { id: 'second' }),
  ]
  const book = herd(farm(), cow('1'), used)

  test('leaves none, not fewer, and is a notice that names animal, date and straw', () => {
    const stock = stockOn(book, dayOn(2))
    expect(stock.left('S1', 'sexed')).toBe(0)
    expect(stock.unaccounted).toEqual(new Set(['second']))
    expect(stock.notices).toMatchObject([
      {
        code: 'service-without-stock',
        severity: 'notice',
        animal: '1',
        values: { date: '2026-05-03', sire: 'S1', straw: 'sexed', service: 'second' },
      },
    ])
  })

  test('was there after all, so that a later delivery stays whole', () => {
    expect(left(3, used, delivery(3, 'S1', 'sexed', 10))).toBe(10)
  })

  test('is settled by the next count', () => {
    expect(stockOn(herd(farm(), cow('1'), used, stockTake(3, 'S1', 'sexed', 4)), dayOn(3)).notices).toEqual(
      [],
    )
  })

  test('spoiled, too', () => {
    const stock = stockOn(herd(farm(), delivery(0, 'S1', 'sexed', 1), spoiled(1, 'S1', 'sexed', 3)), dayOn(1))
    expect(stock.left('S1', 'sexed')).toBe(0)
    expect(stock.notices).toMatchObject([{ code: 'spoiled-without-stock', values: { count: 2 } }])
  })

  test('a sire never in stock has no place in the flask', () => {
    const stock = stockOn(
      herd(farm(), cow('1'), delivery(0, 'S1', 'sexed', 1), service('1', 1, 'S9', 'beef')),
      dayOn(1),
    )
    expect(stock.pools.map(({ sire }) => sire)).toEqual(['S1'])
    expect(stock.notices).toMatchObject([{ code: 'service-without-stock', values: { sire: 'S9' } }])
  })
})

describe('a service that does not name its straw', () => {
  const unnamed = (fields: object): Draft => ({ kind: 'service', about: '1', date: '2026-05-02', ...fields })

  test('takes the only kind of its sire', () => {
    expect(
      left(1, delivery(0, 'S1', 'sexed', 5), delivery(0, 'S2', 'beef', 5), unnamed({ sire: 'S1' })),
    ).toBe(4)
  })

  test('a kind of his that is used up is none of them, one that is left in any lot is', () => {
    const beef = [delivery(0, 'S1', 'beef', 1), service('1', 0, 'S1', 'beef')]
    const empty = [delivery(0, 'S1', 'sexed', 1, { batch: 'B1' }), service('1', 0, 'S1', 'sexed')]
    const other = delivery(0, 'S1', 'sexed', 1, { batch: 'B2' })
    expect(left(1, beef, empty, other, unnamed({ sire: 'S1' }))).toBe(0)
  })

  test.each([{}, { straw: 'sexed' }, { sire: 'S1' }])(
    'takes none where it might be several, and says so: %j',
    (fields) => {
      const book = herd(
        farm(),
        cow('1'),
        delivery(0, 'S1', 'sexed', 5),
        delivery(0, 'S1', 'beef', 5),
        unnamed(fields),
      )
      const stock = stockOn(book, dayOn(1))
      expect(stock.pools.map((pool) => pool.left)).toEqual([5, 5])
      expect(stock.notices).toMatchObject([
        { code: 'service-without-straw', animal: '1', values: { date: '2026-05-02' } },
      ])
    },
  )
})

describe('lots', () => {
  const lots = (s: number, ...drafts: (Draft | Draft[])[]) =>
    stockOn(herd(farm(), cow('1'), drafts.flat()), dayOn(s)).lots.map(({ batch, flask, canister, left }) =>
      [flask ?? '-', canister ?? '-', batch ?? '-', left].join(' '),
    )
  const old = delivery(0, 'S1', 'sexed', 2, { batch: 'B1', flask: 'A', canister: '1' })
  const young = delivery(1, 'S1', 'sexed', 5, { batch: 'B2', flask: 'A', canister: '2' })

  test('a service takes of the batch it names, else of the oldest', () => {
    const named = service('1', 2, 'S1', 'sexed', { batch: 'B2' })
    expect(lots(2, old, young, named)).toEqual(['A 1 B1 2', 'A 2 B2 4'])
    expect(lots(2, old, young, service('1', 2, 'S1', 'sexed'))).toEqual(['A 1 B1 1', 'A 2 B2 5'])
  })

  test.each([
    [0, 1],
    [1, 0],
  ])('of two of one day the one that lies first, in whatever order they were written down', (one, other) => {
    const pair = [old, { ...young, date: old.date }]
    const inFile = [pair[one] as Draft, pair[other] as Draft]
    expect(lots(2, inFile, service('1', 2, 'S1', 'sexed'))).toEqual(['A 1 B1 1', 'A 2 B2 5'])
  })

  /** Of three lots, in order of age, the one that a spoiled straw is taken of. */
  test.each<[string, object, object[], number]>([
    ['the oldest where nothing is said of it', {}, [{}, { batch: 'B1' }, { flask: 'A' }], 0],
    ['the one in the place that is named', { flask: 'A' }, [{ flask: 'B' }, {}, { flask: 'A' }], 2],
    ['else one whose place is not known', { flask: 'A' }, [{ flask: 'B' }, {}, { flask: 'C' }], 1],
    [
      'the one that agrees in batch, flask and canister',
      { batch: 'B1', flask: 'A', canister: '2' },
      [
        { batch: 'B1', flask: 'A', canister: '1' },
        { batch: 'B1', flask: 'B', canister: '2' },
        { batch: 'B1', flask: 'A', canister: '2' },
      ],
      2,
    ],
    [
      'one right and one wrong is no nearer than two that are open',
      { flask: 'A', canister: '1' },
      [{ batch: 'B1' }, { flask: 'A', canister: '2' }, { flask: 'A', canister: '3' }],
      0,
    ],
    [
      'nor further off',
      { flask: 'A', canister: '1' },
      [{ flask: 'A', canister: '2' }, { batch: 'B1' }, { batch: 'B2' }],
      0,
    ],
    [
      'one right and one open is nearer',
      { flask: 'A', canister: '1' },
      [{}, { batch: 'B1' }, { flask: 'A' }],
      2,
    ],
  ])('a straw is taken of the lot that agrees best: %s', (_, said, places, taken) => {
    const drafts = places.map((place, s) => delivery(s, 'S1', 'sexed', 2, { ...place }))
    const { lots } = stockOn(herd(farm(), drafts, spoiled(4, 'S1', 'sexed', 1, { ...said })), dayOn(4))
    expect(lots.toSorted((a, b) => a.since - b.since).map((lot) => lot.left)).toEqual(
      places.map((_place, at) => (at === taken ? 1 : 2)),
    )
  })

  test('the oldest, wherever it lies', () => {
    const below = delivery(0, 'S1', 'sexed', 2, { flask: 'A', canister: '9' })
    const above = delivery(1, 'S1', 'sexed', 2, { flask: 'A', canister: '1' })
    expect(lots(2, above, below, service('1', 2, 'S1', 'sexed'))).toEqual(['A 1 - 2', 'A 9 - 1'])
  })

  test('of services at one moment the one that names its batch takes first', () => {
    const flask = ['B1', 'B3', undefined].map((batch, s) =>
      delivery(s, 'S1', 'sexed', 1, batch === undefined ? {} : { batch }),
    )
    const both = [service('1', 3, 'S1', 'sexed'), service('1', 3, 'S1', 'sexed', { batch: 'B1' })]
    expect(lots(3, flask, both)).toEqual(['- - - 1', '- - B1 0', '- - B3 0'])
  })

  test('one that names a batch not in stock takes another: the straws of the sire are what counts', () => {
    expect(lots(2, old, young, service('1', 2, 'S1', 'sexed', { batch: 'B7' }))).toEqual([
      'A 1 B1 1',
      'A 2 B2 5',
    ])
  })

  test('spoiled straws are taken where they lay', () => {
    expect(lots(2, old, young, spoiled(2, 'S1', 'sexed', 3, { canister: '2' }))).toEqual([
      'A 1 B1 2',
      'A 2 B2 2',
    ])
  })

  test('a count replaces its own lot and leaves the others', () => {
    const count = stockTake(2, 'S1', 'sexed', 4, { batch: 'B2', flask: 'A', canister: '2' })
    expect(lots(2, old, young, count)).toEqual(['A 1 B1 2', 'A 2 B2 4'])
  })

  test.each<[string, object, object, boolean]>([
    [
      'the same place and a batch that was not known',
      { flask: 'A', canister: '1' },
      { flask: 'A', canister: '1', batch: 'B1' },
      true,
    ],
    [
      'the same batch, in a place that was not known',
      { batch: 'B1' },
      { flask: 'A', canister: '1', batch: 'B1' },
      true,
    ],
    ['another batch', { batch: 'B2', flask: 'A' }, { batch: 'B1', flask: 'A' }, false],
    ['another flask', { batch: 'B1', flask: 'B' }, { batch: 'B1', flask: 'A' }, false],
    ['another canister', { flask: 'A', canister: '2' }, { flask: 'A', canister: '1' }, false],
  ])('a count is of %s: are they the straws of before?', (_, before, counted, same) => {
    const drafts = [
      delivery(0, 'S1', 'sexed', 2, { ...before }),
      stockTake(1, 'S1', 'sexed', 5, { ...counted }),
    ]
    expect(stockOn(herd(farm(), drafts), dayOn(1)).left('S1', 'sexed')).toBe(same ? 5 : 7)
  })

  test('a count that names no place counts all straws of the sire and kind', () => {
    expect(lots(2, old, young, stockTake(2, 'S1', 'sexed', 6))).toEqual(['- - - 6', 'A 1 B1 0', 'A 2 B2 0'])
  })

  test('a count of a place takes in what was delivered without one', () => {
    const count = stockTake(2, 'S1', 'sexed', 9, { flask: 'A', canister: '1' })
    expect(lots(2, delivery(0, 'S1', 'sexed', 10), count)).toEqual(['- - - 0', 'A 1 - 9'])
  })

  test.each([
    [0, 1],
    [1, 0],
  ])('two counts of one day stand side by side, in either order', (first, second) => {
    const counts = [
      stockTake(2, 'S1', 'sexed', 3, { flask: 'A', canister: '1' }),
      stockTake(2, 'S1', 'sexed', 4, { flask: 'A', canister: '1', batch: 'B1' }),
    ]
    const inOrder = [counts[first] as Draft, counts[second] as Draft]
    expect(lots(2, old, inOrder)).toEqual(['A 1 - 3', 'A 1 B1 4'])
  })
})

test('lots and pools stand by sire, kind and place', () => {
  const drafts = [
    delivery(0, 'S2', 'sexed', 1),
    delivery(0, 'S1', 'sexed', 1, { flask: 'B', canister: '1', batch: 'B1' }),
    delivery(0, 'S1', 'sexed', 1, { flask: 'A', canister: '2', batch: 'B1' }),
    delivery(0, 'S1', 'sexed', 1, { flask: 'A', canister: '1', batch: 'B2' }),
    delivery(0, 'S1', 'sexed', 1, { flask: 'A', canister: '1', batch: 'B1' }),
    delivery(0, 'S1', 'sexed', 1),
    delivery(0, 'S1', 'beef', 1),
  ]
  for (const inFile of [drafts, drafts.toReversed()]) {
    const { lots, pools } = stockOn(herd(farm(), inFile), dayOn(0))
    expect(pools.map(({ sire, straw, left }) => `${sire} ${straw} ${left}`)).toEqual([
      'S1 beef 1',
      'S1 sexed 5',
      'S2 sexed 1',
    ])
    expect(
      lots.map(({ sire, straw, flask, canister, batch }) =>
        [sire, straw, flask, canister, batch].join(' ').trim(),
      ),
    ).toEqual([
      'S1 beef',
      'S1 sexed',
      'S1 sexed A 1 B1',
      'S1 sexed A 1 B2',
      'S1 sexed A 2 B1',
      'S1 sexed B 1 B1',
      'S2 sexed',
    ])
  }
})

test('the volume of a straw is that of its last count that tells it', () => {
  const volume = (volumeMl: number) => ({ volumeMl })
  const book = herd(
    farm(),
    stockTake(0, 'S1', 'sexed', 5, volume(0.5)),
    stockTake(1, 'S1', 'sexed', 5, volume(0.25)),
    stockTake(2, 'S1', 'sexed', 5),
    stockTake(2, 'S1', 'beef', 5, volume(0.5)),
    stockTake(2, 'S2', 'sexed', 5, volume(0.5)),
    delivery(3, 'S3', 'sexed', 5),
  )
  expect(volumeOf(book, 'S1', 'sexed')).toBe(0.25)
  expect(volumeOf(book, 'S1', 'conventional')).toBeUndefined()
  expect(volumeOf(book, 'S3', 'sexed')).toBeUndefined()
})

test('where no stock is kept nothing is missing', () => {
  const { lots, pools, notices, unaccounted } = stockOn(
    herd(farm(), cow('1'), service('1', 0, 'S1', 'sexed')),
    dayOn(1),
  )
  expect([lots, pools, notices, unaccounted.size]).toEqual([[], [], [], 0])
})

test('of things at one moment straws are counted first, then come, then spoil, and are used last', () => {
  const at = { time: '08:00' }
  const all = [
    service('1', 1, 'S1', 'sexed', at),
    spoiled(1, 'S1', 'sexed', 2, at),
    delivery(1, 'S1', 'sexed', 2, at),
    stockTake(1, 'S1', 'sexed', 1, at),
  ]
  expect(left(1, all)).toBe(0)
  expect(stockOn(herd(farm(), cow('1'), all), dayOn(1)).notices).toEqual([])
  // One straw for two: it spoils first, and the service is without.
  const one = [
    service('1', 1, 'S1', 'sexed', at),
    spoiled(1, 'S1', 'sexed', 1, at),
    delivery(0, 'S1', 'sexed', 1),
  ]
  expect(stockOn(herd(farm(), cow('1'), one), dayOn(1)).notices.map(({ code }) => code)).toEqual([
    'service-without-stock',
  ])
  // A count without a time is the number of the morning, even before what was used just after midnight.
  const night = service('1', 1, 'S1', 'sexed', { time: '00:00' })
  expect(left(1, night, delivery(0, 'S1', 'sexed', 1), stockTake(1, 'S1', 'sexed', 5))).toBe(4)
})

/** A small flask: two sires, two kinds, two batches; days 0-5. */
const change = fc.record({
  what: fc.constantFrom('delivery', 'spoiled', 'service', 'service', 'stock-take'),
  s: fc.integer({ min: 0, max: 5 }),
  sire: fc.constantFrom('S1', 'S2'),
  straw: fc.constantFrom('sexed', 'beef'),
  batch: fc.constantFrom(undefined, 'B1', 'B2'),
  count: fc.integer({ min: 1, max: 6 }),
  time: fc.constantFrom(undefined, 'morning', 'evening', '12:00'),
  voided: fc.boolean(),
})
type Change = typeof change extends fc.Arbitrary<infer T> ? T : never

const draftsOf = (changes: readonly Change[]): Draft[] =>
  changes.flatMap(({ what, s, sire, straw, batch, count, time, voided }, i) => {
    const fields = {
      id: `c${i}`,
      ...(batch === undefined ? {} : { batch }),
      ...(time === undefined ? {} : { time }),
    }
    const make = { delivery, spoiled, 'stock-take': stockTake }
    const made =
      what === 'service'
        ? service('1', s, sire, straw, fields)
        : make[what as keyof typeof make](s, sire, straw, count, fields)
    return voided
      ? [made, { kind: 'correction' as const, about: made.about, date: made.date, voids: `c${i}` }]
      : [made]
  })

const pools = [
  ['S1', 'sexed'],
  ['S1', 'beef'],
  ['S2', 'sexed'],
  ['S2', 'beef'],
] as const

test('stock is never negative, whatever comes in whatever order', () => {
  fc.assert(
    fc.property(fc.array(change, { maxLength: 40 }), (changes) => {
      const stock = stockOn(herd(farm(), cow('1'), draftsOf(changes)), dayOn(5))
      expect(stock.lots.every((lot) => lot.left >= 0)).toBe(true)
      for (const [sire, straw] of pools) {
        const inLots = stock.lots.filter((lot) => lot.sire === sire && lot.straw === straw)
        expect(stock.left(sire, straw)).toBe(inLots.reduce((sum, lot) => sum + lot.left, 0))
      }
    }),
  )
})

test('without counts it is deliveries less uses, and each use that found none is named', () => {
  fc.assert(
    fc.property(fc.array(change, { maxLength: 40 }), (all) => {
      const changes = all.filter(({ what }) => what === 'delivery' || what === 'service')
      const opened = Math.min(
        ...changes.filter((one) => one.what === 'delivery' && !one.voided).map(({ s }) => s),
      )
      const stock = stockOn(herd(farm(), cow('1'), draftsOf(changes)), dayOn(5))
      const live = changes.filter(({ voided, s }) => !voided && s >= opened)
      for (const [sire, straw] of pools) {
        const own = live.filter((one) => one.sire === sire && one.straw === straw)
        const delivered = own.reduce((sum, one) => sum + (one.what === 'delivery' ? one.count : 0), 0)
        const used = own.filter(({ what }) => what === 'service').length
        const unaccounted = stock.notices.filter(
          ({ code, values }) =>
            code === 'service-without-stock' && values?.sire === sire && values.straw === straw,
        ).length
        expect(stock.left(sire, straw)).toBe(delivered - used + unaccounted)
        // All delivered before the first service of the first day could use one.
        const atFirst = ({ s, time }: Change) => s === 0 && (time === undefined || time === 'morning')
        if (opened === 0 && own.every((one) => one.what === 'service' || atFirst(one))) {
          expect(stock.left(sire, straw)).toBe(Math.max(0, delivered - used))
        }
      }
    }),
  )
})

test('a wrong fact and its correction leave no trace', () => {
  fc.assert(
    fc.property(fc.array(change, { maxLength: 40 }), (changes) => {
      const kept = changes.filter(({ voided }) => !voided)
      const view = (all: readonly Change[]) => {
        const { lots, pools: left } = stockOn(herd(farm(), cow('1'), draftsOf(all)), dayOn(5))
        return { lots, left }
      }
      expect(view(changes)).toEqual(view(kept))
    }),
  )
})

test('the order of the file does not matter', () => {
  const shuffled = fc
    .array(change, { maxLength: 40 })
    .map(onceEach)
    .chain((changes) => {
      const all = facts(farm(), cow('1'), draftsOf(changes.map((one) => ({ ...one, voided: false }))))
      return fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))
    })
  const view = (all: readonly Fact[]) => {
    const { lots, pools: left, notices } = stockOn(openBook(all), dayOn(5))
    return {
      lots,
      left,
      missing: missingOf(notices),
    }
  }
  fc.assert(
    fc.property(shuffled, ([inOrder, mixed]) => {
      expect(view(mixed)).toEqual(view(inOrder))
    }),
    { numRuns: 500 },
  )
})

/** Straws missing by code, sire and date: of two facts of one moment either may be named, with the other's straws. */
function missingOf(notices: readonly Problem[]): ReadonlyMap<string, number> {
  const missing = new Map<string, number>()
  for (const { code, values } of notices) {
    const key = [code, values?.sire, values?.date].join(' ')
    missing.set(key, (missing.get(key) ?? 0) + Number(values?.count ?? 1))
  }
  return missing
}

/** Of two counts of one lot at the same moment the later one in the file counts; so none of these is made twice. */
function onceEach(changes: readonly Change[]): Change[] {
  const seen = new Set<string>()
  return changes.filter(({ what, s, sire, straw, batch, time }) => {
    if (what !== 'stock-take') return true
    const key = [s, sire, straw, batch, time].join(' ')
    const fresh = !seen.has(key)
    seen.add(key)
    return fresh
  })
}
