/** What a save that was killed left half written. */
import { expect, test } from 'vitest'
import type { Environment } from '../../../source/herd/store/environment.ts'
import type { Lock } from '../../../source/herd/store/lock.ts'
import { pathsOf } from '../../../source/herd/store/paths.ts'
import { sweep } from '../../../source/herd/store/sweep.ts'
import { herdPath } from '../support/herds.ts'
import { intercept } from '../support/intercept.ts'
import { MemoryFiles, systemError } from '../support/memory-files.ts'
import { memoryWorld } from '../support/worlds.ts'

const half = '.0123456789ab.temp'
const ours = [
  `/farm/.herd.json${half}`,
  `/farm/.herd.archive-2026-05-28.json${half}`,
  `/farm/backups/.herd.2026-05-28.json${half}`,
]

/** What is left of these files after sweeping. */
async function left(paths: readonly string[], change: Partial<Environment> = {}): Promise<string[]> {
  const files = new MemoryFiles(['/farm', '/farm/backups'])
  for (const path of paths) files.place(path, Buffer.from('half'))
  await sweep(memoryWorld({ files, ...change }), pathsOf(herdPath))
  return files.paths()
}
const lockThat = (tryLock: Lock['tryLock']): Lock => ({ prepare: () => undefined, tryLock })

test('what is half written of the herd, its archives and its copies goes, and nothing else', async () => {
  const others = [
    herdPath,
    `/farm/.other.json${half}`,
    `/farm/.herd.edited-2026-05-28.json${half}`,
    '/farm/.herd.json.lock',
    '/farm/backups/herd.2026-05-28.json',
    `/farm/backups/.herd.json${half}`,
  ]
  expect(await left([...ours, ...others])).toEqual(others)
})

test('it goes under the lock alone, which is free afterwards', async () => {
  const done: string[] = []
  const free = lockThat(() => {
    done.push('locked')
    return () => done.push('free')
  })
  expect(await left(ours, { lock: free })).toEqual([])
  expect(done).toEqual(['locked', 'free'])
  done.length = 0
  await left([herdPath], { lock: free })
  expect(done).toEqual([])
})

test('while another program saves, or where there can be no lock, all of it stays', async () => {
  const failing = lockThat(() => {
    throw new Error('no lock here')
  })
  expect(await left(ours, { lock: lockThat(() => undefined) })).toEqual(ours)
  expect(await left(ours, { lock: failing })).toEqual(ours)
})

test('what cannot be removed, or a folder that cannot be read, keeps nothing from being opened', async () => {
  const files = new MemoryFiles()
  for (const path of ours.slice(0, 2)) files.place(path, Buffer.from('half'))
  const world = memoryWorld({
    files: intercept(files, (call, path) => {
      if (call === 'remove' && path === ours[0]) throw systemError('EACCES')
    }),
  })
  await sweep(world, pathsOf(herdPath))
  expect(files.paths()).toEqual([ours[0]])
})

test('a failure of the program itself is not hidden', async () => {
  for (const call of ['names', 'remove']) {
    const files = new MemoryFiles()
    for (const path of ours.slice(0, 2)) files.place(path, Buffer.from('half'))
    const broken = intercept(files, (each) => {
      if (each === call) throw new TypeError('of the program')
    })
    await expect(sweep(memoryWorld({ files: broken }), pathsOf(herdPath))).rejects.toThrow('of the program')
  }
})
