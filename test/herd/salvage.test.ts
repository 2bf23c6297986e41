/** What can still be read in a damaged file. */
import { expect, test } from 'vitest'
import type { Fact, NewFact } from '../../source/breeding/facts.ts'
import { harmlessJson } from '../../source/herd/escape.ts'
import type { HerdFile } from '../../source/herd/herd-file.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { readableFacts, revisionIn } from '../../source/herd/salvage.ts'
import { note, notesIn, smallHerd } from './support/herds.ts'

const facts = (...newFacts: NewFact[]): Fact[] =>
  asFacts(newFacts, { at: new Date('2026-05-28T04:15:09.120Z') })
const copy: HerdFile = { format: 1, revision: 3, herdId: 'x', facts: facts(...smallHerd), lines: [] }
const line = (fact: Fact | undefined): string => harmlessJson(fact)
/** Texts of the notes that are read in these lines. */
const read = async (lines: readonly string[] | Buffer): Promise<string[]> =>
  notesIn(await readableFacts(Buffer.isBuffer(lines) ? lines : Buffer.from(lines.join('\n')), copy))

const [one, two, three] = facts(note('one'), note('two'), note('three'))

test('whole lines are read wherever they stand, with their comma or without, in the line ends of any system', async () => {
  expect(await read([line(one), line(two), line(three)])).toEqual(['one', 'two', 'three'])
  expect(await read(['{"kind":"dawnlist"', `${line(one)},`, 'noise', line(two), ']}', ''])).toEqual([
    'one',
    'two',
  ])
  expect(await read([`${line(one)},\r`, `${line(two)}\r`, ''])).toEqual(['one', 'two'])
  expect(await read([''])).toEqual([])
})

test('a line that is cut, glued to another or not all text is left out', async () => {
  expect(await read([line(one).slice(0, -1), line(two).slice(1), line(three)])).toEqual(['three'])
  expect(await read([line(one) + line(two), line(three)])).toEqual(['three'])
  const noText = Buffer.from([line(one).replace('one', '\u00ff'), line(two)].join('\n'), 'latin1')
  expect(await read(noText)).toEqual(['two'])
  expect(await read([line(one).replace('one', 'Ünö')])).toEqual(['Ünö'])
})

test('what is JSON and yet no fact is left out', async () => {
  expect(await read(['null', '7', '[]', '{}', '{"id":7}', line(one)])).toEqual(['one'])
})

test('a fact that stands there twice is read once, and one that the copy has is not read again', async () => {
  expect(await read([line(one), line(one), line(copy.facts[2])])).toEqual(['one'])
  const all = await readableFacts(Buffer.from([copy.facts[2], one].map(line).join('\n')), copy)
  expect(all).toEqual([one])
})

test('a fact that the schema refuses, or that is about nobody, is left out', async () => {
  const wrong = { ...one, id: 'wrong', date: '2026-02-30' } as Fact
  const nobody = { ...one, id: 'nobody', about: 'cow9' } as Fact
  expect(await read([line(wrong), line(nobody), line(two)])).toEqual(['two'])
})

test('a fact about an animal that is read in the same file is read', async () => {
  const calf: NewFact = { kind: 'animal', about: 'cow9', date: '2026-05-28', number: '9', sex: 'F' }
  expect(await read([...facts(calf, note('seen', 'cow9')).map(line)])).toEqual(['seen'])
})

test('that facts were archived is not taken over: the copy has them', async () => {
  const archived: NewFact = {
    kind: 'archive',
    about: 'herd',
    date: '2026-05-28',
    before: '2024-03-27',
    file: 'herd.archive-2026-05-28.json',
    took: [],
  }
  expect(await readableFacts(Buffer.from(facts(archived).map(line).join('\n')), copy)).toEqual([])
})

test.each([
  ['{"kind":"dawnlist","format":1,"revision":12,"herd":', 12],
  ['{"kind":"dawnlist","format":1,"revision":12', 0],
  ['{"kind":"dawnlist","format":1,"revision":1000000000000000,', 0],
  ['no header', 0],
  ['', 0],
])('the revision in %s is %d', (text, revision) => {
  expect(revisionIn(Buffer.from(text))).toBe(revision)
})
