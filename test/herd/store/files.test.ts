/** The files of this computer, as the store asks for them. */
import { chmod, mkdir, readdir, readFile, stat, truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { diskFiles } from '../../../source/herd/store/files.ts'
import { inFolder } from '../support/herds.ts'
import { openIn } from '../support/open-in.ts'

test.each([0, 1, 1024 * 1024, 2.5 * 1024 * 1024])('a file of %d bytes is read whole', (size) =>
  inFolder(async (folder) => {
    const path = join(folder, 'herd.json')
    const bytes = Buffer.from(Uint8Array.from({ length: size }, (_, place) => 1 + (place % 251)))
    await writeFile(path, bytes)
    expect((await diskFiles.read(path)).equals(bytes)).toBe(true)
  }),
)

test('the first bytes of a file are read, or all of it where it is shorter', () =>
  inFolder(async (folder) => {
    const path = join(folder, 'herd.json')
    await writeFile(path, 'abcdef')
    expect((await diskFiles.readStart(path, 4)).toString()).toBe('abcd')
    expect((await diskFiles.readStart(path, 100)).toString()).toBe('abcdef')
    await expect(diskFiles.readStart(join(folder, 'gone'), 4)).rejects.toMatchObject({ code: 'ENOENT' })
  }))

test('what a file looks like from outside', () =>
  inFolder(async (folder) => {
    const path = join(folder, 'herd.json')
    await writeFile(path, 'abcdef')
    await chmod(path, 0o641)
    const seen = await diskFiles.stamp(path)
    expect(seen).toEqual({
      inode: (await stat(path, { bigint: true })).ino,
      size: 6n,
      changed: (await stat(path, { bigint: true })).mtimeNs,
      mode: 0o641,
      plain: true,
    })
    expect((await diskFiles.stamp(folder)).plain).toBe(false)
    await truncate(path, 3)
    expect((await diskFiles.stamp(path)).size).toBe(3n)
  }))

test('a new file is written from where it is told, and looked at while it is open', () =>
  inFolder(async (folder) => {
    const path = join(folder, 'herd.json')
    const file = await diskFiles.create(path, 0o444)
    expect(await file.write(Buffer.from('abcdef'), 2)).toBe(4)
    expect(await file.stamp()).toMatchObject({ size: 4n, mode: 0o444, plain: true })
    await file.sync()
    await file.close()
    expect(await readFile(path, 'utf8')).toBe('cdef')
    await expect(diskFiles.create(path)).rejects.toMatchObject({ code: 'EEXIST' })
    // Closed means closed.
    await expect(file.write(Buffer.from('x'), 0)).rejects.toThrow()
  }))

test('names are given, moved and taken away', () =>
  inFolder(async (folder) => {
    const [one, other] = [join(folder, 'one'), join(folder, 'other')]
    await writeFile(one, 'one')
    await diskFiles.link(one, other)
    expect((await diskFiles.names(folder)).sort()).toEqual(['one', 'other'])
    await expect(diskFiles.link(one, other)).rejects.toMatchObject({ code: 'EEXIST' })
    await diskFiles.remove(one)
    expect(await readdir(folder)).toEqual(['other'])
    await diskFiles.rename(other, one)
    expect(await diskFiles.names(folder)).toEqual(['one'])
    await diskFiles.makeFolder(join(folder, 'backups'))
    await diskFiles.makeFolder(join(folder, 'backups'))
    expect((await stat(join(folder, 'backups'))).isDirectory()).toBe(true)
    await diskFiles.syncFolder(folder)
    await expect(diskFiles.syncFolder(join(folder, 'gone'))).rejects.toMatchObject({ code: 'ENOENT' })
  }))

test('whether something may be written is asked of the system', () =>
  inFolder(async (folder) => {
    await mkdir(join(folder, 'backups'))
    await expect(diskFiles.mayWrite(join(folder, 'backups'))).resolves.toBeUndefined()
    await expect(diskFiles.mayWrite(join(folder, 'gone'))).rejects.toMatchObject({ code: 'ENOENT' })
    expect(await diskFiles.realPath(join(folder, 'backups', '..'))).toBe(await diskFiles.realPath(folder))
  }))

test('nothing stays open of what was read or brought to the disk', (context) =>
  inFolder(async (folder) => {
    const path = join(folder, 'herd.json')
    const file = await diskFiles.create(path)
    const open = await openIn(folder)
    context.skip(open === undefined, 'this system does not tell which files are open')
    expect(open).toEqual([path])
    await file.close()
    await diskFiles.read(path)
    await diskFiles.readStart(path, 4)
    await diskFiles.syncFolder(folder)
    expect(await openIn(folder)).toEqual([])
  }))
