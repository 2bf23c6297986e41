/** The limits that facts.ts and policy.ts state for each field, from both sides. */
import { expect, test } from 'vitest'
import { settings } from '../../source/breeding/policy.ts'
import { checkFacts } from '../../source/herd/check.ts'

const at = '2026-05-28T04:15:09.120Z'
const date = '2026-05-28'
const cow = { id: 'cow', about: 'cow412', date, at, kind: 'animal', number: '412', sex: 'F' }
const ofCow = { id: 'f', about: 'cow412', date, at }
const ofHerd = { ...ofCow, about: 'herd' }
const lot = { sire: 'HX204', straw: 'beef' }

/** A fact of each kind with nothing that may be left out. */
const least: Readonly<Record<string, object>> = {
  heat: { ...ofCow, how: 'paint', certainty: 'sure' },
  looked: ofCow,
  service: ofCow,
  check: { ...ofCow, method: 'milk', result: 'unsure' },
  examined: ofCow,
  calving: ofCow,
  loss: ofCow,
  bar: ofCow,
  unbar: ofCow,
  'to-bull': ofCow,
  'with-bull': ofCow,
  'from-bull': ofCow,
  hold: ofCow,
  score: { ...ofCow, condition: 3 },
  dry: ofCow,
  block: { ...ofCow, block: 'spring' },
  left: ofCow,
  note: { ...ofCow, note: '' },
  correction: { ...ofCow, voids: 'cow' },
  farm: { ...ofHerd, name: 'Long Acre', zone: 'UTC', milkings: ['05:30'] },
  policy: { ...ofHerd, set: {} },
  season: { ...ofHerd, block: 'spring', matingStart: date, aiWeeks: 6, bullWeeks: 3 },
  animal: { ...ofCow, number: '412', sex: 'F' },
  'stock-take': { ...ofHerd, ...lot, count: 1 },
  delivery: { ...ofHerd, ...lot, count: 1 },
  spoiled: { ...ofHerd, ...lot, count: 1 },
  nitrogen: { ...ofHerd, depthCm: 20 },
  archive: { ...ofHerd, before: date, file: 'herd.archive-2026-05-28.json', took: [] },
  'kept-result': { ...ofHerd, number: '9', method: 'milk', result: 'unsure', why: 'no-animal' },
}

/** Codes of what is wrong with a fact of a kind that has these fields beside what it needs. */
const wrong = (kind: string, fields: object = {}): string[] =>
  checkFacts([cow, { ...least[kind], kind, ...fields }]).map(({ code }) => code)

test.each(Object.keys(least))('%s needs no more than this, and each of it', (kind) => {
  expect(wrong(kind)).toEqual([])
  for (const field of Object.keys(least[kind] ?? {}))
    expect(wrong(kind, { [field]: undefined }), field).not.toEqual([])
})

/** Kind, field, the smallest and the largest number it may hold, what beside it has room for them. */
const ranges: readonly (readonly [string, string, number, number, object?])[] = [
  ['check', 'foetalAge', 20, 290],
  ['check', 'foetuses', 1, 5],
  ['kept-result', 'foetalAge', 20, 290],
  ['kept-result', 'foetuses', 1, 5],
  ['calving', 'ease', 1, 5],
  ['calving', 'calves', 1, 5],
  ['calving', 'dead', 0, 5, { calves: 5 }],
  ['score', 'condition', 1, 5],
  ['season', 'aiWeeks', 1, 20],
  ['season', 'bullWeeks', 0, 20],
  ['animal', 'lactation', 0, 30],
  ['animal', 'gestationDays', 260, 300],
  ['stock-take', 'gestationDays', 260, 300],
  ['stock-take', 'count', 0, 100_000],
  ['stock-take', 'volumeMl', 0.1, 5],
  ['delivery', 'count', 1, 100_000],
  ['spoiled', 'count', 1, 100_000],
  ['nitrogen', 'depthCm', 0, 200],
]
/** Fields that hold parts of one too. */
const decimals = ['volumeMl', 'depthCm', 'condition']

for (const [kind, field, from, to, beside] of ranges) {
  const step = decimals.includes(field) ? 0.25 : 1
  const found = (value: unknown): string[] => wrong(kind, { ...beside, [field]: value })
  test(`${kind}: ${field} from ${from} to ${to}`, () => {
    for (const value of [from, from + step, to]) expect(found(value)).toEqual([])
    expect(found(from - step)).toContain('field-too-small')
    expect(found(to + step)).toContain('field-too-large')
    expect(found(String(from))).toEqual(['field-type'])
    if (step === 1) expect(found(from + 0.5)).toEqual(['field-type'])
  })
}

for (const { key, min, max } of settings) {
  if (min === undefined || max === undefined) continue
  test(`the setting ${key} from ${min} to ${max}`, () => {
    const found = (value: unknown): string[] => wrong('policy', { set: { [key]: value } })
    expect(found(min)).toEqual([])
    expect(found(max)).toEqual([])
    expect(found(min - 0.01)).toEqual(['field-too-small'])
    expect(found(max + 0.01)).toEqual(['field-too-large'])
    expect(found('many')).toEqual(['field-type'])
  })
}

test('a setting of choices holds one of them, one of yes and no a yes or a no', () => {
  for (const choice of ['ultrasound', 'hand', 'milk', 'blood'])
    expect(wrong('policy', { set: { checkMethod: choice } })).toEqual([])
  expect(wrong('policy', { set: { checkMethod: 'guess' } })).toEqual(['field-choice'])
  expect(wrong('policy', { set: { useSexed: false } })).toEqual([])
  expect(wrong('policy', { set: { useSexed: 'yes' } })).toEqual(['field-type'])
})

test('of the calves of a calving no more are dead than were born, and each has one letter of sex', () => {
  expect(wrong('calving', { dead: 1 })).toEqual([])
  expect(wrong('calving', { dead: 2 })).toEqual(['field-more-dead-than-born'])
  expect(wrong('calving', { dead: 2, calves: 2 })).toEqual([])
  expect(wrong('calving', { dead: 3, calves: 2 })).toEqual(['field-more-dead-than-born'])
  expect(wrong('calving', { calfSex: 'F' })).toEqual([])
  expect(wrong('calving', { calfSex: 'FFMMF', calves: 5 })).toEqual([])
  expect(wrong('calving', { calfSex: 'F', calves: 2 })).toEqual(['field-calf-sex-count'])
  expect(wrong('calving', { calfSex: '' })).toContain('field-calf-sex')
})

test('a farm milks once a day, or twice in the order of the day', () => {
  expect(wrong('farm', { milkings: [] })).toEqual(['field-too-small'])
  expect(wrong('farm', { milkings: ['05:30', '15:30'] })).toEqual([])
  expect(wrong('farm', { milkings: ['05:30', '05:30'] })).toEqual(['field-milkings-order'])
  expect(wrong('farm', { milkings: ['05:00', '12:00', '19:00'] })).toEqual(['field-too-large'])
  expect(wrong('farm', { milkings: ['24:00'] })).toEqual(['field-time'])
  expect(wrong('farm', { milkings: ['23:59'] })).toEqual([])
})

test('a season has room for a hundred visits', () => {
  const visits = (count: number): object => ({ scanDates: Array.from({ length: count }, () => date) })
  expect(wrong('season', visits(0))).toEqual([])
  expect(wrong('season', visits(100))).toEqual([])
  expect(wrong('season', visits(101))).toEqual(['field-too-large'])
})

test('a text holds ten thousand characters, a name at least one, an id a hundred', () => {
  expect(wrong('note', { note: 'x'.repeat(10_000) })).toEqual([])
  expect(wrong('note', { note: 'x'.repeat(10_001) })).toEqual(['field-too-long'])
  expect(wrong('block', { block: 'x' })).toEqual([])
  expect(wrong('block', { block: '' })).toEqual(['field-empty'])
  expect(wrong('block', { block: 'x'.repeat(10_001) })).toEqual(['field-too-long'])
  expect(wrong('looked', { id: 'x'.repeat(100) })).toEqual([])
  expect(wrong('looked', { id: 'x'.repeat(101) })).toEqual(['field-id'])
  expect(wrong('looked', { action: '' })).toEqual(['field-id'])
})

test.each([
  ['00:00', '23:59', 'morning', 'evening'],
  ['24:00', '05:60', '5:30', 'noon', '05:30:00'],
])('times of the day: %s and the like', (...times) => {
  const good = times.includes('morning')
  for (const time of times) expect(wrong('looked', { time })).toEqual(good ? [] : ['field-time-of-day'])
})

test.each([
  ['2026-05-28T00:00:00Z', []],
  ['2026-05-28T23:59:59.9Z', []],
  ['2026-05-28T24:00:00Z', ['field-instant']],
  ['2026-05-28T04:15:09.1234Z', ['field-instant']],
  ['2026-05-28 04:15:09Z', ['field-instant']],
  ['2026-02-29T04:15:09Z', ['field-instant']],
  ['2028-02-29T04:15:09Z', []],
])('recorded at %s', (instant, codes) => {
  expect(wrong('looked', { at: instant })).toEqual(codes)
})
