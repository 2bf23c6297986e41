import { expect, expectTypeOf, test } from 'vitest'
import type { z } from 'zod'
import type { Fact, FactKind } from '../../source/breeding/facts.ts'
import { checkAdded, checkFacts } from '../../source/herd/check.ts'
import { KnownFacts } from '../../source/herd/known-facts.ts'
import { asFacts } from '../../source/herd/recording.ts'
import type { factShapes } from '../../source/herd/schema.ts'
import { smallHerd } from './support/herds.ts'
import { hostileTexts } from './support/hostile.ts'

const at = '2026-05-28T04:15:09.120Z'
const envelope = { id: 'f1', about: 'cow412', date: '2026-05-28', at }
const farm = {
  id: 'farm',
  about: 'herd',
  date: '2026-03-01',
  at,
  kind: 'farm',
  name: 'Long Acre',
  zone: 'UTC',
  milkings: ['05:30'],
}
const cow = { id: 'cow', about: 'cow412', date: '2026-03-01', at, kind: 'animal', number: '412', sex: 'F' }

/** Problems of one fact about cow 412, as `code field`. */
const found = (fact: unknown): string[] =>
  checkFacts([farm, cow, fact]).map((problem) => `${problem.code} ${problem.path}`)

test('a fact that the schema accepts is a fact of its type, field by field', () => {
  type Shape<K extends FactKind> = z.output<(typeof factShapes)[K]>
  type Known<T> = { [K in keyof T as string extends K ? never : K]: T[K] }
  expectTypeOf<keyof Known<Shape<'service'>>>().toEqualTypeOf<keyof Extract<Fact, { kind: 'service' }>>()
  type Missing = {
    [K in FactKind]: Exclude<keyof Extract<Fact, { kind: K }>, keyof Known<Shape<K>>>
  }[FactKind]
  type Unknown = {
    [K in FactKind]: Exclude<keyof Known<Shape<K>>, keyof Extract<Fact, { kind: K }>>
  }[FactKind]
  expectTypeOf<Missing>().toEqualTypeOf<never>()
  expectTypeOf<Unknown>().toEqualTypeOf<never>()
  expectTypeOf<Shape<'animal'>>().toExtend<Extract<Fact, { kind: 'animal' }>>()
  expectTypeOf<Shape<'check'>>().toExtend<Extract<Fact, { kind: 'check' }>>()
  expectTypeOf<Shape<'calving'>>().toExtend<Extract<Fact, { kind: 'calving' }>>()
  expectTypeOf<Shape<'season'>>().toExtend<Extract<Fact, { kind: 'season' }>>()
})

const wrong: readonly (readonly [string, object, string])[] = [
  [
    'a date that does not exist',
    { ...envelope, kind: 'looked', date: '2026-02-30' },
    'field-date facts[2].date',
  ],
  ['a date of another form', { ...envelope, kind: 'looked', date: '28/05/2026' }, 'field-date facts[2].date'],
  ['a date missing', { ...envelope, kind: 'looked', date: undefined }, 'field-missing facts[2].date'],
  ['24:00', { ...envelope, kind: 'looked', time: '24:00' }, 'field-time-of-day facts[2].time'],
  ['5:30', { ...envelope, kind: 'looked', time: '5:30' }, 'field-time-of-day facts[2].time'],
  ['noon', { ...envelope, kind: 'looked', time: 'noon' }, 'field-time-of-day facts[2].time'],
  [
    'an instant with another zone',
    { ...envelope, kind: 'looked', at: '2026-05-28T04:15:09+01:00' },
    'field-instant facts[2].at',
  ],
  [
    'an instant on 30 February',
    { ...envelope, kind: 'looked', at: '2026-02-30T04:15:09Z' },
    'field-instant facts[2].at',
  ],
  ['an unknown kind', { ...envelope, kind: 'moved' }, 'kind-unknown facts[2].kind'],
  ['a kind that every object has', { ...envelope, kind: 'constructor' }, 'kind-unknown facts[2].kind'],
  ['the kind __proto__', { ...envelope, kind: '__proto__' }, 'kind-unknown facts[2].kind'],
  ['no kind', envelope, 'field-missing facts[2].kind'],
  ['the id __proto__', { ...envelope, id: '__proto__', kind: 'looked' }, 'field-id facts[2].id'],
  ['an id with a space', { ...envelope, id: 'a b', kind: 'looked' }, 'field-id facts[2].id'],
  ['an id too long', { ...envelope, id: 'a'.repeat(101), kind: 'looked' }, 'field-id facts[2].id'],
  ['a number as id', { ...envelope, id: 7, kind: 'looked' }, 'field-type facts[2].id'],
  [
    'a heat of the herd',
    { ...envelope, about: 'herd', kind: 'heat', how: 'paint', certainty: 'sure' },
    'field-about-animal facts[2].about',
  ],
  ['nitrogen of an animal', { ...envelope, kind: 'nitrogen', depthCm: 20 }, 'field-choice facts[2].about'],
  [
    'another choice',
    { ...envelope, kind: 'heat', how: 'smell', certainty: 'sure' },
    'field-choice facts[2].how',
  ],
  [
    'a foetal age of 19 days',
    { ...envelope, kind: 'check', method: 'ultrasound', result: 'pregnant', foetalAge: 19 },
    'field-too-small facts[2].foetalAge',
  ],
  [
    'a foetal age of 291 days',
    { ...envelope, kind: 'check', method: 'ultrasound', result: 'pregnant', foetalAge: 291 },
    'field-too-large facts[2].foetalAge',
  ],
  ['half a calf', { ...envelope, kind: 'calving', calves: 1.5 }, 'field-type facts[2].calves'],
  ['two dead of one', { ...envelope, kind: 'calving', dead: 2 }, 'field-more-dead-than-born facts[2].dead'],
  [
    'two sexes of one',
    { ...envelope, kind: 'calving', calfSex: 'FM' },
    'field-calf-sex-count facts[2].calfSex',
  ],
  ['a sex X', { ...envelope, kind: 'calving', calfSex: 'X' }, 'field-calf-sex facts[2].calfSex'],
  [
    'a score between quarters',
    { ...envelope, kind: 'score', condition: 2.8 },
    'field-step facts[2].condition',
  ],
  [
    'a text too long',
    { ...envelope, kind: 'note', note: 'x'.repeat(10_001) },
    'field-too-long facts[2].note',
  ],
  [
    'an unknown text too long',
    { ...envelope, kind: 'looked', new: { in: ['x'.repeat(10_001)] } },
    'field-too-long facts[2].new.in[0]',
  ],
  [
    'an infinite number',
    { ...envelope, kind: 'looked', new: Number.POSITIVE_INFINITY },
    'field-number facts[2].new',
  ],
  ['a block without a name', { ...envelope, kind: 'block', block: '' }, 'field-empty facts[2].block'],
  [
    'milkings turned round',
    { ...farm, id: 'f1', milkings: ['15:30', '05:30'] },
    'field-milkings-order facts[2].milkings',
  ],
  [
    'three milkings',
    { ...farm, id: 'f1', milkings: ['05:00', '12:00', '19:00'] },
    'field-too-large facts[2].milkings',
  ],
  ['a zone that is none', { ...farm, id: 'f1', zone: 'Europe/Atlantis' }, 'field-zone facts[2].zone'],
  [
    'a setting out of range',
    { ...envelope, about: 'herd', kind: 'policy', set: { chances: 9 } },
    'field-too-large facts[2].set.chances',
  ],
  [
    'an animal that is not there',
    { ...envelope, about: 'cow9', kind: 'looked' },
    'animal-unknown facts[2].about',
  ],
  [
    'a correction of nothing',
    { ...envelope, kind: 'correction', voids: 'gone' },
    'correction-unknown facts[2].voids',
  ],
  [
    'a correction with nothing',
    { ...envelope, kind: 'correction', voids: 'cow', with: 'gone' },
    'correction-unknown facts[2].with',
  ],
  ['the same fact twice', { ...cow }, 'id-twice facts[2].id'],
  ['another fact of the same id', { ...envelope, id: 'cow', kind: 'looked' }, 'id-other-content facts[2].id'],
  ['no object', [1], 'fact-no-object facts[2]'],
]
for (const [name, fact, problem] of wrong) {
  test(`${name} is refused, with its path`, () => {
    expect(
      found(
        JSON.parse(
          JSON.stringify(fact, (_, value) => (value === Number.POSITIVE_INFINITY ? 'INF' : value)).replace(
            '"INF"',
            '1e999',
          ),
        ),
      ),
    ).toEqual([problem])
  })
}

test('a problem carries the number of the animal, the field and the value, shortened', () => {
  expect(checkFacts([cow, { ...envelope, kind: 'looked', date: 'y'.repeat(500) }])).toEqual([
    {
      code: 'field-date',
      severity: 'fault',
      path: 'facts[1].date',
      animal: '412',
      values: { field: 'date', found: `${'y'.repeat(60)}…` },
    },
  ])
})

test('unknown fields may lie 20 deep in a fact, and not deeper', () => {
  const nested = (depth: number): unknown => (depth === 0 ? 1 : { in: nested(depth - 1) })
  expect(found({ ...envelope, kind: 'looked', later: nested(19) })).toEqual([])
  expect(found({ ...envelope, kind: 'looked', later: nested(20) })).toEqual([
    `field-too-deep facts[2].later${'.in'.repeat(19)}`,
  ])
})

test('unknown fields, settings and hostile texts pass', () => {
  expect(found({ ...envelope, kind: 'looked', later: { a: [1, { b: null }] } })).toEqual([])
  expect(
    found({ ...envelope, about: 'herd', kind: 'policy', set: { chances: 3, fromTheFuture: 'x' } }),
  ).toEqual([])
  for (const text of hostileTexts)
    expect(found({ ...envelope, kind: 'note', note: text, by: text, [text]: text })).toEqual([])
})

test('two animals of one number: a notice in a file, a refusal when it is recorded; a voided record gives none', () => {
  const other = { ...cow, id: 'other', about: 'cow9' }
  const renumbered = { ...cow, id: 'again', number: '7' }
  expect(checkFacts([cow, other])).toMatchObject([
    { code: 'number-shared', severity: 'notice', path: 'facts[1].number' },
  ])
  expect(checkFacts([cow, renumbered, other])).toEqual([])
  expect(checkFacts([cow, other, renumbered])).toEqual([])
  const voided = { ...envelope, about: 'cow9', kind: 'correction', voids: 'other' }
  expect(checkFacts([cow, other, voided])).toEqual([])
  const undone = { ...envelope, id: 'f2', about: 'cow9', kind: 'correction', voids: 'f1' }
  expect(checkFacts([cow, other, voided, undone])).toMatchObject([{ code: 'number-shared' }])
  const known = new KnownFacts()
  for (const fact of asFacts(smallHerd, { at: new Date(at) })) known.add(fact)
  expect(checkAdded(known, [{ ...cow, about: 'cow9' } as Fact])).toMatchObject([
    { code: 'number-taken', severity: 'fault', path: 'facts[0].number', animal: '412' },
  ])
  expect(checkAdded(known, [{ ...cow, about: 'cow9', number: '413' } as Fact])).toEqual([])
  expect(checkAdded(known, [{ ...cow, about: 'cow412', number: '7' } as Fact])).toMatchObject([
    { code: 'number-taken' },
  ])
  expect(checkAdded(known, [{ ...cow, about: 'cow412', lactation: 3 } as Fact])).toEqual([])
})

test('a hundred thousand wrong facts are judged without a stack that overflows', () => {
  expect(checkFacts(Array.from({ length: 100_000 }, () => 7))).toHaveLength(100_000)
})
