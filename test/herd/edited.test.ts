/** A herd file that someone edited by hand, and what is told where it went wrong. */
import { expect, test } from 'vitest'
import { createHerdFile } from '../../source/herd/create.ts'
import { readEdited } from '../../source/herd/edited.ts'
import { good, herdPath, note, smallHerd } from './support/herds.ts'
import { MemoryFiles } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

/** What a herd file holds as an editor shows it. */
async function herdText(): Promise<string> {
  const files = new MemoryFiles()
  good(await createHerdFile(herdPath, [...smallHerd, note('seen')], 'MK', memoryWorld({ files })))
  return files.peek(herdPath)?.toString('utf8') ?? ''
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

test('fifty wrong facts are named, and no more', async () => {
  const data = JSON.parse(await herdText()) as { facts: unknown[] }
  const problems = await problemsOf(JSON.stringify({ ...data, facts: Array.from({ length: 60 }, () => 1) }))
  expect(problems.length).toBe(51)
})

test.each([
  ['facts', {}],
  ['revision', -1],
  ['format', 'one'],
  ['herd', 'NO HERD'],
])('a wrong %s in its header is named', async (field, value) => {
  const data = JSON.parse(await herdText()) as Record<string, unknown>
  const read = await readEdited(Buffer.from(JSON.stringify({ ...data, [field]: value })), 'farm.json')
  expect(read).toMatchObject({ problems: [{ code: 'header-field', values: { field } }] })
})

test('a herd is not created of one wrong fact', async () => {
  const wrong = { ...note('seen'), date: '2026-02-30' as const }
  const files = new MemoryFiles()
  const made = await createHerdFile(herdPath, [...smallHerd, wrong], 'MK', memoryWorld({ files }))
  expect(made.ok).toBe(false)
  expect(files.peek(herdPath)).toBeUndefined()
})
