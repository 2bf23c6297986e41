import { describe, expect, test } from 'vitest'
import { contradictionsOf } from '../../source/breeding/contradictions.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import {
  type Animal,
  bookOf,
  calving,
  cow,
  dayAt,
  heat,
  left,
  listAt,
  loss,
  maiden,
  note,
  on,
  pregnant,
  service,
  suspect,
  unsure,
} from './support.ts'

/** Codes of what contradicts itself about the first of some animals, with the values that say where. */
function found(s: number, ...animals: Animal[]): string[] {
  const book = bookOf(animals)
  const first = book.byNumber.get(animals[0]?.record.number ?? '')
  if (first === undefined) throw new Error('no animal')
  return contradictionsOf(book, standingOn(book, first, dayAt(s))).map(({ code, values }) =>
    [code, ...Object.values(values ?? {})].join(' '),
  )
}
const fresh = calving(-60)

describe('calvings 2-199 days apart', () => {
  test.each([
    [0, []],
    [1, []],
    [2, ['calvings-too-close 2025-10-13 2025-10-15 2']],
    [199, ['calvings-too-close 2025-10-13 2026-04-30 199']],
    [200, []],
  ])('%i days', (days, expected) => {
    expect(found(10, cow(calving(-200), calving(-200 + days)))).toEqual(expected)
  })

  test('a calving told on two days ends on the second', () => {
    expect(found(10, cow(calving(-201), calving(-200), calving(-1)))).toEqual([
      'calvings-too-close 2025-10-12 2026-04-30 199',
    ])
    expect(found(10, cow(calving(-201), calving(-200), calving(0)))).toEqual([])
  })

  test('each with the one before it', () => {
    expect(found(10, cow(calving(-600), calving(-300), calving(-101)))).toEqual([
      'calvings-too-close 2025-07-05 2026-01-20 199',
    ])
    expect(found(10, cow(calving(-600), calving(-500), calving(-301)))).toHaveLength(2)
  })

  test('one of today counts, one of tomorrow does not', () => {
    expect(found(-1, cow(calving(-60), calving(0)))).toEqual([])
    expect(found(0, cow(calving(-60), calving(0)))).toHaveLength(1)
  })
})

describe('after she left', () => {
  test.each([
    ['heat', heat(2)],
    ['heat', suspect(2)],
    ['service', service(2)],
    ['check', pregnant(2)],
    ['calving', { ...calving(2), date: on(2) }],
    ['loss', loss(2)],
  ])('a %s', (kind, fact) => {
    const one = fact.kind === 'calving' ? cow(left(1), fact) : cow(fresh, left(1), fact)
    expect(found(5, one)).toEqual([`fact-after-leaving ${kind} ${on(2)} ${on(1)}`])
  })

  test('a note is none, nor is what happened on the day', () => {
    expect(found(5, cow(fresh, heat(1), left(1), note(2)))).toEqual([])
  })

  test('told twice, the first day counts', () => {
    expect(found(9, cow(fresh, left(1), heat(3), left(5)))).toEqual([
      `fact-after-leaving heat ${on(3)} ${on(1)}`,
    ])
  })
})

describe('birth', () => {
  test('a fact before it', () => {
    expect(found(5, maiden({ born: on(-10) }, heat(-11)))).toEqual([
      `fact-before-birth heat ${on(-11)} ${on(-10)}`,
    ])
    expect(found(5, maiden({ born: on(-11) }, heat(-11)))).toEqual([])
    expect(found(5, maiden({ born: on(-11) }, heat(-12), heat(-11)))).toEqual([
      `fact-before-birth heat ${on(-12)} ${on(-11)}`,
    ])
    expect(found(5, maiden({ born: on(-11) }))).toEqual([])
  })

  test.each([
    [539, [`calving-too-young ${on(-60)} 539`]],
    [540, []],
  ])('a calving at %i days of age', (age, expected) => {
    expect(found(5, cow({ born: on(-60 - age) }, fresh))).toEqual(expected)
  })
})

describe('sex', () => {
  test('breeding facts on a male', () => {
    expect(found(5, cow({ sex: 'M' }, unsure(0), note(1)))).toEqual([`fact-on-male check ${on(0)}`])
    expect(found(5, cow({ sex: 'M' }, note(1)))).toEqual([])
  })

  test('a sire that is female, a dam that is male, by number or international ID', () => {
    const she = cow({ number: '7', internationalId: 'HOLIRLF000000000007' })
    const he = cow({ number: '8', sex: 'M', internationalId: 'HOLIRLM000000000008' })
    expect(found(5, cow({ number: '1', sire: '7', dam: '8' }), she, he)).toEqual([
      'sire-is-female 7',
      'dam-is-male 8',
    ])
    expect(found(5, cow({ number: '1', sire: 'HOLIRLF000000000007' }), she, he)).toHaveLength(1)
    expect(found(5, cow({ number: '1', sire: '8', dam: '7' }), she, he)).toEqual([])
    expect(found(5, cow({ number: '1', sire: 'S1', dam: 'gone' }), she, he)).toEqual([])
  })
})

test('several at once, one row until all are corrected', () => {
  const one = cow({ born: on(-300) }, calving(-100), fresh, left(0), heat(2))
  expect(found(5, one).map((text) => text.split(' ')[0])).toEqual([
    'calvings-too-close',
    'calving-too-young',
    'fact-after-leaving',
  ])
  const rows = listAt(400, one).rows
  expect(rows.map((row) => [row.section, row.reasons, row.since, row.also])).toEqual([
    ['take-care', ['contradiction'], undefined, undefined],
  ])
})
