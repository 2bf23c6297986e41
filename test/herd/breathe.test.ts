/** Long work is done in slices, so that keys and frames come through. */
import { expect, test } from 'vitest'
import type { Fact } from '../../source/breeding/facts.ts'
import { inSlices } from '../../source/herd/breathe.ts'
import { decodeLines, encodeLines, sumOf } from '../../source/herd/format.ts'

/** How often something else came through while this was done. */
async function cameThrough(work: () => Promise<unknown>): Promise<number> {
  let times = 0
  let next = setImmediate(function again() {
    times += 1
    next = setImmediate(again)
  })
  await work()
  clearImmediate(next)
  return times
}

test.each([0, 1, 3, 4, 6, 7])('of %d items each is taken once, in order, with its place', async (count) => {
  const items = Array.from({ length: count }, (_, place) => `item ${place}`)
  const seen: string[] = []
  await inSlices(items, 3, (item, place) => seen.push(`${item} at ${place}`))
  expect(seen).toEqual(items.map((item, place) => `${item} at ${place}`))
})

test('others come through between two slices, and are not waited for before the first or after the last', async () => {
  for (const [count, times] of [
    [0, 0],
    [3, 0],
    [4, 1],
    [6, 1],
    [7, 2],
  ] as const)
    expect(await cameThrough(() => inSlices(Array.from({ length: count }), 3, () => undefined))).toBe(times)
  expect(await cameThrough(() => inSlices([1, 2, 3], 1, () => undefined))).toBe(2)
})

const header = { format: 1, revision: 1, herdId: 'x' }
const facts = (count: number): Fact[] =>
  Array.from({ length: count }, (_, place) => ({
    id: `n${place}`,
    about: 'cow412',
    date: '2026-05-28',
    at: '2026-05-28T04:15:09.120Z',
    kind: 'note',
    note: 'x'.repeat(100),
  }))

test('a small herd is written, summed and read at one go; a large one lets others through', async () => {
  for (const [count, large] of [
    [100, false],
    [12_000, true],
  ] as const) {
    let lines: readonly Buffer[] = []
    const encoding = async (): Promise<void> => {
      lines = await encodeLines(facts(count))
    }
    expect((await cameThrough(encoding)) > 0).toBe(large)
    const whole = Buffer.concat(lines)
    expect((await cameThrough(() => sumOf(header, [whole]))) > 0).toBe(large)
    expect((await cameThrough(() => decodeLines(whole))) > 0).toBe(large)
    expect(await decodeLines(whole)).toEqual(facts(count))
  }
})
