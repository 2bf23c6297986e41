/** How two lists of facts of one herd come together. */
import { expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { type HerdFile, Refusal } from '../../source/herd/herd-file.ts'
import { beginsWith, missingFrom } from '../../source/herd/union.ts'

const envelope = { about: 'cow412', date: '2026-05-28', at: '2026-05-28T04:15:09.120Z' } as const
const note = (id: string, text = ''): Fact => ({ ...envelope, id, kind: 'note', note: text })
const archive = (...took: string[]): Fact => ({
  ...envelope,
  id: `archive of ${took}`,
  about: 'herd',
  kind: 'archive',
  before: '2024-03-27',
  file: 'herd.archive-2026-05-28.json',
  took,
})
const herd = (...facts: Fact[]): HerdFile => ({ format: 1, revision: 1, herdId: 'x', facts, lines: [] })
const missing = async (disk: HerdFile, known: HerdFile, ...unsaved: Fact[]): Promise<string[]> =>
  (await missingFrom(disk, known, unsaved, 'farm.json')).map(({ id }) => id)

const [a, b, c, d] = [note('a'), note('b'), note('c'), note('d')]

test('of a file that only grew nothing is missing but what is not saved', async () => {
  expect(await missing(herd(a, b, c), herd(a, b))).toEqual([])
  expect(await missing(herd(a, b, c), herd(a, b), d)).toEqual(['d'])
  expect(await missing(herd(a, b), herd(a, b), c, d)).toEqual(['c', 'd'])
  expect(await missing(herd(a, b, c), herd(a, b), { ...c })).toEqual([])
  expect(await missing(herd(), herd(), a)).toEqual(['a'])
})

test('a file that lost facts lacks them, then what is not saved, in the order of recording', async () => {
  expect(await missing(herd(a), herd(a, b, c), d)).toEqual(['b', 'c', 'd'])
  expect(await missing(herd(c, a), herd(a, b, c))).toEqual(['b'])
  expect(await missing(herd(), herd(a, b), c)).toEqual(['a', 'b', 'c'])
  // Read anew a fact is another object of the same content.
  expect(await missing(herd({ ...a }, { ...b }, c), herd(a, b))).toEqual([])
})

test('what went to an archive is not missing, whichever of the two tells of it', async () => {
  expect(await missing(herd({ ...a }, archive('b')), herd(a, b, c))).toEqual(['c'])
  expect(await missing(herd({ ...a }), herd(a, b, archive('b')))).toEqual(['archive of b'])
  expect(await missing(herd({ ...a }), herd(a, b), archive('b'))).toEqual(['archive of b'])
})

test('a fact that says something else under the same id is refused by its name', async () => {
  const other = note('b', 'something else')
  const both = [
    missingFrom(herd({ ...a }, other), herd(a, b), [], 'farm.json'),
    missingFrom(herd(a, other), herd(a), [b], 'farm.json'),
  ]
  for (const refused of both) {
    const error = await refused.catch((thrown: unknown) => thrown)
    expect(error).toBeInstanceOf(Refusal)
    expect((error as Refusal).problems).toMatchObject([
      {
        code: 'fact-differs',
        severity: 'fault',
        path: 'farm.json',
        values: { id: 'b', kind: 'note', date: '2026-05-28' },
      },
    ])
  }
})

test('facts begin with earlier ones where the first and the last of those stand in their places', () => {
  expect(beginsWith([a, b, c], [a, b])).toBe(true)
  expect(beginsWith([a, b], [a, b])).toBe(true)
  expect(beginsWith([a, b, c, d], [a, b, c])).toBe(true)
  expect(beginsWith([a], [])).toBe(true)
  expect(beginsWith([], [])).toBe(true)
  expect(beginsWith([a], [a, b])).toBe(false)
  expect(beginsWith([], [a])).toBe(false)
  expect(beginsWith([{ ...a }, b], [a, b])).toBe(false)
  expect(beginsWith([a, { ...b }], [a, b])).toBe(false)
  expect(beginsWith([a, c, b], [a, b])).toBe(false)
})
