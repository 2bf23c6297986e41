/** A clock that is wrong and clocks that change: durability table, row 11. */
import { join } from 'node:path'
import { expect, test } from 'vitest'
import type { NewFact } from '../../source/breeding/facts.ts'
import { createHerdFile } from '../../source/herd/create.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { backupsOf } from '../../source/herd/restore.ts'
import { thisComputer } from '../../source/herd/store/environment.ts'
import { child } from './support/child.ts'
import { good, inFolder, smallHerd } from './support/herds.ts'

const happened: readonly NewFact[] = [
  { id: 'calved', kind: 'calving', about: 'cow412', date: '2026-03-10', ease: 1 },
  {
    id: 'heat',
    kind: 'heat',
    about: 'cow412',
    date: '2026-05-07',
    time: '00:10',
    how: 'paint',
    certainty: 'sure',
  },
  {
    id: 'served',
    kind: 'service',
    about: 'cow412',
    date: '2026-05-07',
    time: '06:00',
    sire: 'HX204',
    straw: 'conventional',
  },
  { id: 'maiden-heat', kind: 'heat', about: 'cow7', date: '2026-05-08', how: 'standing', certainty: 'sure' },
  { id: 'looked', kind: 'looked', about: 'cow412', date: '2026-05-27' },
]
const clocks: Readonly<Record<string, readonly string[]>> = {
  right: ['2026-03-10', '2026-05-07', '2026-05-07', '2026-05-08', '2026-05-27'],
  'back a day': ['2026-03-10', '2026-05-07', '2026-05-06', '2026-05-05', '2026-05-04'],
  'forward ten years': ['2026-03-10', '2036-05-07', '2036-05-08', '2026-05-08', '2026-05-27'],
}

/** Makes a herd while the clock shows these dates, one fact a save. */
async function herdRecorded(folder: string, dates: readonly string[]): Promise<string> {
  const path = join(folder, `herd.json`)
  let place = -1
  const now = (): Date => new Date(`${place < 0 ? '2026-03-01' : dates[place]}T06:00:00Z`)
  const world = { ...thisComputer, now }
  good(
    await createHerdFile(
      path,
      smallHerd.map((fact, index) => ({ ...fact, id: `start${index}` })),
      'MK',
      world,
    ),
  )
  const herd = good(await openHerdFile(path, world))
  for (const fact of happened) {
    place += 1
    good(await herd.record([fact]))
  }
  expect(await backupsOf(path, world)).toHaveLength(new Set(dates).size)
  return path
}

interface Seen {
  readonly offset: number
  readonly order: readonly string[]
  readonly days: readonly (readonly number[])[]
  readonly lists: readonly { readonly rows: readonly unknown[] }[]
  readonly dates: readonly string[]
}

test('whatever the clock shows, order, day counts and list are the same', { timeout: 120_000 }, async () => {
  const seen: Seen[] = []
  for (const dates of Object.values(clocks)) {
    await inFolder(async (folder) => {
      seen.push((await child('./clock-child.ts', [await herdRecorded(folder, dates), '2026-05-28'])) as Seen)
    })
  }
  expect(seen[0]?.order.slice(-5)).toEqual(['calved', 'heat', 'served', 'maiden-heat', 'looked'])
  expect(seen[0]?.days[0]?.slice(-5)).toEqual([79, 21, 21, 20, 1])
  expect(seen[0]?.lists[0]?.rows).not.toEqual([])
  expect(seen[1]).toEqual(seen[0])
  expect(seen[2]).toEqual(seen[0])
})

test(
  'in any time zone, on the days on which clocks change too, everything is the same',
  { timeout: 120_000 },
  () =>
    inFolder(async (folder) => {
      const path = await herdRecorded(folder, clocks.right ?? [])
      const days = ['2026-03-29', '2026-04-05', '2026-05-28', '2026-09-06', '2026-09-27']
      const zones = ['Pacific/Auckland', 'Europe/Dublin', 'Australia/Lord_Howe', 'America/Santiago', 'UTC']
      const seen: Seen[] = []
      for (const zone of zones) {
        seen.push((await child('./clock-child.ts', [path, ...days], { env: { TZ: zone } })) as Seen)
      }
      expect(new Set(seen.map((each) => each.offset)).size, 'the zones were not taken').toBe(5)
      for (const each of seen) expect({ ...each, offset: 0 }).toEqual({ ...seen[0], offset: 0 })
      expect(seen[0]?.lists.map((list) => list.rows.length)).not.toContain(0)
      expect(seen[0]?.dates).toEqual([
        ...['2026-04-04', '2026-04-05', '2026-09-26', '2026-09-27'],
        ...['2026-03-28', '2026-03-29', '2026-10-24', '2026-10-25'],
        ...['2026-04-04', '2026-04-05'],
        // Santiago, 6 September 2026: after 23:59 on the 5th comes 01:00 on the 6th, there is no midnight.
        ...['2026-09-05', '2026-09-06'],
      ])
    }),
)
