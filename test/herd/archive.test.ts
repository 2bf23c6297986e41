/** Closing old seasons: at every instant each fact is in the herd or in the archive, and copies do not bring it back. */
import { expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { archiveHerdFile, lookAtArchive } from '../../source/herd/archive.ts'
import { checkFacts } from '../../source/herd/check.ts'
import { createHerdFile } from '../../source/herd/create.ts'
import { mergeFiles } from '../../source/herd/merge-files.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { restoreHerdFile } from '../../source/herd/restore.ts'
import { codes, factsIn, good, herdPath, note, notesIn, oldHerd, oldNote } from './support/herds.ts'
import { type Call, intercept } from './support/intercept.ts'
import { MemoryFiles, systemError } from './support/memory-files.ts'
import { memoryWorld, seeded } from './support/worlds.ts'

const archivePath = '/farm/herd.archive-2026-05-28.json'
const beside = '/farm/herd (of the other computer).json'

/** A herd with two old notes and a new one. */
async function oldFarm() {
  const files = new MemoryFiles()
  const world = memoryWorld({ files })
  good(await createHerdFile(herdPath, oldHerd, 'MK', world))
  const herd = good(await openHerdFile(herdPath, world))
  good(await herd.record([oldNote('old one'), oldNote('old two'), note('new')]))
  const texts = async (path = herdPath): Promise<string[]> => notesIn(await factsIn(files.peek(path)))
  return { files, world, herd, texts }
}

test('the archive is the herd as it stood, byte for byte; the herd goes on without what went', async () => {
  const { files, world, texts } = await oldFarm()
  const before = files.peek(herdPath)
  const seen = good(await lookAtArchive(herdPath, world))
  expect(seen).toMatchObject({ before: '2024-03-27', stay: 11, file: undefined })
  expect(notesIn(seen.went)).toEqual(['old one', 'old two'])
  expect(files.peek(herdPath)).toBe(before)
  const archived = good(await archiveHerdFile(herdPath, 'MK', world))
  expect(archived).toMatchObject({ file: archivePath, stay: 11, notices: [] })
  expect(files.peek(archivePath)).toEqual(before)
  expect((await files.stamp(archivePath)).mode).toBe(0o444)
  expect(await texts()).toEqual(['new'])
  const told = (await factsIn(files.peek(herdPath))).at(-1)
  expect(told).toMatchObject({
    kind: 'archive',
    by: 'MK',
    date: '2026-05-28',
    before: '2024-03-27',
    file: 'herd.archive-2026-05-28.json',
    took: archived.went.map(({ id }) => id),
  })
  expect(checkFacts(await factsIn(files.peek(herdPath)))).toEqual([])
  expect(good(await archiveHerdFile(herdPath, 'MK', world))).toMatchObject({ went: [], file: undefined })
  const open = good(await openHerdFile(archivePath, world))
  expect(notesIn(open.facts)).toEqual(['old one', 'old two', 'new'])
})

test('a program that is open takes over what went, and keeps what it has not saved', async () => {
  const { files, world, texts } = await oldFarm()
  let full = false
  const failing = intercept(files, (call) => {
    if (full && call === 'write') throw systemError('ENOSPC')
  })
  const open = good(await openHerdFile(herdPath, memoryWorld({ files: failing })))
  full = true
  expect(codes(await open.record([note('not saved'), oldNote('old and not saved')]))).toEqual(['disk-full'])
  good(await archiveHerdFile(herdPath, 'MK', world))
  full = false
  await open.poll()
  expect(open.state).toMatchObject({ saving: 'saved', unsaved: [], trouble: [] })
  expect(notesIn(open.facts)).toEqual(['new', 'not saved', 'old and not saved'])
  expect(await texts()).toEqual(['new', 'not saved', 'old and not saved'])
})

test('a program that only looks on takes over what went too', async () => {
  const { world } = await oldFarm()
  const open = good(await openHerdFile(herdPath, world))
  good(await archiveHerdFile(herdPath, 'MK', world))
  await open.poll()
  expect(notesIn(open.facts)).toEqual(['new'])
  good(await open.record([note('later')]))
  expect(notesIn(open.facts)).toEqual(['new', 'later'])
})

test('the archive, when it is looked at, does not ask for what the herd beside it holds more', async () => {
  const { world } = await oldFarm()
  good(await archiveHerdFile(herdPath, 'MK', world))
  good(await good(await openHerdFile(herdPath, world)).record([note('later')]))
  const past = good(await openHerdFile(archivePath, world))
  await past.poll()
  expect(past.problems).toEqual([])
})

test('a copy from before is not named, brings back nothing old, and what is new in it is added', async () => {
  const { files, world, herd, texts } = await oldFarm()
  files.place(beside, files.peek(herdPath) ?? Buffer.alloc(0))
  good(await archiveHerdFile(herdPath, 'MK', world))
  await herd.poll()
  expect(herd.problems).toEqual([])
  const old = good(await openHerdFile(beside, world))
  const oldOne = old.facts.find((fact) => fact.kind === 'note') as Fact
  good(
    await old.record([
      note('on the other computer'),
      { kind: 'correction', about: oldOne.about, date: oldOne.date, voids: oldOne.id },
    ]),
  )
  await herd.poll()
  expect(herd.problems).toMatchObject([{ code: 'copy-with-more', values: { facts: 2 } }])
  expect(good(await mergeFiles(herdPath, beside, world)).added).toHaveLength(2)
  expect(await texts()).toEqual(['new', 'on the other computer'])
  // A correction of a fact that went names what the archive has: nothing is wrong with it.
  expect(checkFacts(await factsIn(files.peek(herdPath)))).toEqual([])
})

test('both computers archived: the union of the two says what went from either', async () => {
  const { files, world, texts } = await oldFarm()
  files.place(beside, files.peek(herdPath) ?? Buffer.alloc(0))
  good(await archiveHerdFile(herdPath, 'MK', world))
  good(await good(await openHerdFile(beside, world)).record([oldNote('only there')]))
  good(await archiveHerdFile(beside, 'OB', world))
  good(await mergeFiles(herdPath, beside, world))
  expect(await texts()).toEqual(['new'])
  expect((await factsIn(files.peek(herdPath))).filter(({ kind }) => kind === 'archive')).toHaveLength(2)
})

test('an older copy in the place of an archived herd is refused as such', async () => {
  const { files, world } = await oldFarm()
  const older = files.peek(herdPath) ?? Buffer.alloc(0)
  good(await archiveHerdFile(herdPath, 'MK', world))
  const herd = good(await openHerdFile(herdPath, world))
  files.place(herdPath, older)
  expect(codes(await herd.record([note('later')]))).toEqual(['herd-older'])
})

test('a herd edited by hand, or with nothing old, is left as it is', async () => {
  const { files, world } = await oldFarm()
  const edited = Buffer.from((files.peek(herdPath) ?? '').toString().replace('old one', 'old ONE'))
  files.place(herdPath, edited)
  expect(codes(await archiveHerdFile(herdPath, 'MK', world))).toEqual(['herd-edited'])
  expect(files.peek(herdPath)).toBe(edited)
  files.place(herdPath, Buffer.from(''))
  expect(codes(await archiveHerdFile(herdPath, 'MK', world))).toEqual(['herd-empty'])
  const young = '/farm/young.json'
  good(await createHerdFile(young, oldHerd.slice(0, 4), 'MK', world))
  expect(good(await archiveHerdFile(young, 'MK', world))).toMatchObject({ before: undefined, went: [] })
  expect(files.paths().filter((path) => path.includes('archive'))).toEqual([])
})

test('a day copy from before brings everything back, with what came after; the archive does so too', async () => {
  const { files, world, texts } = await oldFarm()
  const whole = files.peek(herdPath) ?? Buffer.alloc(0)
  good(await archiveHerdFile(herdPath, 'MK', world))
  good(await good(await openHerdFile(herdPath, world)).record([note('later')]))
  const damaged = Buffer.from((files.peek(herdPath) ?? '').toString().replace('"farm"', '"fa'))
  for (const from of ['/farm/backups/herd.2026-05-27.json', archivePath]) {
    files.place('/farm/backups/herd.2026-05-27.json', whole)
    files.place(herdPath, damaged)
    const restored = good(await restoreHerdFile(herdPath, from, world))
    expect(notesIn(restored.recovered)).toEqual(['later'])
    expect(await texts()).toEqual(['old one', 'old two', 'new', 'later'])
    expect(restored.facts.some(({ kind }) => kind === 'archive')).toBe(false)
  }
})

test('a day copy from after has the archive too', async () => {
  const { files, texts } = await oldFarm()
  const next = memoryWorld({ files, now: () => new Date('2026-05-29T04:15:09.120Z') })
  good(await archiveHerdFile(herdPath, 'MK', memoryWorld({ files })))
  good(await good(await openHerdFile(herdPath, next)).record([note('later')]))
  files.place(herdPath, Buffer.from('broken'))
  const restored = good(await restoreHerdFile(herdPath, undefined, next))
  expect(restored.facts.at(-1)?.kind).toBe('archive')
  expect(await texts()).toEqual(['new'])
})

const outcomes = [['new'], ['old one', 'old two', 'new']]

for (const ever of [false, true]) {
  test(`any call of the system fails ${ever ? 'from then on' : 'once'}: the herd is as before or archived, and a retry works`, async () => {
    const calls: Call[] = []
    for (let n = 1; ; n += 1) {
      const { files, world, texts } = await oldFarm()
      let left = n
      let failed: Call | undefined
      const failing = intercept(files, (call) => {
        left -= 1
        if (left > 0 || (left < 0 && !ever)) return
        failed ??= call
        throw systemError('EIO')
      })
      const outcome = await archiveHerdFile(herdPath, 'MK', memoryWorld({ files: failing }))
      if (!outcome.ok) expect(outcome.problems).toMatchObject([{ code: 'disk-error', severity: 'fault' }])
      expect(outcomes).toContainEqual(await texts())
      if (outcome.ok || (await texts()).length === 1) expect(await texts(archivePath)).toEqual(outcomes[1])
      good(await archiveHerdFile(herdPath, 'MK', world))
      expect(await texts()).toEqual(outcomes[0])
      expect(await texts(archivePath)).toEqual(outcomes[1])
      good(await openHerdFile(herdPath, world))
      const paths = files.paths().filter((path) => !path.includes('/backups/'))
      expect(paths.toSorted()).toEqual([archivePath, herdPath].toSorted())
      if (failed === undefined) break
      calls.push(failed)
    }
    expect(calls).toEqual(
      expect.arrayContaining(['mayWrite', 'read', 'create', 'link', 'rename', 'syncFolder']),
    )
  })
}

test('a power cut after any call: every fact is in the herd or in the archive', async () => {
  let cuts = 0
  for (let last = 1; ; last += 1) {
    const { files } = await oldFarm()
    let calls = 0
    const dying = intercept(files, () => {
      calls += 1
      if (calls > last) throw systemError('EIO')
    })
    const outcome = await archiveHerdFile(herdPath, 'MK', memoryWorld({ files: dying }))
    for (let fate = 1; fate <= 20; fate += 1) {
      cuts += 1
      const after = files.afterPowerCut(seeded(last * 1000 + fate))
      const there = notesIn(await factsIn(after.peek(herdPath)))
      expect(outcome.ok ? [outcomes[0]] : outcomes).toContainEqual(there)
      if (there.length === 1) expect(notesIn(await factsIn(after.peek(archivePath)))).toEqual(outcomes[1])
      const world = memoryWorld({ files: after })
      const again = good(await archiveHerdFile(herdPath, 'MK', world))
      expect(notesIn(await factsIn(after.peek(again.file ?? archivePath)))).toEqual(outcomes[1])
    }
    if (calls <= last) break
  }
  expect(cuts).toBeGreaterThan(300)
})
