/** Copies that are kept of a herd. */
import { expect, test } from 'vitest'
import {
  backupsKept,
  dayCopies,
  keepArchive,
  keepCopy,
  keepDayCopy,
} from '../../../source/herd/store/backups.ts'
import { pathsOf } from '../../../source/herd/store/paths.ts'
import { type Call, intercept } from '../support/intercept.ts'
import { MemoryFiles, systemError } from '../support/memory-files.ts'
import { memoryWorld } from '../support/worlds.ts'

const paths = pathsOf('/farm/herd.json')
const [one, two] = [Buffer.from('one'), Buffer.from('two')]

function toldWorld(files = new MemoryFiles(['/farm', '/farm/backups'])) {
  const calls: Call[] = []
  const world = memoryWorld({ files: intercept(files, (call) => calls.push(call)) })
  const place = (...names: string[]): void => {
    for (const name of names) files.place(`/farm/backups/${name}`, one)
  }
  const names = (): string[] => files.paths().map((path) => path.replace('/farm/backups/', ''))
  return { files, calls, world, place, names }
}

test('day copies are those of this herd with a date alone in their name, oldest first', async () => {
  const { world, place } = toldWorld()
  place('herd.2026-05-28.json', 'herd.2026-05-27.json', 'herd.format-0.json', 'herd.edited-2026-05-26.json')
  place('other.2026-05-28.json', 'herd.2026-05-28.txt', '.herd.2026-05-25.json.0123456789ab.temp')
  expect(await dayCopies(world, paths)).toEqual(['herd.2026-05-27.json', 'herd.2026-05-28.json'])
})

test('without a folder of backups there are none', async () => {
  expect(await dayCopies(toldWorld(new MemoryFiles()).world, paths)).toEqual([])
  const broken = { names: () => Promise.reject(new TypeError('of the program')) }
  const files = Object.assign(
    intercept(new MemoryFiles(), () => undefined),
    broken,
  )
  await expect(dayCopies(memoryWorld({ files }), paths)).rejects.toThrow('of the program')
})

test('the first copy of a day stays, and makes its folder', async () => {
  const { files, world } = toldWorld(new MemoryFiles())
  await keepDayCopy(world, paths, one, '2026-05-28')
  await keepDayCopy(world, paths, two, '2026-05-28')
  expect(files.peek('/farm/backups/herd.2026-05-28.json')?.toString()).toBe('one')
})

const day = (place: number): string => `herd.2026-04-${String(place).padStart(2, '0')}.json`

test('of more than thirty day copies the oldest go, and nothing else', async () => {
  expect(backupsKept).toBe(30)
  const { world, place, names } = toldWorld()
  const before = Array.from({ length: 29 }, (_, index) => day(index + 1))
  place(...before.toReversed(), 'herd.format-0.json')
  await keepDayCopy(world, paths, two, '2026-05-28')
  expect(names().sort()).toEqual([...before, 'herd.2026-05-28.json', 'herd.format-0.json'])
  await keepDayCopy(world, paths, two, '2026-05-29')
  expect(names().sort()).toEqual([
    ...before.slice(1),
    'herd.2026-05-28.json',
    'herd.2026-05-29.json',
    'herd.format-0.json',
  ])
})

test('a copy made while the clock is wrong is not the one that goes', async () => {
  const { world, place, names } = toldWorld()
  const before = Array.from({ length: 30 }, (_, index) => day(index + 1))
  place(...before)
  await keepDayCopy(world, paths, two, '2016-05-28')
  expect(names().sort()).toEqual(['herd.2016-05-28.json', ...before.slice(1)])
})

test('a day copy that cannot be made is refused with the name of the folder', async () => {
  const files = intercept(new MemoryFiles(), (call) => {
    if (call === 'makeFolder') throw systemError('EROFS')
  })
  await expect(keepDayCopy(memoryWorld({ files }), paths, one, '2026-05-28')).rejects.toMatchObject({
    problems: [{ code: 'disk-read-only', path: '/farm/backups' }],
  })
})

test('the same bytes are kept once under a name, other bytes under the next one', async () => {
  const { files, world, names } = toldWorld(new MemoryFiles())
  const keep = (bytes: Buffer): Promise<string> => keepCopy(world, paths, bytes, 'format-0')
  expect(await keep(one)).toBe('/farm/backups/herd.format-0.json')
  expect(await keep(two)).toBe('/farm/backups/herd.format-0.2.json')
  expect(await keep(Buffer.from('three'))).toBe('/farm/backups/herd.format-0.3.json')
  expect(await keep(Buffer.from('one'))).toBe('/farm/backups/herd.format-0.json')
  expect(await keep(two)).toBe('/farm/backups/herd.format-0.2.json')
  expect(names()).toHaveLength(3)
  expect(files.peek('/farm/backups/herd.format-0.json')?.toString()).toBe('one')
})

test('bytes that are there already count as kept when their name is on the disk itself', async () => {
  const { calls, world } = toldWorld()
  await keepCopy(world, paths, one, 'format-0')
  calls.length = 0
  await keepCopy(world, paths, one, 'format-0')
  expect(calls).toContain('syncFolder')
  expect(calls).not.toContain('create')
})

test('an archive stands beside the herd and is never to be written again', async () => {
  const { files, world } = toldWorld()
  const archive = await keepArchive(world, paths, one, '2026-05-28')
  expect(archive).toBe('/farm/herd.archive-2026-05-28.json')
  expect((await files.stamp(archive)).mode).toBe(0o444)
  expect(await keepArchive(world, paths, two, '2026-05-28')).toBe('/farm/herd.archive-2026-05-28.2.json')
  expect(await keepArchive(world, paths, one, '2026-05-28')).toBe(archive)
})
