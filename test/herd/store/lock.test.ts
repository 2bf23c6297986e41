/** The lock of the operating system itself. */
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test, vi } from 'vitest'
import { systemLock } from '../../../source/herd/store/lock.ts'
import { inFolder } from '../support/herds.ts'
import { openIn } from '../support/open-in.ts'

test('one holds it at a time; freed it can be had again, and its file stays empty', () =>
  inFolder(async (folder) => {
    const path = join(folder, '.herd.json.lock')
    const release = systemLock.tryLock(path)
    expect(release).toBeDefined()
    expect(systemLock.tryLock(path)).toBeUndefined()
    expect(systemLock.tryLock(join(folder, '.other.json.lock'))).toBeDefined()
    release?.()
    const again = systemLock.tryLock(path)
    expect(again).toBeDefined()
    again?.()
    expect(await readFile(path)).toHaveLength(0)
  }))

test('where there can be none that is an error, not a lock that another holds', () =>
  inFolder(async (folder) => {
    expect(() => systemLock.tryLock(join(folder, 'no', '.herd.json.lock'))).toThrow()
    const noDatabase = join(folder, '.herd.json.lock')
    await writeFile(noDatabase, 'this is a text that someone wrote here. '.repeat(50))
    expect(() => systemLock.tryLock(noDatabase)).toThrow()
    expect((await openIn(folder)) ?? []).toEqual([])
  }))

test('loading what it is made with warns nobody, and other warnings come through as before', () => {
  const warned = vi.spyOn(process, 'emitWarning').mockReturnValue(undefined)
  const { emitWarning } = process
  systemLock.prepare()
  expect(warned).not.toHaveBeenCalled()
  expect(process.emitWarning).toBe(emitWarning)
  warned.mockRestore()
})
