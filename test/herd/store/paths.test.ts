/** The names of what stands beside a herd file. */
import { resolve } from 'node:path'
import { expect, test } from 'vitest'
import {
  copyName,
  halfWritten,
  isArchive,
  isArchiveName,
  locate,
  pathsOf,
  temporaryName,
  whyKept,
} from '../../../source/herd/store/paths.ts'
import { intercept } from '../support/intercept.ts'
import { MemoryFiles } from '../support/memory-files.ts'
import { memoryWorld } from '../support/worlds.ts'

const paths = pathsOf('/farm/herd.json')

test('lock and backups stand in the folder of the herd', () => {
  expect(paths).toEqual({
    file: '/farm/herd.json',
    folder: '/farm',
    lock: '/farm/.herd.json.lock',
    backups: '/farm/backups',
    stem: 'herd',
  })
  expect(pathsOf('/farm/HERD.JSON').stem).toBe('HERD')
  expect(pathsOf('/farm/herd').stem).toBe('herd')
})

test('a link is followed; a file that is missing is where its name says', async () => {
  const files = new MemoryFiles()
  files.place('/farm/herd.json', Buffer.from(''))
  const linked = { ...intercept(files, () => undefined), realPath: async () => '/farm/herd.json' }
  expect(await locate(memoryWorld({ files: linked }), '/link.json')).toEqual(paths)
  expect((await locate(memoryWorld({ files }), 'gone.json')).file).toBe(resolve('gone.json'))
  const broken = { ...linked, realPath: () => Promise.reject(new TypeError('of the program')) }
  await expect(locate(memoryWorld({ files: broken }), '/link.json')).rejects.toThrow('of the program')
})

test('the name of a half-written file tells the file that it was to become, and no other name does', () => {
  const name = temporaryName('/farm/herd.json')
  expect(name).toMatch(/^\/farm\/\.herd\.json\.[0-9a-z]{12}\.temp$/)
  expect(halfWritten(name.slice('/farm/'.length))).toBe('herd.json')
  for (const other of ['herd.json', '.herd.json.temp', 'herd.json.0123456789ab.temp', '.herd.json.0123.temp'])
    expect(halfWritten(other)).toBeUndefined()
})

test.each([
  ['herd.2026-05-28.json', '2026-05-28'],
  ['herd.format-0.json', 'format-0'],
  ['herd.format-0.2.json', 'format-0.2'],
  ['herd.edited-2026-05-28.json', 'edited-2026-05-28'],
  ['herd.archive-2026-05-28.12.json', 'archive-2026-05-28.12'],
  ['herd.json', undefined],
  ['herd.old.json', undefined],
  ['herd.2026-05-28.txt', undefined],
  ['herd.2026-05-28.json.json', undefined],
  ['other.2026-05-28.json', undefined],
  ['herd2.2026-05-28.json', undefined],
  ['bull.2026-05-28.json', undefined],
  ['herd.2026-05-28.toml', undefined],
])('why %s is kept: %s', (name, why) => {
  expect(whyKept(paths, name)).toBe(why)
  if (why !== undefined) expect(copyName(paths, why)).toBe(name)
})

test('an archive is known by its own name, and by its name beside the herd', () => {
  expect(isArchive(pathsOf('/farm/herd.archive-2026-05-28.json'))).toBe(true)
  expect(isArchive(pathsOf('/farm/herd.archive-2026-05-28.2.json'))).toBe(true)
  expect(isArchive(paths)).toBe(false)
  expect(isArchiveName(paths, 'herd.archive-2026-05-28.json')).toBe(true)
  expect(isArchiveName(paths, 'herd.edited-2026-05-28.json')).toBe(false)
  expect(isArchiveName(paths, 'other.archive-2026-05-28.json')).toBe(false)
})
