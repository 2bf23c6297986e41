import { execFileSync } from 'node:child_process'
import { chmod, lstat, mkdir, open, readFile, stat, symlink } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import type { Problem } from '../../source/breeding/problem.ts'
import { createHerdFile } from '../../source/herd/create.ts'
import { fileLimit } from '../../source/herd/format.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { asFacts } from '../../source/herd/recording.ts'
import { sentence } from '../../source/words/index.ts'
import {
  codes,
  factsIn,
  good,
  herdPath,
  inFolder,
  note,
  notesIn,
  smallHerd,
  soundFile,
} from './support/herds.ts'
import { intercept } from './support/intercept.ts'
import { MemoryFiles } from './support/memory-files.ts'
import { memoryWorld } from './support/worlds.ts'

test('a recorded fact is in the file, and there when it is opened again', () =>
  inFolder(async (folder) => {
    const path = join(folder, 'herd.json')
    good(await createHerdFile(path, smallHerd, 'MK'))
    const herd = good(await openHerdFile(path))
    await herd.prepare()
    const [recorded] = good(await herd.record([note('lame, left hind')], 'MK'))
    expect(await readFile(path, 'utf8')).toContain('lame, left hind')
    await herd.close()
    const again = good(await openHerdFile(path))
    expect(again.facts.at(-1)).toEqual(recorded)
    expect(again.revision).toBe(2)
    expect(again.herdId).toBe(herd.herdId)
  }))

test('a missing file is a fault, never an empty herd', () =>
  inFolder(async (folder) => {
    expect(codes(await openHerdFile(join(folder, 'herd.json')))).toEqual(['herd-missing'])
    expect(codes(await openHerdFile(join(folder, 'no', 'herd.json')))).toEqual(['herd-missing'])
  }))

test('a folder, a pipe and a file too large are faults, at once', () =>
  inFolder(async (folder) => {
    expect(codes(await openHerdFile(folder))).toEqual(['herd-no-file'])
    const pipe = join(folder, 'pipe.json')
    execFileSync('mkfifo', [pipe])
    expect(codes(await openHerdFile(pipe))).toEqual(['herd-no-file'])
    const large = await open(join(folder, 'large.json'), 'w')
    await large.truncate(fileLimit + 1)
    await large.close()
    expect(codes(await openHerdFile(join(folder, 'large.json')))).toEqual(['herd-too-large'])
    const herd = join(folder, 'herd.json')
    good(await createHerdFile(herd, smallHerd))
    const store = good(await openHerdFile(herd))
    await store.poll()
    expect(store.problems).toEqual([])
  }))

test('making a herd never touches a file that is there, and needs right facts and a folder', () =>
  inFolder(async (folder) => {
    const path = join(folder, 'herd.json')
    good(await createHerdFile(path, smallHerd))
    const before = await readFile(path)
    expect(codes(await createHerdFile(path, smallHerd))).toEqual(['path-taken'])
    expect((await readFile(path)).equals(before)).toBe(true)
    expect(codes(await createHerdFile(join(folder, 'no', 'herd.json'), smallHerd))).toEqual(['path-missing'])
    expect(codes(await createHerdFile(join(folder, 'b.json'), [note('of nobody')]))).toEqual([
      'animal-unknown',
    ])
  }))

test('a save through a link keeps the link and the permissions of the file', () =>
  inFolder(async (folder) => {
    await mkdir(join(folder, 'deep'))
    const path = join(folder, 'deep', 'herd.json')
    const link = join(folder, 'link.json')
    good(await createHerdFile(path, smallHerd))
    await symlink(path, link)
    await chmod(path, 0o640)
    good(await good(await openHerdFile(link)).record([note('first')]))
    expect((await lstat(link)).isSymbolicLink()).toBe(true)
    expect((await stat(path)).mode & 0o777).toBe(0o640)
    expect(notesIn(await factsIn(await readFile(path)))).toEqual(['first'])
  }))

/** An open herd in memory. */
async function openInMemory() {
  const files = new MemoryFiles()
  const calls: string[] = []
  const world = memoryWorld({ files: intercept(files, (call) => calls.push(call)) })
  good(await createHerdFile(herdPath, smallHerd, 'MK', world))
  const herd = good(await openHerdFile(herdPath, world))
  return { files, calls, world, herd }
}

test('facts of one action carry one id of the action, who and when; two actions carry two', async () => {
  const { herd } = await openInMemory()
  const [one, two] = good(await herd.record([note('one'), note('two')], 'MK'))
  const [three] = good(await herd.record([note('three')]))
  expect(one).toMatchObject({ by: 'MK', at: '2026-05-28T04:15:09.120Z', action: two?.action })
  expect(one?.id).toMatch(/^[0-9a-z]{12}$/)
  expect(three?.action).not.toBe(one?.action)
  expect(three && 'by' in three).toBe(false)
})

test('facts that were made before they are recorded are kept as they are', async () => {
  const { herd } = await openInMemory()
  const made = asFacts([note('one')], { at: new Date('2026-05-28T03:00:00Z'), by: 'JB' })
  expect(good(await herd.record(made, 'MK'))).toEqual(made)
  expect(herd.facts.at(-1)).toEqual(made[0])
})

test('ticks that come together are saved in order, those that wait in one save', async () => {
  const { files, calls, herd } = await openInMemory()
  good(await herd.record([note('first')]))
  calls.length = 0
  const outcomes = await Promise.all(
    Array.from({ length: 20 }, (_, place) => herd.record([note(`${place}`)])),
  )
  expect(outcomes.every((outcome) => outcome.ok)).toBe(true)
  expect(notesIn(await factsIn(files.peek(herdPath)))).toEqual([
    'first',
    ...Array.from({ length: 20 }, (_, place) => `${place}`),
  ])
  expect(calls.filter((call) => call === 'rename')).toHaveLength(1)
})

test('a wrong fact is refused and not kept; what came with other actions is saved', async () => {
  const { herd } = await openInMemory()
  const [wrong, right, doubled] = await Promise.all([
    herd.record([note('good'), { kind: 'looked', about: 'cow412', date: '2026-02-30' }]),
    herd.record([{ ...note('right'), id: 'mine' }]),
    herd.record([{ ...note('other'), id: 'mine' }]),
  ])
  expect(wrong).toMatchObject({
    ok: false,
    problems: [{ code: 'field-date', path: 'facts[1].date', animal: '412' }],
  })
  expect(right?.ok).toBe(true)
  expect(doubled && codes(doubled)).toEqual(['id-other-content'])
  expect(notesIn(herd.facts)).toEqual(['right'])
  expect(herd.state).toMatchObject({ saving: 'saved', unsaved: [], trouble: [] })
})

test('the state tells saving, saved and not saved, and is another object only when something changed', async () => {
  const { files, herd } = await openInMemory()
  const seen: string[] = []
  herd.subscribe(() => seen.push(`${herd.state.saving} ${herd.state.unsaved.length}`))
  good(await herd.record([note('first')]))
  const bytes = files.peek(herdPath) ?? Buffer.alloc(0)
  await files.remove(herdPath)
  await herd.record([note('second')])
  files.place(herdPath, bytes)
  await herd.poll()
  expect(seen).toEqual(['saving 1', 'saved 0', 'saving 1', 'not-saved 1', 'saved 0'])
  const before = herd.state
  await herd.poll()
  expect(herd.state).toBe(before)
})

test('a file that would grow past its limit: the action is refused, and the next ones are not held up', async () => {
  const { files, herd } = await openInMemory()
  const before = files.peek(herdPath)
  const many = Array.from({ length: 6800 }, () => note('x'.repeat(10_000)))
  expect(codes(await herd.record(many))).toEqual(['herd-full'])
  expect(files.peek(herdPath)).toBe(before)
  good(await herd.record([note('small')]))
  expect(herd.state).toMatchObject({ saving: 'saved', unsaved: [] })
})

test('a herd that could be looked at only becomes writable when its edits are accepted', async () => {
  const { files, world, herd } = await openInMemory()
  files.place(herdPath, Buffer.concat([files.peek(herdPath) ?? Buffer.alloc(0), Buffer.from('\n')]))
  const edited = good(await openHerdFile(herdPath, world))
  expect(edited.mode).toBe('read-only')
  expect(edited.facts).toEqual(herd.facts)
  const { acceptEdits } = await import('../../source/herd/accept-edits.ts')
  good(await acceptEdits(herdPath, world))
  await edited.poll()
  expect(edited.mode).toBe('writable')
  expect(edited.problems).toEqual([])
  good(await edited.record([note('first')]))
})

test('a herd of more than a hundred thousand facts says so, and works as usual', async () => {
  const files = new MemoryFiles()
  const world = memoryWorld({ files })
  const many = Array.from({ length: 100_000 }, (_, index) => ({ ...note(`${index}`), id: `note-${index}` }))
  files.place(herdPath, await soundFile([...smallHerd, ...many]))
  const herd = good(await openHerdFile(herdPath, world))
  expect(herd.problems).toEqual([
    { code: 'herd-large', severity: 'notice', path: herdPath, values: { facts: 100_004, limit: 100_000 } },
  ])
  expect(sentence(herd.problems[0] as Problem)).toBe(
    '/farm/herd.json: the herd has 100004 facts; up to 100000 everything stays quick. Seasons older than two years are closed with: dawnlist archive /farm/herd.json.',
  )
  good(await herd.record([note('one more')]))
  expect(herd.problems).toHaveLength(1)
})
