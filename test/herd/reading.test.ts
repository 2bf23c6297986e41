/** How the bytes of a herd file are judged. */
import { expect, test } from 'vitest'
import type { Fact, NewFact } from '../../source/breeding/facts.ts'
import { currentFormat, encodeFile } from '../../source/herd/format.ts'
import type { HerdFile } from '../../source/herd/herd-file.ts'
import { type Migration, migrated } from '../../source/herd/migrations.ts'
import { type ReadingOptions, readHerd } from '../../source/herd/reading.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { note, notesIn, smallHerd, soundFile } from './support/herds.ts'

const at = new Date('2026-05-28T04:15:09.120Z')
const read = (bytes: Buffer, options?: ReadingOptions) => readHerd(bytes, 'farm.json', options)
async function sound(bytes: Buffer, options?: ReadingOptions): Promise<HerdFile> {
  const reading = await read(bytes, options)
  if (reading.state !== 'sound') throw new Error(`not sound: ${JSON.stringify(reading)}`)
  return reading.herd
}
async function faults(bytes: Buffer, options?: ReadingOptions): Promise<unknown[]> {
  const reading = await read(bytes, options)
  return reading.state === 'fault'
    ? reading.problems.map(({ code, path, values }) => [code, path, values])
    : []
}
/** Bytes with a right sum over lines that are what they are. */
async function summed(lines: string, format = currentFormat): Promise<Buffer> {
  const { parts } = await encodeFile({ format, revision: 3, herdId: 'x' }, [Buffer.from(lines)])
  return Buffer.concat(parts)
}

test('an empty file, a newer format and lines that are no JSON are faults', async () => {
  expect(await faults(Buffer.alloc(0))).toEqual([['herd-empty', 'farm.json', undefined]])
  const newer = await soundFile(smallHerd, { format: currentFormat + 1 })
  expect(await faults(newer)).toEqual([
    ['herd-newer', 'farm.json', { found: currentFormat + 1, known: currentFormat }],
  ])
  expect(await faults(await summed('{"id":'))).toEqual([['herd-damaged', 'farm.json', { line: 0 }]])
})

test('with a right sum the facts are trusted, with a wrong one judged', async () => {
  const bytes = await soundFile([...smallHerd, note('seen')], { revision: 5 })
  expect(await sound(bytes)).toMatchObject({ format: currentFormat, revision: 5, herdId: '7k2m9qxc4t0z' })
  const edited = Buffer.from(bytes.toString().replace('"seen"', '"SEEN"'))
  expect(await read(edited)).toMatchObject({ state: 'edited', herd: { revision: 5 } })
})

test('of a file that only grew the facts known before stay the same objects', async () => {
  const facts = asFacts([...smallHerd, note('one')], { at })
  const before = await sound(await soundFile(facts))
  const grown = await sound(await soundFile([...facts, note('two')], { revision: 2 }), { known: before })
  expect(grown.facts.slice(0, -1).every((fact, place) => fact === before.facts[place])).toBe(true)
  expect(notesIn(grown.facts)).toEqual(['one', 'two'])
  const same = await sound(await soundFile(facts, { revision: 2 }), { known: before })
  expect(same.facts).toBe(before.facts)
})

test('a file whose lines are others is read anew, and so is that of another herd', async () => {
  const facts = asFacts([...smallHerd, note('one')], { at })
  const before = await sound(await soundFile(facts))
  const less = await sound(await soundFile(facts.slice(0, -1), { revision: 2 }), { known: before })
  expect(less.facts).toEqual(before.facts.slice(0, -1))
  const stranger = await sound(await soundFile(facts, { herdId: 'y' }), { known: before })
  expect(stranger.facts).toEqual(before.facts)
  expect(stranger.facts[0]).not.toBe(before.facts[0])
})

/** From a format two back to today's: first the one word, then the other. */
const steps: readonly Migration[] = [
  { from: -1, migrate: (facts) => facts.map((fact) => ({ ...(fact as Fact), first: 'done' })) },
  {
    from: 0,
    migrate: (facts) => facts.map((fact) => ({ ...(fact as Fact), second: Object.keys(fact as Fact) })),
  },
]

test('facts of an old format go through every step between, in order; of today they stay as they are', () => {
  const facts = [{ id: 'a' }]
  expect(migrated(facts, currentFormat, steps)).toBe(facts)
  expect(migrated(facts, 0, steps)).toEqual([{ id: 'a', second: ['id'] }])
  expect(migrated(facts, -1, steps)).toEqual([{ id: 'a', first: 'done', second: ['id', 'first'] }])
  expect(migrated(facts, -1, steps.slice(1))).toBeUndefined()
  expect(migrated(facts, -1, steps.slice(0, 1))).toBeUndefined()
  expect(migrated(facts, 0)).toBeUndefined()
})

const unchanged: Migration = { from: 0, migrate: (facts) => facts }

test('a migrated file is judged by the schema of today; what is worth a notice is no fault', async () => {
  const old = (facts: NewFact[]) => soundFile(facts, { format: 0 })
  expect(await sound(await old(smallHerd), { migrations: [unchanged] })).toMatchObject({ format: 0 })
  const shared = [...smallHerd, { ...smallHerd[2], about: 'cow9' } as NewFact]
  const herd = await sound(await old(shared), { migrations: [unchanged] })
  expect(herd.facts).toHaveLength(5)
  const wrong = [...smallHerd, { ...note('seen'), date: '2026-02-30' } as NewFact]
  expect(await faults(await old(wrong), { migrations: [unchanged] })).toEqual([
    ['field-date', 'facts[4].date', { field: 'date', found: '2026-02-30' }],
  ])
  expect(await faults(await old(smallHerd), { migrations: [] })).toEqual([
    ['herd-format-unknown', 'farm.json', { found: 0, known: currentFormat }],
  ])
})

test('an old file that is no JSON is damaged; a failure of a migration itself is not hidden', async () => {
  expect(await faults(await summed('{"id":', 0), { migrations: [unchanged] })).toEqual([
    ['herd-damaged', 'farm.json', { line: 0 }],
  ])
  const failing: Migration = {
    from: 0,
    migrate: () => {
      throw new RangeError('of the migration')
    },
  }
  await expect(read(await soundFile(smallHerd, { format: 0 }), { migrations: [failing] })).rejects.toThrow(
    'of the migration',
  )
})
