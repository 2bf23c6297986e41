/** What is let into the file. */
import { expect, test } from 'vitest'
import type { Fact, NewFact } from '../../source/breeding/facts.ts'
import { harmlessJson } from '../../source/herd/escape.ts'
import { fileLimit } from '../../source/herd/format.ts'
import { Gate } from '../../source/herd/gate.ts'
import type { HerdFile } from '../../source/herd/herd-file.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { note, smallHerd } from './support/herds.ts'

const facts = (...newFacts: NewFact[]): Fact[] =>
  asFacts(newFacts, { at: new Date('2026-05-28T04:15:09.120Z') })
const start = facts(...smallHerd)
/** A saved herd whose lines fill so many bytes. */
const saved = (bytes: number, ...more: Fact[]): HerdFile => ({
  format: 1,
  revision: 1,
  herdId: 'x',
  facts: [...start, ...more],
  lines: [Buffer.alloc(bytes - 1), Buffer.alloc(1)],
})
const codes = async (gate: Gate, herd: HerdFile, pending: readonly Fact[], ...added: Fact[]) =>
  (await gate.refusals(herd, pending, added)).map(({ code }) => code)

test('the file may be full to its limit; what would go beyond it is refused', async () => {
  const [one, other] = [facts(note('one')), facts(note('the other'))]
  const room = Buffer.byteLength(harmlessJson(one[0])) + 2
  const both = room + Buffer.byteLength(harmlessJson(other[0])) + 2
  expect(await codes(new Gate(), saved(fileLimit - room), [], ...one)).toEqual([])
  expect(await codes(new Gate(), saved(fileLimit - both), one, ...other)).toEqual([])
  expect(await codes(new Gate(), saved(fileLimit - both + 1), one, ...other)).toEqual(['herd-full'])
  expect(await new Gate().refusals(saved(fileLimit - room + 1), [], one)).toMatchObject([
    { code: 'herd-full', values: { limit: 64 } },
  ])
})

test('of a wrong fact it is said what is wrong, whether there is room or not', async () => {
  const wrong = { ...note('of nobody'), about: 'cow9' }
  expect(await codes(new Gate(), saved(fileLimit), [], ...facts(wrong))).toEqual(['animal-unknown'])
})

test('a fact is held against those saved and those that wait', async () => {
  const gate = new Gate()
  const calf: NewFact = { kind: 'animal', about: 'cow9', date: '2026-05-28', number: '9', sex: 'F' }
  const [born, seen] = [facts(calf), facts(note('seen', 'cow9'))]
  expect(await codes(gate, saved(9), [], ...seen)).toEqual(['animal-unknown'])
  expect(await codes(gate, saved(9), born, ...seen)).toEqual([])
  // What only waited is not remembered.
  expect(await codes(gate, saved(9), [], ...seen)).toEqual(['animal-unknown'])
  expect(await codes(gate, saved(9, ...born), [], ...seen)).toEqual([])
  expect(await codes(gate, saved(9, ...born), [], ...seen)).toEqual([])
  expect(await codes(gate, saved(9, ...born), [], ...born)).toEqual([])
  expect(await codes(gate, saved(9, ...born), [], { ...born[0], number: '10' } as Fact)).toEqual([
    'id-other-content',
  ])
})

test('a herd that changed under the program is known anew, and what is gone from it is not', async () => {
  const gate = new Gate()
  const calf: NewFact = { kind: 'animal', about: 'cow9', date: '2026-05-28', number: '9', sex: 'F' }
  const seen = facts(note('seen', 'cow9'))
  expect(await codes(gate, saved(9, ...facts(calf)), [], ...seen)).toEqual([])
  expect(await codes(gate, { ...saved(9), facts: start.map((fact) => ({ ...fact })) }, [], ...seen)).toEqual([
    'animal-unknown',
  ])
  expect(await codes(gate, saved(9), [], ...facts(note('seen')))).toEqual([])
})
