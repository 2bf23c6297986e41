/** What an open herd tells of itself. */
import { expect, test } from 'vitest'
import { notice } from '../../source/breeding/problem.ts'
import { acceptEdits } from '../../source/herd/accept-edits.ts'
import { createHerdFile } from '../../source/herd/create.ts'
import { comfortable, type HerdParts, LiveState } from '../../source/herd/live-state.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import type { Environment } from '../../source/herd/store/environment.ts'
import { pathsOf } from '../../source/herd/store/paths.ts'
import { codes, factsIn, good, herdPath, note, notesIn, smallHerd } from './support/herds.ts'
import { type Call, intercept } from './support/intercept.ts'
import { MemoryFiles, systemError } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

/** An open herd in memory whose calls can be told to fail; tells every call that it made. */
async function openHerd(change: Partial<Environment> = {}, closed = false) {
  const files = new MemoryFiles()
  good(await createHerdFile(herdPath, smallHerd, 'MK', memoryWorld({ files })))
  const calls: Call[] = []
  let failing: Call | undefined = closed ? 'mayWrite' : undefined
  let error: Error = systemError('EROFS')
  const told = intercept(files, (call) => {
    calls.push(call)
    if (call === failing) throw error
  })
  const world = memoryWorld({ files: told, ...change })
  const herd = good(await openHerdFile(herdPath, world))
  calls.length = 0
  return {
    files,
    calls,
    world,
    herd,
    onDisk: async () => notesIn(await factsIn(files.peek(herdPath))),
    fail(call: Call | undefined, with_: Error = systemError('EROFS')) {
      failing = call
      error = with_
    },
  }
}

/** A state of so many facts, of a herd that is not on any disk. */
const stateOf = (facts: number): LiveState =>
  new LiveState({
    world: memoryWorld(),
    paths: pathsOf(herdPath),
    path: herdPath,
    low: { data: { facts: Array.from({ length: facts }), revision: 7 } },
    durable: { notices: [notice('backup-failed', '/farm/backups')] },
    readOnly: [],
  } as unknown as HerdParts)

test('a herd is large past a hundred thousand facts', () => {
  const named = (facts: number): unknown =>
    stateOf(facts).now.problems.map(({ code, values }) => [code, values])
  expect(named(comfortable)).toEqual([['backup-failed', undefined]])
  expect(named(comfortable + 1)).toEqual([
    ['herd-large', { facts: 100_001, limit: 100_000 }],
    ['backup-failed', undefined],
  ])
})

test('a change is told once to each who asked, and none to who asks no more', () => {
  const state = stateOf(0)
  const told: string[] = []
  const end = state.subscribe(() => told.push('one'))
  state.subscribe(() => told.push('other'))
  state.change({ saving: 'saving' })
  state.change({ saving: 'saving' })
  expect(told).toEqual(['one', 'other'])
  end()
  state.change({ trouble: [notice('herd-edited', herdPath)] })
  expect(told).toEqual(['one', 'other', 'other'])
  state.end()
  state.change({ saving: 'saved' })
  expect(told).toHaveLength(3)
  expect(state.now).toMatchObject({ saving: 'saved', revision: 7, trouble: [{ code: 'herd-edited' }] })
})

test('a state in which nothing changed is the same object', () => {
  const state = stateOf(3)
  const before = state.now
  state.change({ unsaved: [], saving: 'saved' })
  expect(state.now).toBe(before)
  state.change({ saving: 'not-saved' })
  expect(state.now).not.toBe(before)
})

test('a herd that may not be written says why as a notice, and refuses what is recorded as a fault', async () => {
  const { calls, herd, onDisk, fail } = await openHerd({}, true)
  const values = { reason: 'disk-read-only' }
  expect(herd.state).toMatchObject({ mode: 'read-only', saving: 'saved' })
  expect(herd.problems).toEqual([{ code: 'herd-read-only', severity: 'notice', path: herdPath, values }])
  const refused = {
    ok: false,
    problems: [{ code: 'herd-read-only', severity: 'fault', path: herdPath, values }],
  }
  expect(await herd.record([note('one')])).toEqual(refused)
  expect(await herd.retry()).toEqual(refused)
  expect(await herd.retry(true)).toEqual(refused)
  expect(calls).toEqual([])
  await herd.poll()
  expect(herd.mode).toBe('read-only')
  fail(undefined)
  await herd.poll()
  expect(herd.state).toMatchObject({ mode: 'writable', problems: [] })
  good(await herd.record([note('one')]))
  expect(await onDisk()).toEqual(['one'])
})

test('what cannot be saved stays apart in order, and is saved by the next record', async () => {
  const { herd, onDisk, fail } = await openHerd()
  fail('rename')
  const both = await Promise.all([herd.record([note('one')]), herd.record([note('two')])])
  for (const outcome of both) expect(codes(outcome)).toEqual(['disk-read-only'])
  expect(codes(await herd.record([note('three')]))).toEqual(['disk-read-only'])
  expect(notesIn(herd.state.unsaved)).toEqual(['one', 'two', 'three'])
  expect(herd.state).toMatchObject({ saving: 'not-saved', trouble: [{ code: 'disk-read-only' }] })
  expect(notesIn(herd.facts)).toEqual([])
  fail(undefined)
  good(await herd.record([note('four')]))
  expect(await onDisk()).toEqual(['one', 'two', 'three', 'four'])
  expect(notesIn(herd.facts)).toEqual(['one', 'two', 'three', 'four'])
  expect(herd.state).toMatchObject({ saving: 'saved', unsaved: [], trouble: [], revision: 2 })
})

test('a fact about an animal that waits to be saved is right', async () => {
  const { herd, onDisk, fail } = await openHerd()
  fail('rename')
  await herd.record([{ kind: 'animal', about: 'cow9', date: '2026-05-28', number: '9', sex: 'F' }])
  fail(undefined)
  const [other, seen] = await Promise.all([
    herd.record([{ kind: 'animal', about: 'cow8', date: '2026-05-28', number: '8', sex: 'F' }]),
    herd.record([note('seen', 'cow8'), note('seen too', 'cow9')]),
  ])
  expect([other?.ok, seen?.ok]).toEqual([true, true])
  expect(await onDisk()).toEqual(['seen', 'seen too'])
})

test('a retry saves what waits, and writes nothing where nothing does, unless over an older copy', async () => {
  const { calls, herd, onDisk, fail } = await openHerd()
  good(await herd.retry())
  expect(calls).toEqual([])
  expect(herd.revision).toBe(1)
  good(await herd.retry(true))
  expect(herd.revision).toBe(2)
  fail('rename')
  await herd.record([note('one')])
  expect(codes(await herd.retry())).toEqual(['disk-read-only'])
  fail(undefined)
  good(await herd.retry())
  expect(await onDisk()).toEqual(['one'])
  fail('rename')
  expect(codes(await herd.retry(true))).toEqual(['disk-read-only'])
  // Nothing waits, so nothing is not saved.
  expect(herd.state).toMatchObject({ saving: 'saved', trouble: [{ code: 'disk-read-only' }] })
})

test('where nothing is right nothing is written', async () => {
  const { calls, herd } = await openHerd()
  const told: string[] = []
  herd.subscribe(() => told.push(herd.state.saving))
  expect(codes(await herd.record([note('of nobody', 'cow9')]))).toEqual(['animal-unknown'])
  expect(calls).toEqual([])
  expect(told).toEqual([])
  expect(herd.revision).toBe(1)
})

test('a poll saves what waits; where the file cannot be read it says so, and goes on when it can', async () => {
  const { herd, onDisk, fail } = await openHerd()
  fail('rename')
  await herd.record([note('one')])
  fail(undefined)
  await herd.poll()
  expect(await onDisk()).toEqual(['one'])
  fail('stamp')
  await herd.poll()
  expect(herd.state.trouble).toMatchObject([{ code: 'disk-read-only', path: herdPath }])
  fail(undefined)
  await herd.poll()
  expect(herd.state.trouble).toEqual([])
})

test('a poll of a file that nobody else touched reads nothing', async () => {
  const { calls, herd } = await openHerd()
  await herd.poll()
  expect(calls).not.toContain('read')
  good(await herd.record([note('one')]))
  calls.length = 0
  await herd.poll()
  expect(calls).not.toContain('read')
})

test('a poll sees the words and the notices of another program’s save', async () => {
  const { files, world, herd } = await openHerd()
  const other = good(await openHerdFile(herdPath, world))
  good(await other.record([note('of the other')]))
  const told: string[] = []
  herd.subscribe(() => told.push(herd.state.saving))
  await herd.poll()
  expect(notesIn(herd.facts)).toEqual(['of the other'])
  expect(herd.revision).toBe(2)
  expect(told).toEqual(['saved'])
  files.place('/farm/copy.json', files.peek(herdPath) ?? Buffer.alloc(0))
  await herd.poll()
  expect(told).toEqual(['saved'])
})

test('a herd edited by hand holds each fact once when its edits are accepted elsewhere', async () => {
  const { files, world } = await openHerd()
  files.place(herdPath, Buffer.concat([files.peek(herdPath) ?? Buffer.alloc(0), Buffer.from('\n')]))
  const edited = good(await openHerdFile(herdPath, world))
  expect(edited.state).toMatchObject({ mode: 'read-only', problems: [{ code: 'herd-edited' }] })
  await edited.poll()
  expect(edited.mode).toBe('read-only')
  good(await acceptEdits(herdPath, world))
  await edited.poll()
  expect(edited.state).toMatchObject({ mode: 'writable', problems: [], trouble: [], unsaved: [] })
  expect(edited.facts).toEqual(await factsIn(files.peek(herdPath)))
})

test('a failure of the program itself is not hidden, and holds nothing up', async () => {
  const { herd, onDisk, fail } = await openHerd()
  fail('stamp', new TypeError('of the program'))
  await expect(herd.poll()).rejects.toThrow('of the program')
  await expect(herd.record([note('one')])).rejects.toThrow('of the program')
  fail(undefined)
  good(await herd.record([note('two')]))
  expect(await onDisk()).toEqual(['one', 'two'])
})

test('making ready loads the lock; where there can be none the first save says so', async () => {
  let prepared = 0
  const lock = {
    prepare: () => {
      prepared += 1
      throw new Error('no lock here')
    },
    tryLock: () => () => undefined,
  }
  const { herd } = await openHerd({ lock })
  await herd.prepare()
  expect(prepared).toBe(1)
})

test('closing waits for what is being saved, and then tells nobody any more', async () => {
  const { files, herd, onDisk } = await openHerd()
  let told = 0
  herd.subscribe(() => {
    told += 1
  })
  const saving = herd.record([note('one')])
  await herd.close()
  expect(await onDisk()).toEqual(['one'])
  good(await saving)
  const before = told
  await files.remove(herdPath)
  await herd.poll()
  expect(told).toBe(before)
})
