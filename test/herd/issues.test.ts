/** How a problem names what is wrong in a fact. */
import { expect, test } from 'vitest'
import { checkAdded, checkFacts } from '../../source/herd/check.ts'
import { shown } from '../../source/herd/issues.ts'
import { KnownFacts } from '../../source/herd/known-facts.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { note, smallHerd } from './support/herds.ts'

test.each([
  ['as it is', '412', '412'],
  ['a number', 7, '7'],
  ['a yes', true, 'true'],
  ['nothing', null, 'null'],
  ['what is missing', undefined, 'undefined'],
  ['a list', ['05:30'], 'a list'],
  ['an object', { sire: 'HX204' }, 'an object'],
  ['sixty characters', 'y'.repeat(60), 'y'.repeat(60)],
  ['more than sixty', 'y'.repeat(61), `${'y'.repeat(60)}…`],
])('a wrong value is named short, and as text: %s', (_, value, text) => {
  expect(shown(value)).toBe(text)
})

const at = new Date('2026-05-28T04:15:09.120Z')
/** What is told of the wrong facts of a small herd with this one behind. */
const told = (fact: object): unknown[] =>
  checkFacts([...asFacts(smallHerd, { at }), { id: 'f', at: at.toISOString(), date: '2026-05-28', ...fact }])
    .filter(({ severity }) => severity === 'fault')
    .map(({ code, path, animal, values }) => [code, path, animal, values])

test('what the schema finds is told with the field, the value and what would be right', () => {
  const ofCow = { about: 'cow412' }
  expect(told({ ...ofCow, kind: 'calving', calves: '1' })).toEqual([
    ['field-type', 'facts[4].calves', '412', { field: 'calves', found: '1', expected: 'number' }],
  ])
  expect(told({ ...ofCow, kind: 'heat', how: 'smell', certainty: 'sure' })).toEqual([
    [
      'field-choice',
      'facts[4].how',
      '412',
      { field: 'how', found: 'smell', choices: 'activity, standing, paint, mucus, other' },
    ],
  ])
  expect(told({ ...ofCow, kind: 'heat', how: 'paint' })).toEqual([
    ['field-missing', 'facts[4].certainty', '412', { field: 'certainty' }],
  ])
  expect(told({ ...ofCow, kind: 'calving', ease: 0 })).toEqual([
    ['field-too-small', 'facts[4].ease', '412', { field: 'ease', found: '0', limit: 1 }],
  ])
  expect(told({ ...ofCow, kind: 'calving', ease: 6 })).toEqual([
    ['field-too-large', 'facts[4].ease', '412', { field: 'ease', found: '6', limit: 5 }],
  ])
  expect(told({ ...ofCow, kind: 'score', condition: 2.8 })).toEqual([
    ['field-step', 'facts[4].condition', '412', { field: 'condition', found: '2.8', step: 0.25 }],
  ])
  expect(told({ ...ofCow, kind: 'block', block: '' })).toEqual([
    ['field-empty', 'facts[4].block', '412', { field: 'block', found: '' }],
  ])
  const long = 'x'.repeat(10_001)
  const tooLong = { limit: 10_000, found: `${'x'.repeat(60)}…` }
  expect(told({ ...ofCow, kind: 'note', note: long })).toEqual([
    ['field-too-long', 'facts[4].note', '412', { field: 'note', ...tooLong }],
  ])
  expect(told({ ...ofCow, kind: 'looked', later: { deep: [long] } })).toEqual([
    ['field-too-long', 'facts[4].later.deep[0]', '412', { field: 'deep[0]', ...tooLong }],
  ])
  const proposed = { sire: 'HX204', straw: 'dairy' }
  expect(told({ ...ofCow, kind: 'service', proposed })).toMatchObject([
    ['field-choice', 'facts[4].proposed.straw', '412', { field: 'straw', found: 'dairy' }],
  ])
})

test('one wrong item of a list is told with the field that holds the list', () => {
  const farm = { about: 'herd', kind: 'farm', name: 'Long Acre', zone: 'UTC' }
  expect(told({ ...farm, milkings: ['05:30', '24:00'] })).toEqual([
    ['field-time', 'facts[4].milkings[1]', undefined, { field: 'milkings', found: '24:00' }],
  ])
})

test.each([null, 7, 'text', true, [1], []])('%j is no fact', (found) => {
  expect(checkFacts([found]).map(({ code, path }) => [code, path])).toEqual([['fact-no-object', 'facts[0]']])
})

test('a kind is a word', () => {
  for (const kind of [7, null, ['looked'], undefined])
    expect(told({ about: 'cow412', kind })).toEqual([
      ['field-missing', 'facts[4].kind', '412', { field: 'kind' }],
    ])
})

test('an id that stands twice is told as such, alike or not', () => {
  const one = { about: 'cow412', kind: 'looked' }
  expect(told({ ...one, about: 'cow7' })).toEqual([])
  const fact = { ...one, id: 'f', at: at.toISOString(), date: '2026-05-28' }
  const both = (second: object) =>
    checkFacts([...asFacts(smallHerd, { at }), fact, { ...fact, ...second }]).map(({ code, values }) => [
      code,
      values,
    ])
  expect(both({})).toEqual([['id-twice', { id: 'f' }]])
  expect(both({ date: '2026-05-27' })).toEqual([['id-other-content', { id: 'f' }]])
})

test('an animal and a corrected fact that are not there are named', () => {
  expect(told({ about: 'cow9', kind: 'looked' })).toEqual([
    ['animal-unknown', 'facts[4].about', undefined, { id: 'cow9', kind: 'looked' }],
  ])
  expect(told({ about: 'cow412', kind: 'correction', voids: 'gone', with: 'too' })).toEqual([
    ['correction-unknown', 'facts[4].voids', '412', { id: 'gone' }],
    ['correction-unknown', 'facts[4].with', '412', { id: 'too' }],
  ])
  // Only a correction voids: in another fact the word is a field that this version does not know.
  expect(told({ about: 'cow412', kind: 'looked', voids: 'gone' })).toEqual([])
})

test('a correction may name a fact that went to the archive', () => {
  const archive = { about: 'herd', kind: 'archive', before: '2024-03-27', file: 'a.json', took: ['went'] }
  const correction = { ...note(''), kind: 'correction', voids: 'went', id: 'c', at: at.toISOString() }
  const all = (before: object) => [
    ...asFacts(smallHerd, { at }),
    { id: 'a', at: at.toISOString(), date: '2026-05-28', ...before },
    correction,
  ]
  expect(checkFacts(all(archive))).toEqual([])
  expect(checkFacts(all({ ...archive, took: ['other'] })).map(({ code }) => code)).toEqual([
    'correction-unknown',
  ])
})

/** Two cows that both have number 412, as a file may hold them. */
const doubled = [...smallHerd, { ...smallHerd[2], about: 'cow9' }] as typeof smallHerd

test('a number that two animals share is told only of a file in which nothing is wrong', () => {
  const facts = asFacts(doubled, { at })
  expect(checkFacts(facts)).toEqual([
    {
      code: 'number-shared',
      severity: 'notice',
      path: 'facts[4].number',
      values: { number: '412' },
      animal: '412',
    },
  ])
  expect(checkFacts([...facts, 7]).map(({ code }) => code)).toEqual(['fact-no-object'])
})

test('a number is refused to a second animal, whatever else is recorded with it', () => {
  const known = new KnownFacts()
  for (const fact of asFacts(smallHerd, { at })) known.add(fact)
  const more = asFacts([note('seen'), { ...smallHerd[2], about: 'cow9' } as (typeof smallHerd)[0]], { at })
  expect(checkAdded(known, more)).toMatchObject([
    { code: 'number-taken', path: 'facts[1].number', values: { number: '412' }, animal: '412' },
  ])
})

test('a number that two animals of the file share keeps no other animal from being recorded', () => {
  const known = new KnownFacts()
  for (const fact of asFacts(doubled, { at })) known.add(fact)
  const more = { ...smallHerd[2], about: 'cow500', number: '500' } as (typeof smallHerd)[0]
  expect(checkAdded(known, asFacts([more], { at }))).toEqual([])
})
