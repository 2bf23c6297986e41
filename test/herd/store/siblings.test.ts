/** Copies of the herd beside its file. */
import { expect, test } from 'vitest'
import type { Problem } from '../../../source/breeding/problem.ts'
import { asFacts } from '../../../source/herd/recording.ts'
import { readDisk } from '../../../source/herd/store/disk.ts'
import { pathsOf } from '../../../source/herd/store/paths.ts'
import { CopiesBeside } from '../../../source/herd/store/siblings.ts'
import { herdPath, note, smallHerd, soundFile } from '../support/herds.ts'
import { type Call, intercept } from '../support/intercept.ts'
import { MemoryFiles, systemError } from '../support/memory-files.ts'
import { memoryWorld } from '../support/worlds.ts'

const start = asFacts(smallHerd, { at: new Date('2026-05-28T04:15:09.120Z') })
const more = await soundFile([...start, note('elsewhere')], { revision: 2 })

/** A herd, and what is noticed of copies beside it. */
async function besideHerd(path = herdPath) {
  const files = new MemoryFiles(['/farm', '/farm/folder.json'])
  files.place(path, await soundFile(start))
  const calls: string[] = []
  let failing: (call: Call, path: string) => boolean = () => false
  let error: Error = systemError('EACCES')
  const told = intercept(files, (call, where) => {
    calls.push(`${call} ${where}`)
    if (failing(call, where)) throw error
  })
  const world = memoryWorld({ files: told })
  const { herd } = await readDisk(world, path, path)
  const copies = new CopiesBeside(world, pathsOf(path))
  const look = async (revision = 1): Promise<readonly Problem[]> => {
    calls.length = 0
    await copies.look({ ...herd, revision })
    return copies.notices
  }
  const fail = (when: typeof failing, thrown: Error = systemError('EACCES')): void => {
    failing = when
    error = thrown
  }
  return { files, calls, look, fail }
}
const named = (problems: readonly Problem[]): unknown[] => problems.map(({ code, path }) => [code, path])

test.each([
  '/farm/copy.json',
  '/farm/COPY.JSON',
  '/farm/herd.json.bak',
  '/farm/herd (1)',
  '/farm/herd.2026-05-28.json',
])('%s is noticed with the number of facts it holds more', async (path) => {
  const { files, look } = await besideHerd()
  files.place(path, more)
  expect(await look()).toEqual([
    { code: 'copy-with-more', severity: 'notice', path, values: { facts: 1, file: herdPath } },
  ])
})

test.each(['/farm/.herd.json', '/farm/copy.txt', '/farm/my herd', '/farm/herd.archive-2026-05-28.json'])(
  '%s is not looked at',
  async (path) => {
    const { files, calls, look } = await besideHerd()
    files.place(path, more)
    expect(await look()).toEqual([])
    expect(calls).toEqual(['names /farm'])
  },
)

test('the herd itself, a copy without more and another herd are not noticed', async () => {
  const { files, look } = await besideHerd()
  files.place('/farm/copy.json', await soundFile(start))
  files.place('/farm/other.json', await soundFile([...smallHerd, note('other')], { herdId: 'y' }))
  files.place('/farm/settings.json', Buffer.from('{"cows":[]}'))
  expect(await look()).toEqual([])
})

test('a copy that cannot be used as it is is noticed with the reason', async () => {
  const { files, look } = await besideHerd()
  files.place('/farm/damaged.json', more.subarray(0, -20))
  files.place('/farm/differs.json', Buffer.from(more.toString().replace('"lactation":2', '"lactation":3')))
  files.place('/farm/good.json', more)
  const other = start.map((fact) => (fact.kind === 'farm' ? { ...fact, name: 'Short Acre' } : fact))
  files.place('/farm/other-farm.json', await soundFile(other, { revision: 2 }))
  expect(await look()).toMatchObject([
    {
      code: 'copy-unclear',
      severity: 'notice',
      path: '/farm/damaged.json',
      values: { reason: 'herd-damaged', file: herdPath },
    },
    { code: 'copy-unclear', path: '/farm/differs.json', values: { reason: 'fact-differs' } },
    { code: 'copy-with-more', path: '/farm/good.json' },
    { code: 'copy-unclear', path: '/farm/other-farm.json', values: { reason: 'fact-differs' } },
  ])
})

test('copies are read again only where one of them or the herd changed', async () => {
  const { files, calls, look } = await besideHerd()
  files.place('/farm/copy.json', more)
  const reads = (): boolean => calls.includes('read /farm/copy.json')
  await look()
  expect(reads()).toBe(true)
  expect(named(await look())).toEqual([['copy-with-more', '/farm/copy.json']])
  expect(reads()).toBe(false)
  await look(2)
  expect(reads()).toBe(true)
  files.place('/farm/copy.json', await soundFile(start))
  expect(await look(2)).toEqual([])
  expect(reads()).toBe(true)
  files.place('/farm/copy.json', more)
  await look(2)
  await files.remove('/farm/copy.json')
  expect(await look(2)).toEqual([])
})

test('a herd that goes on without copies beside it looks at the names alone', async () => {
  const { calls, look } = await besideHerd()
  for (const revision of [1, 2, 3]) {
    await look(revision)
    expect(calls).toEqual(['names /farm'])
  }
})

test('two hundred files are looked at, and no more', async () => {
  const { files, calls, look } = await besideHerd()
  for (let place = 0; place < 210; place += 1) files.place(`/farm/${place}.json`, Buffer.from('{}'))
  await look()
  expect(calls.filter((call) => call.startsWith('readStart'))).toHaveLength(200)
})

test('what cannot be looked at is passed over, and looked at when it can be', async () => {
  const { files, look, fail } = await besideHerd()
  files.place('/farm/a.json', more)
  files.place('/farm/b.json', more)
  fail((call) => call === 'names')
  expect(await look()).toEqual([])
  fail((call, path) => call === 'readStart' && path === '/farm/a.json')
  expect(named(await look())).toEqual([['copy-with-more', '/farm/b.json']])
  fail((call, path) => call === 'stamp' && path === '/farm/a.json')
  expect(named(await look())).toEqual([['copy-with-more', '/farm/b.json']])
  fail(() => false)
  expect(named(await look())).toEqual([
    ['copy-with-more', '/farm/a.json'],
    ['copy-with-more', '/farm/b.json'],
  ])
})

test('what is no plain file is not read, whatever its name', async () => {
  const { files, calls, look } = await besideHerd()
  files.place('/farm/pipe.json', more)
  const { stamp } = files
  files.stamp = async (path) => ({ ...(await stamp.call(files, path)), plain: path !== '/farm/pipe.json' })
  expect(await look()).toEqual([])
  expect(calls).not.toContain('readStart /farm/pipe.json')
})

test('an archive, when it is looked at, is not brought up to date', async () => {
  const { files, calls, look } = await besideHerd('/farm/herd.archive-2026-05-28.json')
  files.place(herdPath, more)
  expect(await look()).toEqual([])
  expect(calls).toEqual([])
})

test.each(['names', 'stamp', 'readStart', 'read'] as const)(
  'a failure of the program itself (in %s) is not taken for a copy that cannot be looked at',
  async (call) => {
    const { files, look, fail } = await besideHerd()
    files.place('/farm/copy.json', more)
    fail((each) => each === call, new TypeError('of the program'))
    await expect(look()).rejects.toThrow('of the program')
  },
)
