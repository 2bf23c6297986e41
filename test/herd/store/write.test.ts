/** Bytes that come to the disk whole or not at all. */
import { expect, test } from 'vitest'
import { createFile, exists, replaceFile, syncFolder } from '../../../source/herd/store/write.ts'
import { type Call, intercept } from '../support/intercept.ts'
import { MemoryFiles, systemError } from '../support/memory-files.ts'
import { memoryWorld } from '../support/worlds.ts'

const path = '/farm/herd.json'
const bytes = [Buffer.from('new '), Buffer.from('bytes')]

/** A computer with an old file, where these calls fail; tells of every call but closing and removing, in order. */
function toldWorld(failing: Partial<Record<Call, string>> = {}, platform: NodeJS.Platform = 'linux') {
  const files = new MemoryFiles()
  const calls: Call[] = []
  let waited = 0
  const told = intercept(files, (call) => {
    calls.push(call)
    const code = failing[call]
    if (code !== undefined) throw systemError(code)
  })
  const pause = async (milliseconds: number): Promise<void> => {
    waited += milliseconds
  }
  const text = (): string | undefined => files.peek(path)?.toString()
  return { files, calls, text, waited: () => waited, world: memoryWorld({ files: told, platform, pause }) }
}
const old = (files: MemoryFiles): void => files.place(path, Buffer.from('old'))
const code = async (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => 'done',
    (error: { problems: { code: string }[] }) => error.problems[0]?.code,
  )

test('a file is replaced by one that is on the disk already, and its folder after it', async () => {
  const { files, calls, text, world } = toldWorld()
  old(files)
  const written = await replaceFile(world, path, bytes, 0o640)
  expect(text()).toBe('new bytes')
  expect(calls).toEqual(['create', 'write', 'write', 'stamp', 'sync', 'close', 'rename', 'syncFolder'])
  expect(written).toEqual({ stamp: await files.stamp(path), folder: 'synced' })
  expect(written.stamp).toMatchObject({ size: 9n, mode: 0o640 })
})

test('a new file gets its name when it is on the disk, and the other name goes', async () => {
  const { files, calls, text, world } = toldWorld()
  const written = await createFile(world, path, bytes, 0o444)
  expect(text()).toBe('new bytes')
  expect(calls.filter((call) => call !== 'close')).toEqual([
    ...['create', 'write', 'write', 'stamp', 'sync', 'link', 'remove', 'syncFolder'],
  ])
  expect(files.paths()).toEqual([path])
  expect(written).toEqual({ stamp: await files.stamp(path), folder: 'synced' })
  expect(written.stamp.mode).toBe(0o444)
})

test('a new file never takes the place of another', async () => {
  const { files, text, world } = toldWorld()
  old(files)
  expect(await code(createFile(world, path, bytes))).toBe('path-taken')
  expect(text()).toBe('old')
  expect(files.paths()).toEqual([path])
})

test.each(['EPERM', 'EINVAL', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS'])(
  'where the file system knows no second names (%s) a new file still takes no place',
  async (reason) => {
    const { files, text, world } = toldWorld({ link: reason })
    await createFile(world, path, bytes)
    expect(text()).toBe('new bytes')
    expect(await code(createFile(world, path, [Buffer.from('other')]))).toBe('path-taken')
    expect(text()).toBe('new bytes')
    expect(files.paths()).toEqual([path])
  },
)

test.each(['create', 'write', 'stamp', 'sync', 'close', 'rename'] as const)(
  'where %s fails the old file stays, and nothing half written',
  async (call) => {
    const { files, text, world } = toldWorld({ [call]: 'EIO' })
    old(files)
    expect(await code(replaceFile(world, path, bytes))).toBe('disk-error')
    expect(text()).toBe('old')
    expect(files.paths()).toEqual([path])
  },
)

test('a file that was not written whole is closed, and what failed first is told', async () => {
  const { calls, world } = toldWorld({ write: 'ENOSPC', close: 'EIO', remove: 'EROFS' })
  expect(await code(replaceFile(world, path, bytes))).toBe('disk-full')
  expect(calls).toEqual(['create', 'write', 'close', 'remove'])
})

test('a second name that is refused for another reason is told, and nothing half written is left', async () => {
  const { files, world } = toldWorld({ link: 'ENOSPC' })
  expect(await code(createFile(world, path, bytes))).toBe('disk-full')
  expect(files.paths()).toEqual([])
})

test('large parts are written a megabyte at a time, every byte of them', async () => {
  const { files, calls, world } = toldWorld()
  const megabyte = 1024 * 1024
  const large = Buffer.from(Uint8Array.from({ length: 2 * megabyte + 1 }, (_, place) => place % 251))
  const { stamp } = await replaceFile(world, path, [large, Buffer.alloc(0), Buffer.from('end')])
  expect(stamp.size).toBe(BigInt(2 * megabyte + 4))
  expect(files.peek(path)?.equals(Buffer.concat([large, Buffer.from('end')]))).toBe(true)
  expect(calls.filter((call) => call === 'write')).toHaveLength(4)
})

test.each(['EPERM', 'EACCES', 'EBUSY'])('%s on Windows is waited out for six seconds', async (reason) => {
  const { waited, world, files, text } = toldWorld({ rename: reason }, 'win32')
  old(files)
  expect(await code(replaceFile(world, path, bytes))).toBe('file-held')
  expect(waited()).toBe(6000)
  expect(text()).toBe('old')
})

test('another failure of a rename, or another computer, is not waited for', async () => {
  for (const [reason, platform] of [
    ['ENOSPC', 'win32'],
    ['EBUSY', 'linux'],
  ] as const) {
    const { waited, world } = toldWorld({ rename: reason }, platform)
    expect(await code(replaceFile(world, path, bytes))).not.toBe('done')
    expect(waited()).toBe(0)
  }
})

test('who holds the file is told with the reason and the time', async () => {
  const { world } = toldWorld({ rename: 'EBUSY' }, 'win32')
  await expect(replaceFile(world, path, bytes)).rejects.toMatchObject({
    problems: [{ code: 'file-held', path, values: { reason: 'EBUSY', seconds: 6 } }],
  })
})

test('a folder that cannot be synced by its kind is told of, one that fails is refused', async () => {
  for (const reason of ['EINVAL', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS'])
    expect(await syncFolder(toldWorld({ syncFolder: reason }).world, '/farm')).toBe('unsupported')
  expect(await code(syncFolder(toldWorld({ syncFolder: 'EIO' }).world, '/farm'))).toBe('disk-error')
  expect(await syncFolder(toldWorld().world, '/farm')).toBe('synced')
  const windows = toldWorld({ syncFolder: 'EPERM' }, 'win32')
  expect(await syncFolder(windows.world, '/farm')).toBe('synced')
  expect(windows.calls).toEqual([])
})

test('a file is there, is not, or cannot be looked at', async () => {
  const { files, world } = toldWorld()
  expect(await exists(world, path)).toBe(false)
  old(files)
  expect(await exists(world, path)).toBe(true)
  await expect(exists(toldWorld({ stamp: 'EACCES' }).world, path)).rejects.toMatchObject({ code: 'EACCES' })
})
