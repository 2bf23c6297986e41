/** Older and newer formats: durability table, row 10. Format 0 exists in this test alone: it said `what` for `kind`. */
import { readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import type { Migration } from '../../source/herd/migrations.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { codes, factsIn, good, herdPath, note, notesIn } from './support/herds.ts'
import { intercept } from './support/intercept.ts'
import { MemoryFiles, systemError } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

const sample = new URL('./samples/format-0.herd', import.meta.url)
const kindSaidWhat: Migration = {
  from: 0,
  migrate: (facts) =>
    facts.map((fact) => {
      const { what, ...rest } = fact as { what: string }
      return { ...rest, kind: what }
    }),
}

async function oldHerd() {
  const old = await readFile(sample)
  const files = new MemoryFiles()
  files.place(herdPath, old)
  return { old, files, world: memoryWorld({ files, migrations: [kindSaidWhat] }) }
}

test('an older format is migrated in memory; the first save keeps the old bytes, once, and writes the new format', async () => {
  const { old, files, world } = await oldHerd()
  const herd = good(await openHerdFile(herdPath, world))
  expect(herd.facts.map((fact) => fact.kind)).toEqual(['farm', 'animal', 'note'])
  expect(files.peek(herdPath)).toBe(old)
  good(await herd.record([note('first', 'cow412')]))
  good(await herd.record([note('second', 'cow412')]))
  expect(files.peek('/farm/backups/herd.format-0.json')?.equals(old)).toBe(true)
  expect(files.paths().filter((path) => path.includes('format-0'))).toHaveLength(1)
  expect(notesIn(await factsIn(files.peek(herdPath)))).toEqual(['kept from format 0', 'first', 'second'])
  expect(files.peek(herdPath)?.toString()).toContain('"format":1,"revision":9,')
})

test('where the old bytes cannot be kept nothing is saved', async () => {
  const { old, files, world } = await oldHerd()
  const failing = intercept(files, (_, path) => {
    if (path.includes('backups')) throw systemError('ENOSPC')
  })
  const herd = good(await openHerdFile(herdPath, { ...world, files: failing }))
  expect(codes(await herd.record([note('first', 'cow412')]))).toEqual(['disk-full'])
  expect(files.peek(herdPath)).toBe(old)
})

test('a format without a migration, and a migrated file that the schema refuses, are faults', async () => {
  const { files, world } = await oldHerd()
  expect(codes(await openHerdFile(herdPath, { ...world, migrations: [] }))).toEqual(['herd-format-unknown'])
  const wrong: Migration = { from: 0, migrate: (facts) => facts }
  expect(codes(await openHerdFile(herdPath, { ...world, migrations: [wrong] }))).toContain('field-missing')
  expect(files.paths()).toEqual([herdPath])
})

test('a newer format is refused with both numbers', async () => {
  const files = new MemoryFiles()
  const newer = Buffer.from('{"kind":"dawnlist","format":7,"anything":[\n1\n]}\n')
  files.place(herdPath, newer)
  const opened = await openHerdFile(herdPath, memoryWorld({ files }))
  expect(opened).toMatchObject({
    ok: false,
    problems: [{ code: 'herd-newer', values: { found: 7, known: 1 } }],
  })
  expect(files.peek(herdPath)).toBe(newer)
})
