import { describe, expect, test } from 'vitest'
import type { Kinship } from '../../../source/breeding/kinship/herd-kinship.ts'
import type { Serving } from '../../../source/breeding/session.ts'
import { allotStraws, strawChooser, strawRanking } from '../../../source/breeding/straws/choose.ts'
import type { StrawReason } from '../../../source/breeding/straws/reason.ts'
import { nothingSetAside, type SetAside } from '../../../source/breeding/straws/set-aside.ts'
import {
  bull,
  cow,
  type Draft,
  dayOn,
  delivery,
  farm,
  heat,
  herd,
  late,
  maiden,
  policy,
  season,
  service,
  standing,
  stockTake,
  tonight,
  unrelated,
} from './herd.ts'

const parents = { sire: 'S90', dam: 'D90' }
/** Animal 1 is on heat on season day 4 and was seen cycling before: a sexed straw fits. */
const onHeat = [...cow('1', parents), heat('1', -17), heat('1', 4)]
const maidenOnHeat = [...maiden('1', parents), heat('1', -17), heat('1', 4)]
/** The calf of any of these sires would be inbred so much. */
const inbred =
  (by: Record<string, number>): Kinship =>
  (_, sire) => ({ inbreeding: by[sire] ?? 0, generations: 2 })

const choice = (
  drafts: (Draft | Draft[])[],
  kinship: Kinship = unrelated,
  serving: Serving = tonight,
  s = 4,
) => {
  const book = herd(farm(), season(), drafts.flat())
  return strawChooser(book, dayOn(s), kinship)(standing(book, '1', s), serving)
}
const chosen = (...parameters: Parameters<typeof choice>): string => {
  const { straw, warnings } = choice(...parameters)
  return [straw === undefined ? 'none' : `${straw.sire} ${straw.straw}`, ...warnings].join(' ')
}

describe('the kind', () => {
  const all = [
    delivery(0, 'S1', 'sexed', 5),
    delivery(0, 'S2', 'conventional', 5),
    delivery(0, 'S3', 'beef', 5),
  ]

  test('as proposed', () => {
    expect(chosen([onHeat, all])).toBe('S1 sexed')
    expect(chosen([onHeat, all], unrelated, late)).toBe('S2 conventional')
    expect(chosen([onHeat, all, policy({ useSexed: false })])).toBe('S2 conventional')
    expect(chosen([cow('1', { plan: 'beef' }), heat('1', -17), heat('1', 4), all])).toBe('S3 beef')
    expect(chosen([onHeat, heat('1', 36), all], unrelated, tonight, 36)).toBe('S3 beef')
  })

  test('another where it is out, and a warning says so', () => {
    const [sexed, conventional, beef] = all as [Draft, Draft, Draft]
    expect(chosen([onHeat, conventional, beef])).toBe('S2 conventional straw-out')
    expect(chosen([onHeat, beef])).toBe('S3 beef straw-out')
    expect(chosen([onHeat, beef, sexed], unrelated, late)).toBe('S3 beef straw-out')
    expect(chosen([onHeat, heat('1', 36), conventional, sexed], unrelated, tonight, 36)).toBe(
      'S2 conventional straw-out',
    )
    expect(choice([onHeat, beef]).instead).toEqual({ code: 'kind-out', values: {} })
  })

  test('never a sexed one where she does not fit: rather none', () => {
    expect(chosen([onHeat, delivery(0, 'S1', 'sexed', 5)], unrelated, late)).toBe('none no-straw')
  })

  test('nothing in stock, nothing proposed', () => {
    expect(chosen([onHeat])).toBe('none no-straw')
    expect(chosen([onHeat, delivery(5, 'S1', 'sexed', 5)])).toBe('none no-straw')
  })

  test('straws used today are no longer there for the next', () => {
    const used = [...cow('2'), delivery(0, 'S1', 'sexed', 1), service('2', 4, 'S1', 'sexed')]
    expect(chosen([onHeat, used, delivery(0, 'S2', 'sexed', 1)])).toBe('S2 sexed')
  })
})

describe('the sire', () => {
  const two = [delivery(0, 'S1', 'sexed', 5), delivery(0, 'S2', 'sexed', 5)]
  const uses = (sire: string, count: number): Draft[] =>
    Array.from({ length: count }, (_, i) => service('2', (i % 4) - 5, sire, 'sexed'))

  test('the one of lowest inbreeding', () => {
    expect(chosen([onHeat, two], inbred({ S1: 0.03, S2: 0.01 }))).toBe('S2 sexed')
    expect(chosen([onHeat, two], inbred({ S1: 0.01, S2: 0.03 }))).toBe('S1 sexed')
  })

  test('a difference below that of second cousins is none: the team is used evenly', () => {
    const used = [onHeat, two, cow('2'), uses('S1', 1), policy({ sireShare: 1 })]
    expect(chosen(used, inbred({ S2: 0.0156 }))).toBe('S2 sexed')
    expect(chosen(used, inbred({ S2: 1 / 64 }))).toBe('S1 sexed')
    expect(chosen(used, inbred({ S1: 0.02, S2: 0.03 }))).toBe('S2 sexed')
  })

  test('then the least used of the season, then the name', () => {
    expect(chosen([onHeat, two])).toBe('S1 sexed')
    expect(chosen([onHeat, two, cow('2'), uses('S1', 1)])).toBe('S2 sexed')
    expect(chosen([onHeat, two, cow('2'), service('2', -36, 'S1', 'sexed')])).toBe('S1 sexed')
  })

  test('at 6.25 % no warning, above it one', () => {
    const only = [onHeat, delivery(0, 'S1', 'sexed', 5)]
    expect(chosen(only, inbred({ S1: 0.0625 }))).toBe('S1 sexed')
    expect(chosen(only, inbred({ S1: 0.07 }))).toBe('S1 sexed related-6')
  })

  test('at 12.5 % never, and another kind rather than him', () => {
    const only = [onHeat, delivery(0, 'S1', 'sexed', 5)]
    expect(chosen(only, inbred({ S1: 0.124 }))).toBe('S1 sexed related-6')
    expect(chosen(only, inbred({ S1: 0.125 }))).toBe('none no-straw related-12')
    expect(chosen([...only, delivery(0, 'S2', 'conventional', 5)], inbred({ S1: 0.25 }))).toBe(
      'S2 conventional related-12',
    )
    expect(chosen([...only, delivery(0, 'S2', 'sexed', 5)], inbred({ S1: 0.25 }))).toBe('S2 sexed')
  })

  test('the farm sets both limits', () => {
    const set = policy({ inbreedingWarn: 0.02, inbreedingConfirm: 0.05 })
    expect(chosen([onHeat, set, delivery(0, 'S1', 'sexed', 5)], inbred({ S1: 0.03 }))).toBe(
      'S1 sexed related-6',
    )
    expect(chosen([onHeat, set, delivery(0, 'S1', 'sexed', 5)], inbred({ S1: 0.05 }))).toBe(
      'none no-straw related-12',
    )
  })

  test('not above 15 % of the services while another is below, unless that one is related', () => {
    const used = [...cow('2'), ...uses('S1', 3), ...uses('S3', 17), ...uses('S2', 2)]
    // 15 % of 23 services are 3.45, so that 4 are his; of 24 they are 3.6, and a fifth is one too many.
    const closer = inbred({ S1: 0, S2: 0.05 })
    expect(chosen([onHeat, two, used], closer)).toBe('S1 sexed')
    expect(chosen([onHeat, two, used, uses('S1', 1)], closer)).toBe('S2 sexed')
    expect(chosen([onHeat, two, used, uses('S1', 1)], inbred({ S2: 0.07 }))).toBe('S1 sexed')
    expect(chosen([onHeat, two, used, uses('S1', 1), policy({ sireShare: 1 })], closer)).toBe('S1 sexed')
  })

  test('above 15 % where nobody else is in stock', () => {
    expect(chosen([onHeat, delivery(0, 'S1', 'sexed', 5), cow('2'), uses('S1', 9)])).toBe('S1 sexed')
  })

  test('her parents unknown is a warning, but not for a beef calf', () => {
    const orphan = [...cow('1', { sire: 'S90' }), heat('1', -17), heat('1', 4)]
    expect(chosen([orphan, two])).toBe('S1 sexed parents-unknown')
    expect(chosen([orphan, delivery(0, 'S3', 'beef', 5)])).toBe('S3 beef straw-out')
  })
})

describe('a maiden', () => {
  const easy = (s: string, straw: string) => stockTake(0, s, straw, 5, { easyCalving: true })

  test('gets an easy-calving sire, whoever is used less', () => {
    expect(chosen([maidenOnHeat, delivery(0, 'S1', 'sexed', 5), easy('S2', 'sexed')])).toBe('S2 sexed')
    expect(
      chosen([
        maidenOnHeat,
        delivery(0, 'S1', 'sexed', 5),
        delivery(0, 'S2', 'sexed', 5),
        bull('S2', { easyCalving: true }),
      ]),
    ).toBe('S2 sexed')
  })

  test('of another kind rather than one that is not', () => {
    const drafts = [maidenOnHeat, delivery(0, 'S1', 'sexed', 5), easy('S2', 'beef')]
    expect(chosen(drafts)).toBe('S2 beef')
    expect(choice(drafts).instead?.code).toBe('kind-not-easy')
  })

  test('of another kind too where of hers one is a close relative and the other is not easy', () => {
    const sexed = [delivery(0, 'S1', 'sexed', 5), delivery(0, 'S3', 'sexed', 5)]
    expect(choice([maidenOnHeat, sexed, easy('S2', 'beef')], inbred({ S1: 0.25 })).instead?.code).toBe(
      'kind-not-easy',
    )
    expect(
      choice([maidenOnHeat, sexed, easy('S2', 'beef')], inbred({ S1: 0.25, S3: 0.25 })).instead?.code,
    ).toBe('kind-related')
  })

  test('and with a warning where only others are in stock', () => {
    expect(chosen([maidenOnHeat, delivery(0, 'S1', 'sexed', 5)])).toBe('S1 sexed not-easy-calving')
    expect(chosen([maidenOnHeat, stockTake(0, 'S1', 'sexed', 5, { easyCalving: false })])).toBe(
      'S1 sexed not-easy-calving',
    )
  })

  test('never an easy-calving sire who must be confirmed', () => {
    const drafts = [maidenOnHeat, easy('S1', 'sexed'), delivery(0, 'S2', 'sexed', 5)]
    expect(chosen(drafts, inbred({ S1: 0.25 }))).toBe('S2 sexed not-easy-calving')
  })

  test('a cow gets any', () => {
    expect(chosen([onHeat, delivery(0, 'S1', 'sexed', 5), easy('S2', 'sexed')])).toBe('S1 sexed')
  })
})

describe('a whole list', () => {
  const rowsOf = (count: number, ...stock: Draft[]) => {
    const numbers = Array.from({ length: count }, (_, i) => String(i + 1))
    const animals = numbers.flatMap((number) => [...cow(number, parents), heat(number, -17), heat(number, 4)])
    const book = herd(farm(), season(), animals, stock)
    const rows = numbers.map((number) => ({ standing: standing(book, number, 4), serving: tonight }))
    return allotStraws(book, dayOn(4), rows, unrelated).map(({ straw, warnings }) =>
      [straw === undefined ? 'none' : `${straw.sire} ${straw.straw}`, ...warnings].join(' '),
    )
  }

  test('sires take turns, and no straw is promised twice', () => {
    expect(
      rowsOf(
        6,
        delivery(0, 'S1', 'sexed', 2),
        delivery(0, 'S2', 'sexed', 2),
        delivery(0, 'S3', 'conventional', 1),
      ),
    ).toEqual(['S1 sexed', 'S2 sexed', 'S1 sexed', 'S2 sexed', 'S3 conventional straw-out', 'none no-straw'])
  })

  test('one chooser asked twice gives the same answer twice', () => {
    const book = herd(farm(), season(), onHeat, delivery(0, 'S1', 'sexed', 1))
    const choose = strawChooser(book, dayOn(4), unrelated)
    const her = standing(book, '1', 4)
    expect(choose(her, tonight)).toEqual(choose(her, tonight))
  })
})

describe('the ranking for her own page', () => {
  const ranking = (
    drafts: (Draft | Draft[])[],
    kinship: Kinship = unrelated,
    s = 4,
    serving: Serving | undefined = undefined,
  ) => {
    const book = herd(farm(), season(), drafts.flat())
    return strawRanking(book, dayOn(s), kinship)(standing(book, '1', s), serving)
  }
  const codes = (...parameters: Parameters<typeof ranking>) =>
    ranking(...parameters).ranked.map(({ sire, straw, left, reasons }) =>
      [
        sire,
        straw,
        left,
        ...reasons.map(({ code }) => code).filter((code) => !code.startsWith('placed')),
      ].join(' '),
    )
  const stock = [
    delivery(0, 'S1', 'sexed', 5),
    delivery(0, 'S2', 'sexed', 4),
    delivery(0, 'S3', 'conventional', 3),
    delivery(0, 'S4', 'beef', 2),
  ]

  test('every straw in stock, the proposed kind first, each with its reasons', () => {
    expect(codes([onHeat, stock], inbred({ S1: 0.07, S3: 0.25 }))).toEqual([
      'S2 sexed 4 proposed-kind',
      'S1 sexed 5 proposed-kind related-6',
      'S3 conventional 3 other-kind related-12',
      'S4 beef 2 other-kind',
    ])
  })

  test('a sexed straw outside its hours comes last and says so', () => {
    expect(codes([onHeat, stock], unrelated, 4, late)).toEqual([
      'S3 conventional 3 proposed-kind',
      'S4 beef 2 other-kind',
      'S1 sexed 5 sexed-not-now',
      'S2 sexed 4 sexed-not-now',
    ])
  })

  test('a close relative comes after all others of his kind, and must be confirmed', () => {
    const { ranked } = ranking([onHeat, stock], inbred({ S1: 0.25 }))
    expect(ranked.slice(0, 2)).toMatchObject([
      { sire: 'S2', needsConfirming: false, inbreeding: 0, generations: 2 },
      {
        sire: 'S1',
        needsConfirming: true,
        inbreeding: 0.25,
        reasons: [{}, { code: 'placed-confirm' }, { code: 'related-12', values: { percent: 25 } }],
      },
    ])
  })

  test('each place has its reason: what puts the first before the next, what put one above the others', () => {
    const pair = [delivery(0, 'S1', 'sexed', 5), delivery(0, 'S2', 'sexed', 5)]
    const places = (drafts: (Draft | Draft[])[], kinship: Kinship = unrelated) =>
      ranking(drafts, kinship).ranked.map(({ sire, reasons }) => {
        const { code, values } = reasons.find((reason) => reason.code.startsWith('placed')) as StrawReason
        return [sire, code, values.first, values.second].filter((part) => part !== undefined).join(' ')
      })
    const both = (...said: string[]): string[] => said.flatMap((one) => [`S1 ${one}`, `S2 ${one}`])
    expect(places([onHeat, delivery(0, 'S1', 'sexed', 5)])).toEqual(['S1 placed-alone'])
    expect(places([onHeat, pair])).toEqual(both('placed-name S1 S2'))
    expect(places([onHeat, pair], inbred({ S2: 0.03 }))).toEqual(both('placed-inbreeding S1 S2'))
    expect(places([onHeat, pair], inbred({ S2: 0.07 }))).toEqual(both('placed-related S1 S2'))
    expect(places([onHeat, pair], inbred({ S2: 0.2 }))).toEqual(both('placed-confirm S1 S2'))
    const others = ['S5', 'S6', 'S7'].map((sire) => service('2', 1, sire, 'sexed'))
    expect(places([onHeat, pair, cow('2'), others, service('2', 1, 'S2', 'sexed')])).toEqual(
      both('placed-share S1 S2'),
    )
    const wide = policy({ sireShare: 1 })
    expect(places([onHeat, pair, wide, cow('2'), service('2', 1, 'S2', 'sexed')])).toEqual(
      both('placed-use S1 S2'),
    )
    const easy = stockTake(0, 'S1', 'sexed', 5, { easyCalving: true })
    expect(places([maidenOnHeat, easy, delivery(0, 'S2', 'sexed', 5)])).toEqual(both('placed-easy S1 S2'))
  })

  test('what is promised to others counts as used by their sires, and in all', () => {
    const book = herd(farm(), season(), onHeat, stock, cow('2'), service('2', 1, 'S1', 'sexed'))
    const rank = strawRanking(book, dayOn(4), unrelated)
    const reasonsOf = (sire: string, aside?: SetAside): string[] =>
      rank(standing(book, '1', 4), tonight, aside)
        .ranked.filter((one) => one.sire === sire)
        .flatMap(({ reasons, left }) => [`${left} left`, ...reasons.map(({ code }) => code)])
    expect(reasonsOf('S1')).toContain('above-share')
    // Of eight straws, one used and seven promised to others, two may be his; one was.
    const aside = nothingSetAside()
    for (let i = 0; i < 7; i += 1) aside.add(`S${10 + i}`, 'sexed')
    expect(reasonsOf('S1', aside)).not.toContain('above-share')
    aside.add('S1', 'sexed')
    expect(reasonsOf('S1', aside)).toEqual(expect.arrayContaining(['3 left', 'above-share']))
  })

  test('late in the season gestation is said in days', () => {
    const lateStock = [
      stockTake(0, 'S1', 'beef', 5, { breed: 'Charolais' }),
      stockTake(0, 'S2', 'beef', 5, { gestationDays: 276 }),
      stockTake(0, 'S3', 'beef', 5, { breed: 'Angus' }),
    ]
    const reasons = (s: number) =>
      ranking([onHeat, heat('1', 38), lateStock], unrelated, s).ranked.map(({ sire, reasons }) =>
        [
          sire,
          ...reasons
            .filter(({ code }) => !code.startsWith('placed'))
            .map(({ code, values }) => `${code} ${values.days ?? ''}`.trim()),
        ].join(' '),
      )
    expect(reasons(38)).toEqual([
      'S1 proposed-kind later-calves 6',
      'S2 proposed-kind earlier-calves 6',
      'S3 proposed-kind',
    ])
    expect(reasons(20)).toEqual(['S1 other-kind', 'S2 other-kind', 'S3 other-kind'])
  })
})
