/** On Windows another program that holds the file makes renaming fail for a while: durability table, row 12. */
import { expect, test } from 'vitest'
import { createHerdFile } from '../../source/herd/create.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { codes, factsIn, good, herdPath, note, notesIn, smallHerd } from './support/herds.ts'
import { intercept } from './support/intercept.ts'
import { MemoryFiles, systemError } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

/** A herd whose file is held for so many renames. */
async function heldHerd(times: number, code = 'EPERM', platform: NodeJS.Platform = 'win32') {
  const files = new MemoryFiles()
  good(await createHerdFile(herdPath, smallHerd, 'MK', memoryWorld({ files })))
  let left = times
  let waited = 0
  const held = intercept(files, (call) => {
    if (call === 'syncFolder') throw systemError(platform === 'win32' ? 'EISDIR' : 'EINVAL')
    if (call !== 'rename' || left === 0) return
    left -= 1
    throw systemError(code)
  })
  const pause = async (milliseconds: number): Promise<void> => {
    waited += milliseconds
  }
  const world = memoryWorld({ files: held, platform, pause })
  const herd = good(await openHerdFile(herdPath, world))
  return {
    files,
    herd,
    waited: () => waited,
    freed: () => {
      left = 0
    },
  }
}

for (const code of ['EPERM', 'EACCES', 'EBUSY']) {
  test(`${code} five times: saved`, async () => {
    const { files, herd } = await heldHerd(5, code)
    good(await herd.record([note('first')]))
    expect(notesIn(await factsIn(files.peek(herdPath)))).toEqual(['first'])
    expect(herd.problems).toEqual([])
  })
}

test('held for ever: given up after six seconds, with the file as it was; saved when it is free', async () => {
  const { files, herd, waited, freed } = await heldHerd(Number.POSITIVE_INFINITY)
  const before = files.peek(herdPath)
  expect(codes(await herd.record([note('first')]))).toEqual(['file-held'])
  expect(waited()).toBeGreaterThanOrEqual(6000)
  expect(waited()).toBeLessThan(6500)
  expect(files.peek(herdPath)).toBe(before)
  expect(files.paths().filter((path) => path.endsWith('.temp'))).toEqual([])
  freed()
  good(await herd.retry())
  expect(notesIn(await factsIn(files.peek(herdPath)))).toEqual(['first'])
})

test('elsewhere a refused rename is refused at once, and a folder that cannot be synced is noted once', async () => {
  const refused = await heldHerd(1, 'EPERM', 'linux')
  expect(codes(await refused.herd.record([note('first')]))).toEqual(['no-permission'])
  expect(refused.waited()).toBe(0)
  const { herd } = await heldHerd(0, '', 'linux')
  good(await herd.record([note('first')]))
  good(await herd.record([note('second')]))
  expect(herd.problems).toMatchObject([{ code: 'folder-sync-unsupported', severity: 'notice' }])
})
