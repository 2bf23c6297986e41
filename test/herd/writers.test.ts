/** Several programs on one file, killed and frozen: durability table, rows 1 and 9. The long forms are in bench/torture.ts. */
import { expect, test } from 'vitest'
import { createHerdFile } from '../../source/herd/create.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { factsIn, good, herdPath, inFolder, note, notesIn, smallHerd } from './support/herds.ts'
import { MemoryFiles } from './support/memory-files.ts'
import { memoryWorld, noLock } from './support/worlds.ts'
import { killWriters, writeTogether } from './support/writers.ts'

/** Milliseconds; generous, for programs start slowly on a busy machine. */
const timeout = 120_000

test('three writers, one killed again and again: every acknowledged fact is in the file', { timeout }, () =>
  inFolder(async (folder) => {
    const run = await killWriters(folder, 25, 10)
    expect(run).toMatchObject({ lost: 0, refused: [], errors: '', leftovers: [] })
    expect(run.kills).toBeGreaterThanOrEqual(3)
    expect(run.acknowledged).toBeGreaterThanOrEqual(run.kills)
  }),
)

for (const writers of [2, 6]) {
  test(`${writers} writers at once: nothing lost, each fact once`, { timeout }, () =>
    inFolder(async (folder) => {
      const run = await writeTogether(folder, writers, 20)
      expect(run).toMatchObject({
        acknowledged: writers * 20,
        lost: 0,
        refused: [],
        errors: '',
        leftovers: [],
      })
    }),
  )
}

test('a writer frozen for three seconds holds the others up and loses nothing', { timeout }, () =>
  inFolder(async (folder) => {
    const run = await writeTogether(folder, 2, 100, 3000)
    expect(run).toMatchObject({ acknowledged: 200, lost: 0, refused: [], errors: '', leftovers: [] })
  }),
)

test('a lock that keeps nobody away: after one look each, nothing is lost and each fact is there once', async () => {
  const files = new MemoryFiles()
  const world = memoryWorld({ files, lock: noLock })
  good(await createHerdFile(herdPath, smallHerd, 'MK', world))
  const one = good(await openHerdFile(herdPath, world))
  const other = good(await openHerdFile(herdPath, world))
  const texts: string[] = []
  let races = 0
  for (let round = 0; round < 20; round += 1) {
    const saves = [one, other].map(async (herd, place) => {
      const text = `${round}-${place}`
      good(await herd.record([note(text)]))
      texts.push(text)
    })
    await Promise.all(saves)
    if (notesIn(await factsIn(files.peek(herdPath))).length < texts.length) races += 1
    await one.poll()
    await other.poll()
    expect(notesIn(await factsIn(files.peek(herdPath))).sort()).toEqual([...texts].sort())
  }
  expect(races, 'the saves never overlapped, so nothing was tried').toBeGreaterThan(0)
  await one.poll()
  expect(notesIn(one.facts).sort()).toEqual(notesIn(other.facts).sort())
})
