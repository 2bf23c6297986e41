/** Every herd file of the repository, trusted by its sum and judged by the whole schema: the same herd both ways. */
import { readdirSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { checkFacts } from '../../source/herd/check.ts'
import { readHerd } from '../../source/herd/reading.ts'

const folder = new URL('../../sample-herd/', import.meta.url)
const files = readdirSync(folder).filter((name) => name.endsWith('.json'))

test('there are sample herds', () => expect(files).toContain('sample-herd.json'))

for (const name of files) {
  test(`${name} is sound, and the schema has nothing against it`, async () => {
    const bytes = await readFile(new URL(name, folder))
    const trusted = await readHerd(bytes, name)
    if (trusted.state !== 'sound') throw new Error(`not sound: ${JSON.stringify(trusted)}`)
    expect(checkFacts(trusted.herd.facts)).toEqual([])
    const judged = await readHerd(Buffer.concat([bytes, Buffer.from('\n')]), name)
    if (judged.state !== 'edited') throw new Error(`not valid: ${JSON.stringify(judged)}`)
    expect(judged.herd.facts).toEqual(trusted.herd.facts)
  })
}
