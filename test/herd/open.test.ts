/** Opening, making, merging and restoring: what is told, and which revision comes of it. */
import { expect, test } from 'vitest'
import type { NewFact } from '../../source/breeding/facts.ts'
import type { Outcome } from '../../source/breeding/problem.ts'
import { acceptEdits } from '../../source/herd/accept-edits.ts'
import { archiveHerdFile } from '../../source/herd/archive.ts'
import { createHerdFile } from '../../source/herd/create.ts'
import { mergeFiles } from '../../source/herd/merge-files.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { backupsOf, restoreHerdFile } from '../../source/herd/restore.ts'
import { DurableFile } from '../../source/herd/store/adapter.ts'
import type { Environment } from '../../source/herd/store/environment.ts'
import type { Files } from '../../source/herd/store/files.ts'
import { pathsOf } from '../../source/herd/store/paths.ts'
import { codes, factsIn, good, herdPath, note, notesIn, smallHerd, soundFile } from './support/herds.ts'
import { type Call, intercept } from './support/intercept.ts'
import { MemoryFiles, systemError } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

const start = asFacts(smallHerd, { at: new Date('2026-05-28T04:15:09.120Z') })
const stick = '/stick/herd.json'
const filesWith = (placed: Readonly<Record<string, Buffer>>): MemoryFiles => {
  const files = new MemoryFiles(['/farm', '/farm/backups', '/stick'])
  for (const [path, bytes] of Object.entries(placed)) files.place(path, bytes)
  return files
}
const failingAt = (files: MemoryFiles, failing: Call, error: Error = systemError('EROFS')) =>
  memoryWorld({
    files: intercept(files, (call) => {
      if (call === failing) throw error
    }),
  })
/** The header of a file, and its notes. */
async function seen(files: MemoryFiles, path = herdPath): Promise<unknown> {
  const bytes = files.peek(path)
  return [JSON.parse(bytes?.toString() ?? '').revision, notesIn(await factsIn(bytes))]
}

test('a herd that cannot be opened names the newest of its day copies and how many there are', async () => {
  const files = filesWith({
    [herdPath]: Buffer.from('damaged'),
    '/farm/backups/herd.2026-05-27.json': await soundFile(start),
    '/farm/backups/herd.2026-05-26.json': await soundFile(start),
  })
  const opened = await openHerdFile(herdPath, memoryWorld({ files }))
  expect(opened).toMatchObject({
    ok: false,
    problems: [
      { code: 'herd-damaged', severity: 'fault', path: herdPath },
      {
        code: 'backups-there',
        severity: 'notice',
        path: '/farm/backups',
        values: { newest: 'herd.2026-05-27.json', count: 2, file: herdPath },
      },
    ],
  })
  await files.remove(herdPath)
  expect(codes(await openHerdFile(herdPath, memoryWorld({ files })))).toEqual([
    'herd-missing',
    'backups-there',
  ])
  expect(await backupsOf(herdPath, memoryWorld({ files }))).toEqual([
    '/farm/backups/herd.2026-05-27.json',
    '/farm/backups/herd.2026-05-26.json',
  ])
})

test('where there are no day copies none are named', async () => {
  expect(codes(await openHerdFile(herdPath, memoryWorld({ files: filesWith({}) })))).toEqual(['herd-missing'])
})

test('a failure of the program itself on opening is not hidden', async () => {
  const files = filesWith({ [herdPath]: await soundFile(start) })
  const opening = openHerdFile(herdPath, failingAt(files, 'read', new TypeError('of the program')))
  await expect(opening).rejects.toThrow('of the program')
})

test('a new herd is revision 1 with its facts, in a folder that may be written', async () => {
  const files = filesWith({})
  const herdId = good(
    await createHerdFile(herdPath, [...smallHerd, note('one')], 'MK', memoryWorld({ files })),
  )
  expect(await seen(files)).toEqual([1, ['one']])
  expect(JSON.parse(files.peek(herdPath)?.toString() ?? '')).toMatchObject({ format: 1, herd: herdId })
  expect((await factsIn(files.peek(herdPath))).every(({ by }) => by === 'MK')).toBe(true)
  expect(codes(await createHerdFile(stick, [note('of nobody')], 'MK', memoryWorld({ files })))).toEqual([
    'animal-unknown',
  ])
  expect(codes(await createHerdFile(stick, smallHerd, 'MK', failingAt(files, 'mayWrite')))).toEqual([
    'disk-read-only',
  ])
  expect(files.peek(stick)).toBeUndefined()
})

test('a herd is read before it is used', async () => {
  const files = filesWith({ [herdPath]: await soundFile(start) })
  const durable = new DurableFile(memoryWorld({ files }), pathsOf(herdPath), herdPath)
  expect(() => durable.saved).toThrow('read before it is used')
  await durable.read()
  expect(durable.saved.facts).toEqual(start)
  expect(await durable.look()).toBeUndefined()
})

test.each([{ inode: 99n }, { size: 99n }, { changed: 99n }])(
  'a file that looks different in one thing alone is read again: %o',
  async (change) => {
    const files = filesWith({ [herdPath]: await soundFile(start) })
    const durable = new DurableFile(memoryWorld({ files }), pathsOf(herdPath), herdPath)
    await durable.read()
    const seenBefore = await files.stamp(herdPath)
    files.stamp = async () => ({ ...seenBefore, ...change })
    expect(await durable.look()).toEqual([])
    expect(await durable.look()).toBeUndefined()
  },
)

test.each([
  [2, 9, 10],
  [9, 2, 10],
])('what is merged from revision %d into %d is revision %d', async (from, into, revision) => {
  const files = filesWith({
    [herdPath]: await soundFile([...start, note('here')], { revision: into }),
    [stick]: await soundFile([...start, note('there')], { revision: from }),
  })
  files.place(herdPath, files.peek(herdPath) ?? Buffer.alloc(0), 0o640)
  const before = files.peek(herdPath)
  const merged = good(await mergeFiles(herdPath, stick, memoryWorld({ files })))
  expect([merged.revision, notesIn(merged.added)]).toEqual([revision, ['there']])
  expect(await seen(files)).toEqual([revision, ['here', 'there']])
  expect((await files.stamp(herdPath)).mode).toBe(0o640)
  expect(files.peek('/farm/backups/herd.2026-05-28.json')?.equals(before ?? Buffer.alloc(0))).toBe(true)
})

test('a merge that brings nothing writes nothing', async () => {
  const bytes = await soundFile(start, { revision: 4 })
  const files = filesWith({ [herdPath]: bytes, [stick]: bytes })
  const merged = good(await mergeFiles(herdPath, stick, memoryWorld({ files })))
  expect(merged).toEqual({ added: [], revision: 4, notices: [] })
  expect(files.peek(herdPath)).toBe(bytes)
})

test('a herd edited by hand is not merged into; the edited one is named', async () => {
  const bytes = await soundFile(start)
  const edited = Buffer.concat([bytes, Buffer.from('\n')])
  const files = filesWith({ [herdPath]: edited, [stick]: bytes })
  const world = memoryWorld({ files })
  expect(await mergeFiles(herdPath, stick, world)).toMatchObject({
    problems: [{ code: 'herd-edited', path: herdPath }],
  })
  expect(await mergeFiles(stick, herdPath, world)).toMatchObject({
    problems: [{ code: 'herd-edited', path: herdPath }],
  })
  const stranger = filesWith({ [herdPath]: bytes, [stick]: await soundFile(start, { herdId: 'y' }) })
  expect(await mergeFiles(herdPath, stick, memoryWorld({ files: stranger }))).toMatchObject({
    problems: [{ code: 'herd-replaced', path: stick, values: { found: 'y', known: '7k2m9qxc4t0z' } }],
  })
})

test('notices of a save come with what was merged, and a failed day copy with them', async () => {
  const files = filesWith({
    [herdPath]: await soundFile(start),
    [stick]: await soundFile([...start, note('there')]),
  })
  const world = memoryWorld({
    files: intercept(files, (call) => {
      if (call === 'makeFolder') throw systemError('EROFS')
      if (call === 'syncFolder') throw systemError('EINVAL')
    }),
  })
  expect(good(await mergeFiles(herdPath, stick, world)).notices.map(({ code }) => code)).toEqual([
    'backup-failed',
    'folder-sync-unsupported',
  ])
})

/** Everything that writes to a herd file that is there. */
const writing: Readonly<Record<string, (world: Environment) => Promise<Outcome<unknown>>>> = {
  'a record': async (world) => {
    const herd = good(await openHerdFile(herdPath, { ...world, files: wholeDisk(world) }))
    return herd.record([note('one')])
  },
  'a merge': (world) => mergeFiles(herdPath, stick, world),
  'accepted edits': (world) => acceptEdits(herdPath, world),
  'a copy in its place': (world) => restoreHerdFile(herdPath, stick, world),
  'a closing of old seasons': (world) => archiveHerdFile(herdPath, 'MK', world),
}
/** The files of a computer, on which the herd may first be written. */
function wholeDisk(world: Environment): Files {
  let asked = 0
  const mayWrite = async (path: string): Promise<void> => {
    asked += 1
    if (asked > 2) await world.files.mayWrite(path)
  }
  return { ...world.files, mayWrite }
}

for (const [name, write] of Object.entries(writing)) {
  test(`a herd file or folder that may not be written is left as it is by ${name}`, async () => {
    const bytes = await soundFile(start)
    for (const closed of [herdPath, '/farm']) {
      const files = filesWith({ [herdPath]: bytes, [stick]: await soundFile([...start, note('there')]) })
      const told = intercept(files, (call, path) => {
        if (call === 'mayWrite' && path === closed) throw systemError('EACCES')
      })
      expect(await write(memoryWorld({ files: told }))).toMatchObject({
        ok: false,
        problems: [{ code: 'no-permission', path: closed }],
      })
      expect(files.paths().sort()).toEqual([herdPath, stick])
      expect(files.peek(herdPath)).toBe(bytes)
    }
  })
}

test('edits that are accepted are the next revision of the same herd, with its permissions', async () => {
  const files = filesWith({})
  const edited = Buffer.concat([await soundFile([...start, note('one')], { revision: 6 }), Buffer.from('\n')])
  files.place(herdPath, edited, 0o640)
  const accepted = good(await acceptEdits(herdPath, memoryWorld({ files })))
  expect([accepted.revision, notesIn(accepted.facts)]).toEqual([7, ['one']])
  expect(await seen(files)).toEqual([7, ['one']])
  expect((await files.stamp(herdPath)).mode).toBe(0o640)
})

test.each([
  ['the revision of the damaged file', '{"kind":"dawnlist","format":1,"revision":12,"herd":"', 13],
  ['that of the copy, where none can be read', 'damaged', 6],
  ['that of the copy, where it is the later one', '{"kind":"dawnlist","format":1,"revision":2,"herd":"', 6],
])('a restored herd counts on from %s', async (_, damaged, revision) => {
  const files = filesWith({ '/farm/backups/herd.2026-05-27.json': await soundFile(start, { revision: 5 }) })
  files.place(herdPath, Buffer.from(damaged), 0o640)
  const restored = good(await restoreHerdFile(herdPath, undefined, memoryWorld({ files })))
  expect(restored).toMatchObject({
    from: '/farm/backups/herd.2026-05-27.json',
    revision,
    recovered: [],
    kept: '/farm/backups/herd.replaced-2026-05-28.json',
  })
  expect(await seen(files)).toEqual([revision, []])
  expect((await files.stamp(herdPath)).mode).toBe(0o640)
})

test('a copy that was edited is not restored from: the next newest is, and one that is named is refused', async () => {
  const edited = Buffer.concat([await soundFile(start), Buffer.from('\n')])
  const files = filesWith({
    '/farm/backups/herd.2026-05-27.json': edited,
    '/farm/backups/herd.2026-05-26.json': await soundFile(start),
    [stick]: edited,
  })
  const world = memoryWorld({ files })
  expect(await restoreHerdFile(herdPath, stick, world)).toMatchObject({
    problems: [{ code: 'herd-edited', path: stick }],
  })
  expect(files.peek(herdPath)).toBeUndefined()
  expect(good(await restoreHerdFile(herdPath, undefined, world)).from).toBe(
    '/farm/backups/herd.2026-05-26.json',
  )
  expect(files.paths()).not.toContain('/farm/backups/herd.replaced-2026-05-28.json')
})

test('where no day copy is whole that is said with the folder and the file', async () => {
  const files = filesWith({ '/farm/backups/herd.2026-05-27.json': Buffer.from('damaged') })
  expect(await restoreHerdFile(herdPath, undefined, memoryWorld({ files }))).toMatchObject({
    problems: [{ code: 'no-backup', path: '/farm/backups', values: { file: 'herd.json' } }],
  })
  const failing = failingAt(files, 'read', new TypeError('of the program'))
  await expect(restoreHerdFile(herdPath, undefined, failing)).rejects.toThrow('of the program')
})

test('a file that gives way to a named copy loses nothing that was recorded since', async () => {
  const facts: NewFact[] = [...start, note('since')]
  const files = filesWith({
    [herdPath]: await soundFile(facts, { revision: 3 }),
    [stick]: await soundFile(start),
  })
  const restored = good(await restoreHerdFile(herdPath, stick, memoryWorld({ files })))
  expect([restored.from, restored.revision, notesIn(restored.recovered)]).toEqual([stick, 4, ['since']])
  expect(notesIn(restored.facts)).toEqual(['since'])
})
