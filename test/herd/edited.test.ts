/** A herd file that someone edited by hand, and what is told where it went wrong. */
import { expect, test } from 'vitest'
import { createHerdFile } from '../../source/herd/create.ts'
import { readEdited } from '../../source/herd/edited.ts'
import { currentFormat } from '../../source/herd/format.ts'
import type { Migration } from '../../source/herd/migrations.ts'
import { good, herdPath, note, smallHerd } from './support/herds.ts'
import { MemoryFiles } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

/** What a herd file holds as an editor shows it. */
async function herdText(): Promise<string> {
  const files = new MemoryFiles()
  good(await createHerdFile(herdPath, [...smallHerd, note('seen')], 'MK', memoryWorld({ files })))
  return files.peek(herdPath)?.toString('utf8') ?? ''
}
/** What it holds, with other fields in its header. */
const withHeader = async (fields: object): Promise<Buffer> =>
  Buffer.from(JSON.stringify({ ...JSON.parse(await herdText()), ...fields }))
/** Code and values of each problem of bytes that are refused. */
const refused = async (bytes: Buffer, steps?: readonly Migration[]): Promise<unknown[]> => {
  const read = await readEdited(bytes, 'farm.json', steps)
  return read.state === 'fault' ? read.problems.map(({ code, values }) => [code, values]) : []
}
const problemsOf = async (text: string): Promise<readonly string[]> => {
  const read = await readEdited(Buffer.from(text), 'farm.json')
  return read.state === 'fault' ? read.problems.map(({ code, path }) => `${code} ${path}`) : []
}

test('one wrong fact is named with its line', async () => {
  const text = (await herdText()).replace('"note":"seen"', '"note":7')
  const line = text.split('\n').findIndex((each) => each.includes('"note":7')) + 1
  expect(await problemsOf(text)).toEqual([
    'herd-invalid farm.json',
    `field-type farm.json:${line}: facts[${line - 2}].note`,
  ])
})

test('without its line where an editor broke the lines anew', async () => {
  const data = JSON.parse((await herdText()).replace('"note":"seen"', '"note":7')) as { facts: unknown[] }
  expect(await problemsOf(JSON.stringify(data, undefined, 2))).toEqual([
    'herd-invalid farm.json',
    `field-type farm.json: facts[${data.facts.length - 1}].note`,
  ])
})

test('without its line where lines were added or taken out, for then a line number would mislead', async () => {
  const text = (await herdText()).replace('"note":"seen"', '"note":7')
  const facts = JSON.parse(text).facts.length
  for (const changed of [text.replace('\n]}', '\n\n]}'), text.replace('},\n', '},')])
    expect(await problemsOf(changed)).toEqual([
      'herd-invalid farm.json',
      `field-type farm.json: facts[${facts - 1}].note`,
    ])
})

test('with its line where an editor of another system ends lines in its way', async () => {
  const text = (await herdText()).replace('"name":"Long Acre"', '"name":""').replaceAll('\n', '\r\n')
  expect(await problemsOf(text)).toEqual(['herd-invalid farm.json', 'field-empty farm.json:2: facts[0].name'])
})

test('fifty wrong facts are named, and no more; all of them are counted', async () => {
  const bytes = await withHeader({ facts: Array.from({ length: 60 }, () => 1) })
  const problems = await refused(bytes)
  expect(problems).toHaveLength(51)
  expect(problems[0]).toEqual(['herd-invalid', { count: 60 }])
})

test('what is only worth a notice keeps no file from being read', async () => {
  const bytes = Buffer.from((await herdText()).replace('"number":"7"', '"number":"412"'))
  const read = await readEdited(bytes, 'farm.json')
  const { facts, herd, revision } = JSON.parse(bytes.toString())
  expect(read).toEqual({ state: 'edited', herd: { format: 1, revision, herdId: herd, facts, lines: [] } })
})

test.each([
  ['facts', [{}, undefined, null, 'facts']],
  ['revision', [-1, 1.5, '1', null, 1e12 + 1]],
  ['format', [-1, 1.5, 'one', null, 1e12 + 1]],
  ['herd', ['NO HERD', '', 'x'.repeat(33), 7]],
])('a wrong %s in its header is named', async (field, values) => {
  for (const value of values)
    expect(await refused(await withHeader({ [field]: value }))).toEqual([['header-field', { field }]])
})

test('all that is wrong in its header is named at once', async () => {
  const all = await refused(Buffer.from('{"kind":"dawnlist"}'))
  expect(all).toEqual(['format', 'revision', 'herd', 'facts'].map((field) => ['header-field', { field }]))
})

test('the last number of a save that there can be is no fault, nor is the first', async () => {
  for (const revision of [0, 1e12]) expect(await refused(await withHeader({ revision }))).toEqual([])
})

test.each(['null', '7', '"text"', '[]', '{}', '{"kind":"other","format":1}'])(
  '%s is JSON of another kind',
  async (text) => {
    expect(await refused(Buffer.from(text))).toEqual([['herd-other-json', undefined]])
  },
)

test('a newer format is refused with both numbers, an older one needs its migration', async () => {
  const format = currentFormat + 1
  expect(await refused(await withHeader({ format }))).toEqual([
    ['herd-newer', { found: format, known: currentFormat }],
  ])
  const old = await withHeader({ format: 0 })
  expect(await refused(old)).toEqual([['herd-format-unknown', { found: 0, known: currentFormat }]])
  expect(await readEdited(old, 'farm.json', [{ from: 0, migrate: (facts) => facts }])).toMatchObject({
    state: 'edited',
    herd: { format: 0 },
  })
})

test('a broken file is named with the line where it breaks', async () => {
  const lines = (await herdText()).split('\n')
  const broken = (at: number): Buffer =>
    Buffer.from(lines.map((line, place) => (place === at ? line.slice(0, 30) : line)).join('\n'))
  expect(await refused(broken(2))).toEqual([['herd-damaged', { line: 3 }]])
  expect(await refused(broken(lines.length - 3))).toEqual([['herd-damaged', { line: lines.length - 2 }]])
  const two = Buffer.from(broken(2).toString().replace('"note":"seen"', '"note":"seen'))
  expect(await refused(two)).toEqual([['herd-damaged', { line: 3 }]])
  // Without its last bracket a fact breaks the reading only in the line after it.
  const open = lines.map((line, place) => (place === 2 ? line.slice(0, line.lastIndexOf('}')) : line))
  expect(await refused(Buffer.from(open.join('\n')))).toEqual([['herd-damaged', { line: 3 }]])
  const windows = Buffer.from(broken(3).toString().replaceAll('\n', '\r\n'))
  expect(await refused(windows)).toEqual([['herd-damaged', { line: 4 }]])
})

test('where every fact is whole the line is where reading stopped, and none where that is not known', async () => {
  const text = await herdText()
  expect(await refused(Buffer.from(text.replace('},\n', '}\n')))).toEqual([['herd-damaged', { line: 3 }]])
  expect(await refused(Buffer.from(text.replace('"facts":[', '"facts":')))).toEqual([
    ['herd-damaged', { line: 3 }],
  ])
  expect(await refused(Buffer.from(''))).toEqual([['herd-damaged', { line: 0 }]])
  const noText = Buffer.from(text.replace('seen', 'se\u00ffn'), 'latin1')
  expect(await refused(noText)).toEqual([['herd-damaged', { line: 0 }]])
})

test('a herd is not created of one wrong fact', async () => {
  const wrong = { ...note('seen'), date: '2026-02-30' as const }
  const files = new MemoryFiles()
  const made = await createHerdFile(herdPath, [...smallHerd, wrong], 'MK', memoryWorld({ files }))
  expect(made.ok).toBe(false)
  expect(files.peek(herdPath)).toBeUndefined()
})
