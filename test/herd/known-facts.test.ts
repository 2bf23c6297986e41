/** What new facts are held against. */
import { expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { KnownFacts } from '../../source/herd/known-facts.ts'

const envelope = { date: '2026-05-28', at: '2026-05-28T04:15:09.120Z' } as const
const cow = (id: string, about: string, number: string): Fact => ({
  ...envelope,
  id,
  about,
  kind: 'animal',
  number,
  sex: 'F',
})
const looked = (id: string): Fact => ({ ...envelope, id, about: 'cow412', kind: 'looked' })
const voiding = (id: string, voids: string): Fact => ({
  ...envelope,
  id,
  about: 'cow412',
  kind: 'correction',
  voids,
})
const archive = (id: string, ...took: string[]): Fact => ({
  ...envelope,
  id,
  about: 'herd',
  kind: 'archive',
  before: '2024-03-27',
  file: 'herd.archive-2026-05-28.json',
  took,
})
function knowing(facts: readonly Fact[], before?: KnownFacts): KnownFacts {
  const known = new KnownFacts(before)
  for (const fact of facts) known.add(fact)
  return known
}

test('of two facts with one id the first stays, also where it was known before', () => {
  const [first, second] = [looked('a'), looked('a')]
  expect(knowing([first, second]).find('a')).toBe(first)
  expect(knowing([second], knowing([first])).find('a')).toBe(first)
  expect(knowing([first]).find('b')).toBeUndefined()
})

test('what is known more leaves what was known before as it was', () => {
  const before = knowing([cow('a', 'cow412', '412')])
  const more = knowing([cow('b', 'cow412', '500'), archive('c', 'went')], before)
  expect([more.numberOf('cow412'), before.numberOf('cow412')]).toEqual(['500', '412'])
  expect([more.has('b'), before.has('b')]).toEqual([true, false])
  expect([more.has('went'), before.has('went')]).toEqual([true, false])
})

test('the number of an animal is that of her latest record', () => {
  const known = knowing([cow('a', 'cow412', '412'), cow('b', 'cow412', '500')])
  expect(known.numberOf('cow412')).toBe('500')
  expect(known.numberOf('cow9')).toBeUndefined()
  expect(knowing([looked('c')], known).numberOf('cow412')).toBe('500')
})

test('a fact is known where it is here or went to an archive, now or before', () => {
  const before = knowing([looked('here'), archive('a', 'went')])
  for (const known of [before, knowing([], before)])
    expect(['here', 'went', 'gone'].map((id) => known.has(id))).toEqual([true, true, false])
})

/** Ids of the records that give a number which another animal has. */
const shared = (known: KnownFacts): string[] => known.sharedNumbers().map(({ id }) => id)

test('of animals that share a number the later records give it', () => {
  const [a, b, c] = [cow('a', 'cow1', '7'), cow('b', 'cow2', '7'), cow('c', 'cow3', '8')]
  expect(shared(knowing([a, b, c]))).toEqual(['b'])
  expect(shared(knowing([b, c], knowing([a])))).toEqual(['b'])
  expect(shared(knowing([a, c]))).toEqual([])
  // Recorded anew, the first animal is the one that takes the number of another.
  expect(shared(knowing([a, b, cow('again', 'cow1', '7')]))).toEqual(['again'])
  expect(shared(knowing([a, cow('again', 'cow1', '7')]))).toEqual([])
})

test('a record that was voided gives no number, whether that was known before or comes now', () => {
  const [a, b] = [cow('a', 'cow1', '7'), cow('b', 'cow2', '7')]
  expect(shared(knowing([a, b, voiding('v', 'b')]))).toEqual([])
  expect(shared(knowing([voiding('v', 'b')], knowing([a, b])))).toEqual([])
  expect(shared(knowing([b], knowing([a, voiding('v', 'a')])))).toEqual([])
  expect(shared(knowing([voiding('u', 'v')], knowing([a, b, voiding('v', 'b')])))).toEqual(['b'])
})
