/** Every call of the system that a save makes fails, one after the other: durability table, rows 2 and 3. */
import { expect, test } from 'vitest'
import { createHerdFile } from '../../source/herd/create.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import type { Environment } from '../../source/herd/store/environment.ts'
import { codes, factsIn, good, herdPath, note, notesIn, smallHerd } from './support/herds.ts'
import { type Call, intercept } from './support/intercept.ts'
import { MemoryFiles, systemError } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

const meaning: Record<string, string> = {
  EIO: 'disk-error',
  ENOSPC: 'disk-full',
  EACCES: 'no-permission',
  EROFS: 'disk-read-only',
  EMFILE: 'too-many-open-files',
}

/** A computer whose files can be told to fail. */
async function failingWorld(): Promise<{
  world: Environment
  files: MemoryFiles
  fail: (n: number, code: string, ever: boolean) => void
  stop: () => Call | undefined
}> {
  const files = new MemoryFiles()
  good(await createHerdFile(herdPath, smallHerd, 'MK', memoryWorld({ files })))
  let left = Number.POSITIVE_INFINITY
  let code = ''
  let ever = false
  let failed: Call | undefined
  const failing = intercept(files, (call) => {
    left -= 1
    if (left > 0 || (left < 0 && !ever)) return
    failed ??= call
    throw systemError(code)
  })
  return {
    world: memoryWorld({ files: failing }),
    files,
    fail(n, withCode, forEver) {
      left = n
      code = withCode
      ever = forEver
      failed = undefined
    },
    stop() {
      left = Number.POSITIVE_INFINITY
      return failed
    },
  }
}

for (const [code, word] of Object.entries(meaning)) {
  for (const ever of [false, true]) {
    test(`${code} at any call of a save, ${ever ? 'from then on' : 'once'}: old or new file, memory as saved, retry works`, async () => {
      const calls: Call[] = []
      for (let n = 1; ; n += 1) {
        const { world, files, fail, stop } = await failingWorld()
        const herd = good(await openHerdFile(herdPath, world))
        good(await herd.record([note('first')]))
        const saved = files.peek(herdPath)
        fail(n, code, ever)
        const outcome = await herd.record([note('second')])
        const failed = stop()
        const onDisk = notesIn(await factsIn(files.peek(herdPath)))
        if (outcome.ok) {
          expect(onDisk).toEqual(['first', 'second'])
          expect(notesIn(herd.facts)).toEqual(['first', 'second'])
          expect(herd.state).toMatchObject({ saving: 'saved', unsaved: [], trouble: [] })
        } else {
          expect(outcome.problems).toMatchObject([{ code: word, severity: 'fault' }])
          expect(outcome.problems[0]?.path).toMatch(/^\/farm/)
          expect(onDisk.join()).toMatch(/^first(,second)?$/)
          if (onDisk.length === 1) expect(files.peek(herdPath)?.equals(saved ?? Buffer.alloc(0))).toBe(true)
          expect(notesIn(herd.facts)).toEqual(['first'])
          expect(notesIn(herd.state.unsaved)).toEqual(['second'])
          expect(herd.state.saving).toBe('not-saved')
          good(await herd.retry())
          expect(notesIn(herd.facts)).toEqual(['first', 'second'])
          expect(notesIn(await factsIn(files.peek(herdPath)))).toEqual(['first', 'second'])
        }
        if (failed === undefined) break
        calls.push(failed)
      }
      expect(calls).toEqual(
        expect.arrayContaining([
          'mayWrite',
          'read',
          'create',
          'write',
          'sync',
          'close',
          'rename',
          'syncFolder',
        ]),
      )
    })
  }
}

test('a failed day copy is a notice, and the tick is saved', async () => {
  const files = new MemoryFiles()
  good(await createHerdFile(herdPath, smallHerd, 'MK', memoryWorld({ files })))
  const failing = intercept(files, (_, path) => {
    if (path.includes('backups')) throw systemError('ENOSPC')
  })
  const herd = good(await openHerdFile(herdPath, memoryWorld({ files: failing })))
  good(await herd.record([note('first')]))
  expect(herd.problems).toMatchObject([{ code: 'backup-failed', values: { reason: 'disk-full' } }])
  expect(notesIn(await factsIn(files.peek(herdPath)))).toEqual(['first'])
})

test('any call of opening fails: a fault that names it, or the herd', async () => {
  for (const [code, word] of Object.entries(meaning)) {
    for (let n = 1; ; n += 1) {
      const { world, fail, stop } = await failingWorld()
      fail(n, code, false)
      const opened = await openHerdFile(herdPath, world)
      if (stop() === undefined) break
      if (!opened.ok) expect(codes(opened)).toContain(word)
    }
  }
})

test('a disk that takes half of each write and says so gets the rest', async () => {
  const { files, herd } = await shortWrites(
    (bytes) => Math.ceil(bytes / 2),
    (taken) => taken,
  )
  good(await herd.record([note('first')]))
  expect(notesIn(await factsIn(files.peek(herdPath)))).toEqual(['first'])
})

test('a disk that takes half of a write and says all, or takes nothing: not saved, the file as it was', async () => {
  for (const [takes, says] of [
    [(bytes: number) => Math.floor(bytes / 2), (_: number, bytes: number) => bytes],
    [() => 0, () => 0],
  ] as const) {
    const { files, herd } = await shortWrites(takes, says)
    const before = files.peek(herdPath)
    expect(codes(await herd.record([note('first')]))).toEqual(['write-short'])
    expect(files.peek(herdPath)).toBe(before)
    expect(files.paths().filter((path) => path.endsWith('.temp'))).toEqual([])
    expect(herd.state.saving).toBe('not-saved')
  }
})

async function shortWrites(takes: (bytes: number) => number, says: (taken: number, bytes: number) => number) {
  const files = new MemoryFiles()
  good(await createHerdFile(herdPath, smallHerd, 'MK', memoryWorld({ files })))
  const short = Object.assign(
    intercept(files, () => undefined),
    {
      async create(path: string, mode?: number) {
        const file = await files.create(path, mode)
        return {
          ...file,
          async write(bytes: Buffer, start: number) {
            const wanted = bytes.length - start
            const taken = takes(wanted)
            await file.write(bytes.subarray(0, start + taken), start)
            return says(taken, wanted)
          },
        }
      },
    },
  )
  return { files, herd: good(await openHerdFile(herdPath, memoryWorld({ files: short }))) }
}
