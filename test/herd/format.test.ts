import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { createHerdFile } from '../../source/herd/create.ts'
import { harmlessJson } from '../../source/herd/escape.ts'
import { decodeLines, encodeFile, encodeLines, layoutOf } from '../../source/herd/format.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { readHerd } from '../../source/herd/reading.ts'
import { good, herdPath, note, smallHerd } from './support/herds.ts'
import { hostileTexts } from './support/hostile.ts'
import { MemoryFiles } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

const sample = new URL('./samples/format-1.herd', import.meta.url)

test('the frozen sample of format 1 is read, and written again byte for byte', async () => {
  const bytes = await readFile(sample)
  const reading = await readHerd(bytes, 'format-1.herd')
  if (reading.state !== 'sound') throw new Error('not sound')
  const { herd } = reading
  expect(herd).toMatchObject({ format: 1, revision: 12, herdId: '7k2m9qxc4t0z' })
  expect(new Set(herd.facts.map((fact) => fact.kind)).size).toBe(28)
  const { parts } = await encodeFile(herd, await encodeLines(herd.facts))
  expect(Buffer.concat(parts).equals(bytes)).toBe(true)
})

test('the sum is the SHA-256 of the file with its own digits as zeros', async () => {
  const text = await readFile(sample, 'utf8')
  const sum = /"sum":"([0-9a-f]{64})"/.exec(text)?.[1] ?? ''
  const zeros = text.replace(sum, '0'.repeat(64))
  expect(createHash('sha256').update(zeros).digest('hex')).toBe(sum)
})

test('the file is JSON, its first line the header and then one fact a line', async () => {
  const text = await readFile(sample, 'utf8')
  const lines = text.split('\n')
  const { facts, ...header } = JSON.parse(text) as { facts: Fact[] }
  expect(Object.keys(header)).toEqual(['kind', 'format', 'revision', 'herd', 'sum'])
  expect(lines.slice(1, -2).map((line) => JSON.parse(line.replace(/,$/, '')))).toEqual(facts)
  expect(lines.slice(-2)).toEqual([']}', ''])
})

test('the schema and the sum agree on the sample: it is opened alike both ways', async () => {
  const bytes = await readFile(sample)
  const sound = await readHerd(bytes, 'a')
  const edited = await readHerd(Buffer.concat([bytes, Buffer.from('\n')]), 'a')
  expect([sound.state, edited.state]).toEqual(['sound', 'edited'])
  if (sound.state === 'fault' || edited.state === 'fault') return
  expect(edited.herd.facts).toEqual(sound.herd.facts)
})

test('hostile texts are kept as they are, and the file is harmless in a terminal', async () => {
  const files = new MemoryFiles()
  const world = memoryWorld({ files })
  good(await createHerdFile(herdPath, smallHerd, 'MK', world))
  const herd = good(await openHerdFile(herdPath, world))
  good(
    await herd.record(
      hostileTexts.map((text) => note(text)),
      hostileTexts[0],
    ),
  )
  const again = good(await openHerdFile(herdPath, world))
  expect(again.facts.flatMap((fact) => (fact.kind === 'note' ? [fact.note] : []))).toEqual(hostileTexts)
  expect(again.facts.at(-1)?.by).toBe(hostileTexts[0])
  const text = files.peek(herdPath)?.toString() ?? ''
  expect(text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u)
})

test('every character there is comes back as it was, and none that does harm stands in the line', () => {
  for (let start = 0; start < 0x110000; start += 0x1000) {
    const text = String.fromCodePoint(...Array.from({ length: 0x1000 }, (_, place) => start + place))
    const line = harmlessJson(text)
    expect(line).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u)
    expect(JSON.parse(line)).toBe(text)
  }
})

test('any JSON value comes back as it was', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(JSON.parse(harmlessJson(value))).toEqual(JSON.parse(JSON.stringify(value)))
    }),
  )
})

test('lines are read as they were written, however many', async () => {
  for (const count of [0, 1, 2, 999, 1000, 1001, 5000]) {
    const facts = Array.from({ length: count }, (_, place) => ({
      id: `n${place}`,
      note: 'a",\n"b',
    })) as unknown as Fact[]
    const { parts } = await encodeFile({ format: 1, revision: 1, herdId: 'x' }, await encodeLines(facts))
    const layout = layoutOf(Buffer.concat(parts))
    expect(await decodeLines(layout?.lines ?? Buffer.alloc(0))).toEqual(facts)
    expect(JSON.parse(Buffer.concat(parts).toString())).toMatchObject({ facts })
  }
})

test('a field named __proto__ is data, in and out, and changes no object', async () => {
  const files = new MemoryFiles()
  const world = memoryWorld({ files })
  good(await createHerdFile(herdPath, smallHerd, 'MK', world))
  const text = files.peek(herdPath)?.toString() ?? ''
  const edited = text.replace(
    '"number":"7"',
    '"__proto__":{"polluted":true,"number":"9"},"number":"7","set":{"__proto__":1}',
  )
  files.place(herdPath, Buffer.from(edited))
  const { acceptEdits } = await import('../../source/herd/accept-edits.ts')
  good(await acceptEdits(herdPath, world))
  const herd = good(await openHerdFile(herdPath, world))
  expect(herd.mode).toBe('writable')
  expect(files.peek(herdPath)?.toString()).toContain('"__proto__":{"polluted":true,"number":"9"}')
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined()
  good(await herd.record([note('first')]))
  expect(files.peek(herdPath)?.toString()).toContain('"__proto__":{"polluted":true,"number":"9"}')
})
