/** The first line of a herd file, its fact lines and its sum, piece by piece. */
import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import {
  encodeFile,
  encodeLines,
  formatOf,
  headerOf,
  joinLines,
  layoutOf,
  linesAfter,
  sumOf,
} from '../../source/herd/format.ts'
import { note, soundFile } from './support/herds.ts'

const header = { format: 1, revision: 12, herdId: '7k2m9qxc4t0z' }
const sum = 'a'.repeat(64)
const firstLine = `{"kind":"dawnlist","format":1,"revision":12,"herd":"7k2m9qxc4t0z","sum":"${sum}","facts":[\n`

test.each([
  ['{"kind":"dawnlist","format":2,', 2],
  ['{"kind":"dawnlist","format":0,', 0],
  ['{"kind":"dawnlist","format":123456,', 123456],
  ['{"kind":"dawnlist","format":1234567,', undefined],
  ['{"kind":"dawnlist","format":2', undefined],
  [' {"kind":"dawnlist","format":2,', undefined],
  ['', undefined],
])('the format in %s is %s', (text, format) => {
  expect(formatOf(Buffer.from(text))).toBe(format)
})

test('a first line tells format, revision, herd, sum and its own length', () => {
  expect(headerOf(Buffer.from(`${firstLine}{"id":1}`))).toEqual({ ...header, sum, length: firstLine.length })
  const longest = firstLine
    .replace('"format":1,', '"format":999999,')
    .replace('12', '999999999999999')
    .replace('7k2m9qxc4t0z', 'x'.repeat(32))
  expect(headerOf(Buffer.from(longest))).toMatchObject({ format: 999_999, revision: 999_999_999_999_999 })
})

test.each([
  ['a number that begins with a nought', firstLine.replace('"format":1', '"format":01')],
  ['a space more', firstLine.replace(':1,', ': 1,')],
  ['a sum cut short', firstLine.replace(sum, 'a'.repeat(63))],
  ['a herd with capitals', firstLine.replace('7k2m9qxc4t0z', '7K2M')],
  ['line ends of another system', firstLine.replace('\n', '\r\n')],
  ['nothing', ''],
])('a first line with %s is none', (_, text) => {
  expect(headerOf(Buffer.from(text))).toBeUndefined()
})

test('a file is taken apart into its header and its fact lines', () => {
  const layout = (text: string) => layoutOf(Buffer.from(text))
  expect(layout(`${firstLine}{"id":"a"}\n]}\n`)).toEqual({ ...header, sum, lines: Buffer.from('{"id":"a"}') })
  expect(layout(`${firstLine}\n]}\n`)).toEqual({ ...header, sum, lines: Buffer.alloc(0) })
  // The line feed of the first line is not also that of the last one.
  expect(layout(`${firstLine}]}\n`)).toBeUndefined()
  expect(layout(firstLine)).toBeUndefined()
  expect(layout(`${firstLine}{"id":"a"}\n]}`)).toBeUndefined()
  expect(layout(`${firstLine}{"id":"a"}\n]}\n\n`)).toBeUndefined()
  expect(layout('\n]}\n')).toBeUndefined()
})

test('the sum is that of the file with its digits as zeros, in however many pieces its lines come', async () => {
  const lines = Buffer.from('{"id":"a"},\n{"id":"b"}')
  const zeros = `${firstLine.replace(sum, '0'.repeat(64))}${lines}\n]}\n`
  const expected = createHash('sha256').update(zeros).digest('hex')
  expect(await sumOf(header, [lines])).toBe(expected)
  expect(await sumOf(header, [lines.subarray(0, 7), lines.subarray(7)])).toBe(expected)
  const { parts, sum: written } = await encodeFile(header, [lines])
  expect(written).toBe(expected)
  expect(Buffer.concat(parts).toString()).toBe(`${firstLine.replace(sum, expected)}${lines}\n]}\n`)
})

test('the sum of lines larger than a slice is the same', async () => {
  const lines = Buffer.alloc(2.5 * 1024 * 1024, 'x')
  const zeros = `${firstLine.replace(sum, '0'.repeat(64))}${lines}\n]}\n`
  expect(await sumOf(header, [lines])).toBe(createHash('sha256').update(zeros).digest('hex'))
})

const text = (lines: readonly Buffer[]): string => Buffer.concat(lines).toString()
const facts = (...ids: string[]): Fact[] => ids.map((id) => ({ id }) as Fact)

test('lines stand behind lines with a comma between them, and none where one of the two is empty', async () => {
  const [none, one, two] = [
    await encodeLines([]),
    await encodeLines(facts('a')),
    await encodeLines(facts('b', 'c')),
  ]
  expect(none).toEqual([])
  expect(text(joinLines(one, two))).toBe('{"id":"a"},\n{"id":"b"},\n{"id":"c"}')
  expect(text(joinLines(none, one))).toBe('{"id":"a"}')
  expect(text(joinLines(one, none))).toBe('{"id":"a"}')
  expect(joinLines(none, none)).toEqual([])
})

test('what came after known lines is found, and told from lines that are others', () => {
  const after = (known: readonly string[], lines: string): string | undefined =>
    linesAfter(
      known.map((each) => Buffer.from(each)),
      Buffer.from(lines),
    )?.toString()
  expect(after(['{1},\n{2}'], '{1},\n{2},\n{3}')).toBe('{3}')
  expect(after(['{1}', ',\n', '{2}'], '{1},\n{2},\n{3},\n{4}')).toBe('{3},\n{4}')
  expect(after(['{1},\n{2}'], '{1},\n{2}')).toBe('')
  expect(after([], '{1}')).toBe('{1}')
  expect(after([], '')).toBe('')
  expect(after(['{1}'], '{9},\n{2}')).toBeUndefined()
  expect(after(['{1}', ',\n', '{2}'], '{1},\n{9},\n{3}')).toBeUndefined()
  expect(after(['{1},\n{2}'], '{1}')).toBeUndefined()
  // The same beginning, and yet another line: the last known fact was longer.
  expect(after(['{1'], '{1}')).toBeUndefined()
})

test('a whole file is its first line, a fact a line, and its end', async () => {
  const bytes = await soundFile([note('one'), note('two')])
  const lines = bytes.toString().split('\n')
  expect(lines).toHaveLength(5)
  expect(lines.slice(3)).toEqual([']}', ''])
  expect(layoutOf(bytes)?.lines.toString()).toBe(lines.slice(1, 3).join('\n'))
})
