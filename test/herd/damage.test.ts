/** Damaged files of every kind are refused with their bytes untouched and the day copies named: durability table, row 7. */
import { beforeAll, expect, test } from 'vitest'
import { Judge } from './support/judging.ts'
import { mutations } from './support/mutations.ts'

let judge: Judge
let whole: Buffer

beforeAll(async () => {
  judge = await Judge.make()
  whole = judge.whole
})

function* cuts(): Generator<Buffer> {
  for (let length = 0; length < whole.length; length += 1) yield whole.subarray(0, length)
}
function* flips(): Generator<Buffer> {
  for (let bit = 0; bit < whole.length * 8; bit += 1) {
    const bytes = Buffer.from(whole)
    bytes[bit >> 3] = (bytes[bit >> 3] ?? 0) ^ (1 << (bit & 7))
    yield bytes
  }
}
function* zeroRuns(): Generator<Buffer> {
  for (let start = 0; start < whole.length; start += 7) {
    const bytes = Buffer.from(whole)
    bytes.fill(0, start, Math.min(whole.length, start + 512))
    yield bytes
  }
}

test('the whole file is accepted, so that the other judgements mean something', async () => {
  expect(await judge.judge(whole)).toBe('accepted')
})

test('cut at every byte: refused; only without its last line feed is it still all there', async () => {
  expect(await judge.tally(cuts())).toEqual({ refused: whole.length - 1, 'to be looked at': 1 })
})

test('every bit flipped: none is accepted', { timeout: 120_000 }, async () => {
  const found = await judge.tally(flips())
  expect(found.accepted).toBeUndefined()
  expect((found.refused ?? 0) + (found['to be looked at'] ?? 0)).toBe(whole.length * 8)
})

test('runs of zeros: refused', async () => {
  expect(Object.keys(await judge.tally(zeroRuns()))).toEqual(['refused'])
})

test('glued, doubled, turned round, other JSON, no JSON: refused', async () => {
  const text = whole.toString()
  const others = [
    text + text,
    text + text.slice(0, 100),
    text.split('\n').reverse().join('\n'),
    'null',
    '0',
    '""',
    '[]',
    '{}',
    '{"kind":"dawnlist"}',
    '{"kind":"dawnlist","format":1,"revision":2,"herd":"x","facts":{}}',
    '{"kind":"dawnlist","format":1,"revision":2,"herd":"x","facts":[null]}',
    '{"kind":"dawnlist","format":1,"revision":-1,"herd":"X y","facts":[]}',
    '{"kind":"dawnlist","format":1e999,"revision":2,"herd":"x","facts":[]}',
    '{"cows":[{"number":412}]}',
    '[1,2,3]',
    '\0\0\0\0',
    'number,born\n412,2022-03-01\n',
    '%PDF-1.7',
    `${'['.repeat(100_000)}${']'.repeat(100_000)}`,
    `{"kind":"dawnlist","format":1,"revision":2,"herd":"x","facts":[{"id":"a","about":"herd","date":"2026-05-28","at":"2026-05-28T04:15:09Z","kind":"nitrogen","depthCm":9,"deep":${'['.repeat(100_000)}${']'.repeat(100_000)}}]}`,
    Buffer.from([0xff, 0xfe, 0x7b, 0x00]),
  ]
  expect(await judge.tally(others.map((other) => Buffer.from(other as string)))).toEqual({
    refused: others.length,
  })
})

test('line ends of another system, a byte order mark, another layout: to be looked at, not written', async () => {
  const text = whole.toString()
  const edited = [
    text.replaceAll('\n', '\r\n'),
    `\ufeff${text}`,
    `${text}\n`,
    JSON.stringify(JSON.parse(text)),
    JSON.stringify(JSON.parse(text), null, 2),
    text.replace('"first"', '"second"'),
  ]
  expect(await judge.tally(edited.map((each) => Buffer.from(each)))).toEqual({
    'to be looked at': edited.length,
  })
})

test('files changed at random: never a crash, a hang or a write', async () => {
  const found = await judge.tally(mutations(whole, 1, 1000))
  expect(found.accepted).toBeUndefined()
})
