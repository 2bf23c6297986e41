/** The file vanishes or is replaced while it is open: durability table, row 8. */
import { expect, test } from 'vitest'
import { createHerdFile } from '../../source/herd/create.ts'
import { currentFormat } from '../../source/herd/format.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { codes, factsIn, good, herdPath, note, notesIn, smallHerd } from './support/herds.ts'
import { MemoryFiles } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

/** An open herd with one note saved, and its bytes before and after. */
async function openHerd() {
  const files = new MemoryFiles(['/farm', '/stick'])
  const world = memoryWorld({ files })
  good(await createHerdFile(herdPath, smallHerd, 'MK', world))
  const older = bytesOf(files)
  const herd = good(await openHerdFile(herdPath, world))
  good(await herd.record([note('first')]))
  return { files, world, herd, older, newer: bytesOf(files) }
}

const bytesOf = (files: MemoryFiles): Buffer => files.peek(herdPath) ?? Buffer.alloc(0)

test('a file that vanished is not made again; a copy elsewhere saves the day, and put back it goes on', async () => {
  const { files, world, herd } = await openHerd()
  await files.remove(herdPath)
  await herd.poll()
  expect(herd.state.trouble).toMatchObject([{ code: 'herd-vanished', path: herdPath }])
  expect(codes(await herd.record([note('second')]))).toEqual(['herd-vanished'])
  expect(files.peek(herdPath)).toBeUndefined()
  expect(notesIn(herd.facts)).toEqual(['first'])
  good(await herd.saveCopy('/stick/herd.json'))
  expect(notesIn(await factsIn(files.peek('/stick/herd.json')))).toEqual(['first', 'second'])
  expect(codes(await herd.saveCopy('/stick/herd.json'))).toEqual(['path-taken'])
  files.place(herdPath, files.peek('/stick/herd.json') ?? Buffer.alloc(0))
  await herd.poll()
  expect(herd.state).toMatchObject({ saving: 'saved', unsaved: [], trouble: [] })
  expect(notesIn(herd.facts)).toEqual(['first', 'second'])
  expect(notesIn(good(await openHerdFile(herdPath, world)).facts)).toEqual(['first', 'second'])
})

test('another herd in its place is refused', async () => {
  const { files, world, herd, newer } = await openHerd()
  await files.remove(herdPath)
  good(await createHerdFile(herdPath, smallHerd, 'MK', world))
  const stranger = bytesOf(files)
  await herd.poll()
  expect(herd.state.trouble).toMatchObject([{ code: 'herd-replaced' }])
  expect(codes(await herd.record([note('second')]))).toEqual(['herd-replaced'])
  expect(bytesOf(files)).toBe(stranger)
  files.place(herdPath, newer)
  await herd.poll()
  expect(notesIn(await factsIn(bytesOf(files)))).toEqual(['first', 'second'])
})

test('an older copy in its place: asked, and only then the union is saved', async () => {
  const { files, herd, older } = await openHerd()
  files.place(herdPath, older)
  await herd.poll()
  expect(herd.state.trouble).toMatchObject([{ code: 'herd-older', values: { found: 1, known: 2 } }])
  expect(codes(await herd.record([note('second')]))).toEqual(['herd-older'])
  expect(codes(await herd.retry())).toEqual(['herd-older'])
  expect(bytesOf(files)).toBe(older)
  good(await herd.retry(true))
  expect(notesIn(await factsIn(bytesOf(files)))).toEqual(['first', 'second'])
  expect(herd.state).toMatchObject({ saving: 'saved', unsaved: [], trouble: [], revision: 3 })
})

test('an older copy that went its own way is no older copy: both ways are kept', async () => {
  const { files, world, herd, older, newer } = await openHerd()
  good(await herd.record([note('second')]))
  files.place(herdPath, older)
  good(await good(await openHerdFile(herdPath, world)).record([note('elsewhere')]))
  await herd.poll()
  expect(notesIn(await factsIn(bytesOf(files)))).toEqual(['elsewhere', 'first', 'second'])
  expect(notesIn(herd.facts)).toEqual(['elsewhere', 'first', 'second'])
  expect(newer.length).toBeGreaterThan(older.length)
})

test('a newer format or a damaged file in its place is refused', async () => {
  for (const [bytes, code] of [
    [Buffer.from(`{"kind":"dawnlist","format":${currentFormat + 1},"herd":"x"}`), 'herd-newer'],
    [Buffer.from('{"kind":"dawn'), 'herd-damaged'],
    [Buffer.alloc(0), 'herd-empty'],
  ] as const) {
    const { files, herd } = await openHerd()
    files.place(herdPath, bytes)
    await herd.poll()
    expect(herd.state.trouble.map((problem) => problem.code)).toEqual([code])
    expect(codes(await herd.record([note('second')]))).toEqual([code])
    expect(bytesOf(files)).toBe(bytes)
    expect(notesIn(herd.facts)).toEqual(['first'])
  }
})

test('edited by hand while it is open: not written until the edits are accepted', async () => {
  const { files, herd } = await openHerd()
  const edited = Buffer.from(bytesOf(files).toString().replace('"lactation":2', '"lactation":3'))
  files.place(herdPath, edited)
  await herd.poll()
  expect(herd.state.trouble).toMatchObject([{ code: 'herd-edited' }])
  expect(codes(await herd.record([note('second')]))).toEqual(['herd-edited'])
  expect(bytesOf(files)).toBe(edited)
})

test('what another program recorded is taken in, before a save and by a look', async () => {
  const { world, herd } = await openHerd()
  const other = good(await openHerdFile(herdPath, world))
  let told = 0
  const end = herd.subscribe(() => {
    told += 1
  })
  good(await other.record([note('from the other')]))
  await herd.poll()
  expect(told).toBe(1)
  await herd.poll()
  expect(told).toBe(1)
  expect(notesIn(herd.facts)).toEqual(['first', 'from the other'])
  good(await other.record([note('again')]))
  good(await herd.record([note('mine')]))
  end()
  expect(notesIn(herd.facts)).toEqual(['first', 'from the other', 'again', 'mine'])
})

test('two facts of one id that differ are never merged', async () => {
  const { files, herd } = await openHerd()
  const changed = Buffer.from(bytesOf(files).toString().replace('"first"', '"other"'))
  files.place(herdPath, changed)
  const { acceptEdits } = await import('../../source/herd/accept-edits.ts')
  good(await acceptEdits(herdPath, memoryWorld({ files })))
  const accepted = bytesOf(files)
  await herd.poll()
  expect(herd.state.trouble).toMatchObject([{ code: 'fact-differs', values: { kind: 'note' } }])
  expect(codes(await herd.record([note('second')]))).toEqual(['fact-differs'])
  expect(bytesOf(files)).toBe(accepted)
})
