/** Copies of a herd: edited ones, ones left beside it, day copies, and bringing a damaged herd back. */
import { expect, test } from 'vitest'
import { acceptEdits } from '../../source/herd/accept-edits.ts'
import { createHerdFile } from '../../source/herd/create.ts'
import { mergeFiles } from '../../source/herd/merge-files.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { backupsOf, restoreHerdFile } from '../../source/herd/restore.ts'
import type { Environment } from '../../source/herd/store/environment.ts'
import { codes, factsIn, good, herdPath, note, notesIn, smallHerd } from './support/herds.ts'
import { MemoryFiles } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

const beside = '/farm/herd (copy of the other computer).json'

async function herdOnDisk(change: Partial<Environment> = {}) {
  const files = new MemoryFiles(['/farm', '/stick'])
  const world = memoryWorld({ files, ...change })
  good(await createHerdFile(herdPath, smallHerd, 'MK', world))
  const record = async (text: string, path = herdPath): Promise<void> => {
    good(await good(await openHerdFile(path, world)).record([note(text)]))
  }
  const bytes = (path = herdPath): Buffer => files.peek(path) ?? Buffer.alloc(0)
  return { files, world, record, bytes }
}

test('edits are accepted after the schema has judged them; the edited file is kept as it was', async () => {
  const { files, world, bytes } = await herdOnDisk()
  expect(codes(await acceptEdits(herdPath, world))).toEqual(['herd-unedited'])
  const edited = Buffer.from(
    `\ufeff${JSON.stringify(JSON.parse(bytes().toString()), null, 2).replace('"lactation": 2', '"lactation": 3')}`,
  )
  files.place(herdPath, edited)
  const accepted = good(await acceptEdits(herdPath, world))
  expect(accepted).toMatchObject({ revision: 2, kept: '/farm/backups/herd.edited-2026-05-28.json' })
  expect(files.peek(accepted.kept)?.equals(edited)).toBe(true)
  expect(bytes().toString()).toContain('"lactation":3')
  expect(good(await openHerdFile(herdPath, world)).mode).toBe('writable')
  const wrong = Buffer.from(bytes().toString().replace('"lactation":3', '"lactation":-3'))
  files.place(herdPath, wrong)
  const refused = await acceptEdits(herdPath, world)
  expect(refused).toMatchObject({
    ok: false,
    problems: [
      { code: 'herd-invalid', values: { count: 1 } },
      { code: 'field-too-small', path: '/farm/herd.json:4: facts[2].lactation', animal: '412' },
    ],
  })
  expect(bytes()).toBe(wrong)
})

test('a copy beside the herd that holds more is named, merged, and then no more named', async () => {
  const { files, world, record, bytes } = await herdOnDisk()
  files.place(beside, bytes())
  const herd = good(await openHerdFile(herdPath, world))
  await herd.poll()
  expect(herd.problems).toEqual([])
  await record('on the other computer', beside)
  await record('on this one')
  await herd.poll()
  expect(herd.problems).toMatchObject([
    { code: 'copy-with-more', path: beside, severity: 'notice', values: { facts: 1, file: herdPath } },
  ])
  const before = bytes(beside)
  expect(good(await mergeFiles(herdPath, beside, world))).toMatchObject({ revision: 3, notices: [] })
  expect(bytes(beside)).toBe(before)
  await herd.poll()
  expect(herd.problems).toEqual([])
  expect(notesIn(herd.facts)).toEqual(['on this one', 'on the other computer'])
  expect(good(await mergeFiles(herdPath, beside, world)).added).toEqual([])
  expect(notesIn(await factsIn(bytes()))).toEqual(['on this one', 'on the other computer'])
})

test('a copy that is damaged, edited or of another herd is never merged', async () => {
  const { files, world, record, bytes } = await herdOnDisk()
  files.place(beside, bytes())
  await record('more', beside)
  const whole = bytes(beside).toString()
  const mine = bytes()
  files.place(beside, Buffer.from(whole.replace('"more"', '"less"')))
  expect(codes(await mergeFiles(herdPath, beside, world))).toEqual(['herd-edited'])
  files.place(beside, Buffer.from(whole.slice(0, -20)))
  expect(codes(await mergeFiles(herdPath, beside, world))).toEqual(['herd-damaged'])
  const herd = good(await openHerdFile(herdPath, world))
  await herd.poll()
  expect(herd.problems).toMatchObject([{ code: 'copy-unclear', path: beside }])
  await files.remove(beside)
  good(await createHerdFile(beside, smallHerd, 'MK', world))
  expect(codes(await mergeFiles(herdPath, beside, world))).toEqual(['herd-replaced'])
  await herd.poll()
  expect(herd.problems).toEqual([])
  expect(bytes()).toBe(mine)
})

test('the herd as it stood before the first save of a day on the farm is kept, for the 30 latest days', async () => {
  let now = new Date('2026-05-28T22:30:00Z')
  const { files, world, record, bytes } = await herdOnDisk({ now: () => now })
  const first = bytes()
  await record('one')
  await record('two')
  // 23:30 in Dublin, then past midnight there: a new day on the farm, still the 28th in UTC.
  expect(await backupsOf(herdPath, world)).toEqual(['/farm/backups/herd.2026-05-28.json'])
  expect(bytes('/farm/backups/herd.2026-05-28.json').equals(first)).toBe(true)
  now = new Date('2026-05-28T23:30:00Z')
  await record('three')
  expect((await backupsOf(herdPath, world))[0]).toBe('/farm/backups/herd.2026-05-29.json')
  expect(notesIn(await factsIn(bytes('/farm/backups/herd.2026-05-29.json')))).toEqual(['one', 'two'])
  for (let day = 0; day < 40; day += 1) {
    now = new Date(now.getTime() + 24 * 3600 * 1000)
    await record(`day ${day}`)
  }
  expect(await backupsOf(herdPath, world)).toHaveLength(30)
  expect((await backupsOf(herdPath, world))[0]).toBe('/farm/backups/herd.2026-07-08.json')
  expect(files.paths()).toHaveLength(31)
})

test('a missing herd is brought back from its newest whole day copy', async () => {
  const { files, world, record, bytes } = await herdOnDisk()
  expect(codes(await restoreHerdFile(herdPath, undefined, world))).toEqual(['no-backup'])
  await record('one')
  expect(codes(await restoreHerdFile(herdPath, undefined, world))).toEqual(['restore-needless'])
  await files.remove(herdPath)
  files.place('/farm/backups/herd.2026-05-30.json', Buffer.from('{"damaged'))
  const restored = good(await restoreHerdFile(herdPath, undefined, world))
  expect(restored).toMatchObject({ from: '/farm/backups/herd.2026-05-28.json', recovered: [], revision: 2 })
  expect('kept' in restored).toBe(false)
  expect(notesIn(await factsIn(bytes()))).toEqual([])
})

test('a damaged herd is brought back with every fact that can still be read, and the damaged file is kept', async () => {
  const { files, world, record, bytes } = await herdOnDisk()
  for (const text of ['one', 'two', 'three']) await record(text)
  const damaged = Buffer.from(bytes().toString().replace('"note":"two"', '"note":"two').slice(0, -30))
  files.place(herdPath, damaged)
  expect(codes(await openHerdFile(herdPath, world))).toEqual(['herd-damaged', 'backups-there'])
  const restored = good(await restoreHerdFile(herdPath, undefined, world))
  expect(notesIn(restored.recovered)).toEqual(['one'])
  expect(restored).toMatchObject({ revision: 5, kept: '/farm/backups/herd.replaced-2026-05-28.json' })
  expect(bytes('/farm/backups/herd.replaced-2026-05-28.json').equals(damaged)).toBe(true)
  expect(notesIn(await factsIn(bytes()))).toEqual(['one'])
})

test('a program that has the herd open gives back what the restored copy lacks', async () => {
  const { files, world, record, bytes } = await herdOnDisk()
  await record('one')
  const herd = good(await openHerdFile(herdPath, world))
  good(await herd.record([note('two')]))
  for (const damaged of [bytes().toString().slice(0, 300), 'no header left']) {
    files.place(herdPath, Buffer.from(damaged))
    good(await restoreHerdFile(herdPath, undefined, world))
    await herd.poll()
    // Where the revision could not be read any more, the restored file looks like an older copy: then it is asked.
    if (!damaged.startsWith('{')) expect(herd.state.trouble).toMatchObject([{ code: 'herd-older' }])
    if (!damaged.startsWith('{')) good(await herd.retry(true))
    expect(notesIn(await factsIn(bytes()))).toEqual(['one', 'two'])
  }
  expect(herd.state).toMatchObject({ saving: 'saved', trouble: [], unsaved: [] })
})

test('a whole file gives way only to a copy that is named; a stranger and a newer format never do', async () => {
  const { files, world, record, bytes } = await herdOnDisk()
  await record('one')
  const [copy = ''] = await backupsOf(herdPath, world)
  files.place('/stick/copy.json', bytes(copy))
  expect(good(await restoreHerdFile(herdPath, '/stick/copy.json', world)).recovered.length).toBe(1)
  await files.remove(herdPath)
  good(await createHerdFile(herdPath, smallHerd, 'MK', world))
  expect(codes(await restoreHerdFile(herdPath, '/stick/copy.json', world))).toEqual(['herd-replaced'])
  const newer = Buffer.from('{"kind":"dawnlist","format":2,"x":1}')
  files.place(herdPath, newer)
  expect(codes(await restoreHerdFile(herdPath, '/stick/copy.json', world))).toEqual(['herd-newer'])
  expect(bytes()).toBe(newer)
})

test('only the half-written files of this herd and of its copies are swept away', async () => {
  const { files, world } = await herdOnDisk()
  const ours = [
    '/farm/.herd.json.0123456789ab.temp',
    '/farm/backups/.herd.2026-05-28.json.0123456789ab.temp',
    '/farm/backups/.herd.format-0.2.json.0123456789ab.temp',
  ]
  const others = [
    '/farm/.herd.old.json.0123456789ab.temp',
    '/farm/.herd.json.lock.temp',
    '/farm/backups/.herd.old.2026-05-28.json.0123456789ab.temp',
  ]
  await files.makeFolder('/farm/backups')
  for (const path of [...ours, ...others]) files.place(path, Buffer.from('half'))
  good(await openHerdFile(herdPath, world))
  expect(files.paths().filter((path) => path.endsWith('.temp'))).toEqual(others)
})
