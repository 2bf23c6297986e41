/** A revision in the place of the file, and the copies before it. */
import { expect, test } from 'vitest'
import { currentFormat, encodeFile, encodeLines, fileLimit } from '../../../source/herd/format.ts'
import { asFacts } from '../../../source/herd/recording.ts'
import { commit, keepCopies } from '../../../source/herd/store/commit.ts'
import { saveCopyTo } from '../../../source/herd/store/copy.ts'
import { type Disk, readDisk } from '../../../source/herd/store/disk.ts'
import { pathsOf } from '../../../source/herd/store/paths.ts'
import { factsIn, herdPath, note, notesIn, smallHerd, soundFile } from '../support/herds.ts'
import { intercept } from '../support/intercept.ts'
import { MemoryFiles, systemError } from '../support/memory-files.ts'
import { memoryWorld } from '../support/worlds.ts'

const paths = pathsOf(herdPath)
const facts = asFacts([...smallHerd, note('one')], { at: new Date('2026-05-28T04:15:09.120Z') })
const revision = async () => ({ revision: 7, herdId: 'x', facts, lines: await encodeLines(facts) })

test('a revision is written with its facts and permissions, and said to be what it is', async () => {
  const files = new MemoryFiles()
  const next = await revision()
  const { herd, stamp, notices } = await commit(memoryWorld({ files }), paths, next, 0o640)
  expect(herd).toEqual({ ...next, format: currentFormat })
  expect(stamp).toEqual(await files.stamp(herdPath))
  expect(stamp.mode).toBe(0o640)
  expect(notices).toEqual([])
  expect(await factsIn(files.peek(herdPath))).toEqual(facts)
  expect(files.peek(herdPath)?.toString()).toContain('"revision":7,"herd":"x"')
})

test('a folder that cannot be synced by its kind is a notice', async () => {
  const files = intercept(new MemoryFiles(), (call) => {
    if (call === 'syncFolder') throw systemError('EINVAL')
  })
  const { notices } = await commit(memoryWorld({ files }), paths, await revision())
  expect(notices).toEqual([{ code: 'folder-sync-unsupported', severity: 'notice', path: '/farm' }])
})

/** A disk that counts the bytes it is given, and keeps none of them. */
function countingDisk() {
  let bytes = 0
  const create = async (path: string) => ({
    ...(await new MemoryFiles().create(path)),
    write: async (part: Buffer, start: number) => {
      bytes += part.length - start
      return part.length - start
    },
    stamp: async () => ({ inode: 1n, size: BigInt(bytes), changed: 1n, mode: 0o644, plain: true }),
  })
  const files = Object.assign(new MemoryFiles(), { create, rename: async () => undefined })
  return { world: memoryWorld({ files }), written: () => bytes }
}

test('a file may be as large as its limit, and not a byte larger', async () => {
  const { world, written } = countingDisk()
  const next = await revision()
  const header = { format: currentFormat, revision: next.revision, herdId: next.herdId }
  const around = Buffer.concat((await encodeFile(header, [])).parts).length
  const filled = (bytes: number) => ({ ...next, lines: [Buffer.alloc(bytes - around)] })
  await expect(commit(world, paths, filled(fileLimit + 1))).rejects.toMatchObject({
    problems: [{ code: 'herd-full', path: herdPath, values: { limit: 64 } }],
  })
  expect(written()).toBe(0)
  await commit(world, paths, filled(fileLimit))
  expect(written()).toBe(fileLimit)
})

/** A file of a format as it was read. */
async function diskOf(format: number): Promise<Disk> {
  const files = new MemoryFiles()
  files.place(herdPath, await soundFile(smallHerd, { format }))
  const migrations = [{ from: 0, migrate: (old: readonly unknown[]) => old }]
  return readDisk(memoryWorld({ files, migrations }), herdPath, herdPath)
}

test('today’s format is kept once a day, an older one for good too', async () => {
  for (const [format, names] of [
    [currentFormat, ['herd.2026-05-28.json']],
    [0, ['herd.2026-05-28.json', 'herd.format-0.json']],
  ] as const) {
    const files = new MemoryFiles()
    const disk = await diskOf(format)
    expect(await keepCopies(memoryWorld({ files }), paths, disk)).toEqual([])
    expect(files.paths().sort()).toEqual(names.map((name) => `/farm/backups/${name}`))
    for (const path of files.paths()) expect(files.peek(path)?.equals(disk.bytes)).toBe(true)
  }
})

test('a day copy that cannot be made is a notice with the reason', async () => {
  const files = intercept(new MemoryFiles(), (call) => {
    if (call === 'makeFolder') throw systemError('EACCES')
  })
  expect(await keepCopies(memoryWorld({ files }), paths, await diskOf(currentFormat))).toEqual([
    {
      code: 'backup-failed',
      severity: 'notice',
      path: '/farm/backups',
      values: { reason: 'no-permission' },
    },
  ])
})

test('a copy elsewhere is the next revision with all that is not saved, of an edited herd too', async () => {
  const unsaved = asFacts([note('two')], { at: new Date('2026-05-28T04:15:09.120Z') })
  const herd = { ...(await revision()), format: currentFormat }
  for (const lines of [herd.lines, []]) {
    const files = new MemoryFiles(['/stick'])
    await saveCopyTo(memoryWorld({ files }), '/stick/herd.json', { ...herd, lines }, unsaved)
    const bytes = files.peek('/stick/herd.json')
    expect(notesIn(await factsIn(bytes))).toEqual(['one', 'two'])
    expect(bytes?.toString()).toContain('"revision":8,"herd":"x"')
  }
})
