/** A herd file as it is read from the disk, and whether it may be written. */
import { expect, test } from 'vitest'
import { fileLimit } from '../../../source/herd/format.ts'
import { readBytes, readDisk } from '../../../source/herd/store/disk.ts'
import type { Stamp } from '../../../source/herd/store/files.ts'
import { pathsOf } from '../../../source/herd/store/paths.ts'
import { whyReadOnly } from '../../../source/herd/store/permission.ts'
import { herdPath, smallHerd, soundFile } from '../support/herds.ts'
import { intercept } from '../support/intercept.ts'
import { MemoryFiles, systemError } from '../support/memory-files.ts'
import { memoryWorld } from '../support/worlds.ts'

/** A computer whose herd file looks like this from outside. */
function worldOf(change: Partial<Stamp>) {
  const files = new MemoryFiles()
  files.place(herdPath, Buffer.from('bytes'))
  const stamp = async (path: string): Promise<Stamp> => ({ ...(await files.stamp(path)), ...change })
  return memoryWorld({
    files: Object.assign(
      intercept(files, () => undefined),
      { stamp },
    ),
  })
}
const reading = (change: Partial<Stamp>) => readBytes(worldOf(change), herdPath, 'herd.json')

test('only a plain file is read, and it is named as the user named it', async () => {
  await expect(reading({ plain: false })).rejects.toMatchObject({
    problems: [{ code: 'herd-no-file', path: 'herd.json' }],
  })
  const { bytes, stamp } = await reading({ mode: 0o640 })
  expect(bytes.toString()).toBe('bytes')
  expect(stamp.mode).toBe(0o640)
})

test('a file larger than a herd can be is not read', async () => {
  await expect(reading({ size: BigInt(fileLimit) })).resolves.toBeDefined()
  await expect(reading({ size: BigInt(fileLimit) + 1n })).rejects.toMatchObject({
    problems: [{ code: 'herd-too-large', path: 'herd.json', values: { megabytes: 65, limit: 64 } }],
  })
})

test('a file that is no herd is refused with all that is wrong', async () => {
  await expect(readDisk(worldOf({}), herdPath, 'herd.json')).rejects.toMatchObject({
    problems: [{ code: 'herd-damaged', path: 'herd.json' }],
  })
  await expect(readDisk(memoryWorld(), herdPath, 'herd.json')).rejects.toMatchObject({
    problems: [{ code: 'path-missing', path: 'herd.json' }],
  })
})

test('a herd is read with its bytes, and whether someone edited it', async () => {
  const files = new MemoryFiles()
  const bytes = await soundFile(smallHerd)
  files.place(herdPath, bytes, 0o640)
  const disk = await readDisk(memoryWorld({ files }), herdPath, herdPath)
  expect(disk).toMatchObject({ edited: false, herd: { revision: 1 }, stamp: { mode: 0o640 } })
  expect(disk.bytes.equals(bytes)).toBe(true)
  files.place(herdPath, Buffer.concat([bytes, Buffer.from('\n')]))
  expect((await readDisk(memoryWorld({ files }), herdPath, herdPath)).edited).toBe(true)
})

test('a herd is looked at only where it was edited, or where file or folder may not be written', async () => {
  const why = (edited: boolean, closed?: string) => {
    const mayWrite = async (path: string): Promise<void> => {
      if (path === closed) throw systemError('EROFS')
    }
    const files = Object.assign(new MemoryFiles(), { mayWrite })
    const world = memoryWorld({ files })
    return whyReadOnly(world, pathsOf(herdPath), 'herd.json', edited)
  }
  const closed = {
    code: 'herd-read-only',
    severity: 'notice',
    path: 'herd.json',
    values: { reason: 'disk-read-only' },
  }
  expect(await why(false)).toEqual([])
  expect(await why(true)).toEqual([{ code: 'herd-edited', severity: 'notice', path: 'herd.json' }])
  expect(await why(false, herdPath)).toEqual([closed])
  expect(await why(false, '/farm')).toEqual([closed])
})
