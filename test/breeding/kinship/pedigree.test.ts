import { expect, test } from 'vitest'
import { calfGenerations, generationsKnown } from '../../../source/breeding/kinship/generations.ts'
import { impossibleIn, type Parents, problemOf } from '../../../source/breeding/kinship/impossible.ts'
import { readPedigree } from '../../../source/breeding/kinship/pedigree.ts'

const codes = (entries: readonly (readonly [string, Parents])[]) =>
  impossibleIn(new Map(entries))
    .map((one) => problemOf(one))
    .map(({ code, animal, values }) => ({ code, animal, values }))

test('an animal that is its own parent', () => {
  expect(codes([['7', { sire: '7' }]])).toEqual([
    { code: 'pedigree-loop', animal: '7', values: { animals: '7' } },
  ])
})

test('a loop of three is named once, from offspring to parent; its offspring are not blamed', () => {
  const loop = [
    ['kid', { dam: 'a' }],
    ['a', { dam: 'b' }],
    ['b', { dam: 'c' }],
    ['c', { dam: 'a', sire: 'S' }],
  ] as const
  expect(codes(loop)).toEqual([{ code: 'pedigree-loop', animal: 'a', values: { animals: 'a, b, c' } }])
})

test('two loops are two problems', () => {
  expect(
    codes([
      ['a', { dam: 'b' }],
      ['b', { dam: 'a' }],
      ['x', { sire: 'x' }],
    ]).map(({ animal }) => animal),
  ).toEqual(['a', 'x'])
})

test('one animal as both parents, and one as sire here and dam there', () => {
  expect(codes([['a', { sire: 'b', dam: 'b' }]])).toEqual([
    { code: 'pedigree-same-parents', animal: 'a', values: { parent: 'b' } },
  ])
  expect(
    codes([
      ['a', { sire: 'b' }],
      ['c', { dam: 'b' }],
    ]),
  ).toEqual([{ code: 'pedigree-both-roles', animal: 'b', values: { sireOf: 'a', damOf: 'c' } }])
})

test('a pedigree with something impossible is refused', () => {
  const outcome = readPedigree(new Map([['7', { sire: '7' }]]))
  expect(outcome.ok).toBe(false)
})

test('a line of 50,000 generations is read, and its loop found', () => {
  const line = new Map(Array.from({ length: 50_000 }, (_, i) => [String(i), { dam: String(i + 1) }]))
  expect(readPedigree(line).ok).toBe(true)
  line.set('49999', { dam: '0' })
  expect(impossibleIn(line).map(({ code }) => code)).toEqual(['pedigree-loop'])
})

test('generations known in full', () => {
  const outcome = readPedigree(
    new Map<string, Parents>([
      ['cow', { sire: 'S1', dam: 'd1' }],
      ['d1', { sire: 'S2', dam: 'd2' }],
      ['S1', { sire: 'S3', dam: 'd3' }],
      ['heifer', { dam: 'cow' }],
      ['calf', { sire: 'd1s', dam: 'cow' }],
      ['d1s', { sire: 'S2', dam: 'd2' }],
    ]),
  )
  if (!outcome.ok) throw new Error('refused')
  expect(generationsKnown(outcome.value, 'calf')).toBe(2)
  expect(['cow', 'd1', 'd2', 'heifer', 'stranger'].map((id) => generationsKnown(outcome.value, id))).toEqual([
    2, 1, 0, 0, 0,
  ])
  expect(calfGenerations(outcome.value, 'cow', 'S1')).toBe(2)
  expect(calfGenerations(outcome.value, 'heifer', 'S1')).toBe(1)
})

test.each([
  ['sire', 'S'],
  ['dam', 'd'],
])('a parent of the calf stands first in the file: its %s', (_, first) => {
  const outcome = readPedigree(
    new Map<string, Parents>([
      [first, {}],
      ['calf', { sire: 'S', dam: 'd' }],
    ]),
  )
  expect(outcome.ok && generationsKnown(outcome.value, 'calf')).toBe(1)
})
