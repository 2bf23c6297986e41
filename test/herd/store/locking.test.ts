/** Waiting for one's turn to save. */
import { expect, test } from 'vitest'
import type { Lock } from '../../../source/herd/store/lock.ts'
import { tryLock, withLock } from '../../../source/herd/store/locking.ts'
import { pathsOf } from '../../../source/herd/store/paths.ts'
import { memoryWorld } from '../support/worlds.ts'

const paths = pathsOf('/farm/herd.json')

/** A computer whose lock another program holds for so many tries; tells what was done, in order. */
function heldWorld(tries: number) {
  const done: string[] = []
  let left = tries
  const lock: Lock = {
    prepare: () => undefined,
    tryLock(path) {
      done.push(`try ${path}`)
      left -= 1
      return left >= 0 ? undefined : () => done.push('free')
    },
  }
  const pause = async (milliseconds: number): Promise<void> => {
    done.push(`wait ${milliseconds}`)
  }
  return { done, world: memoryWorld({ lock, pause }) }
}

test('work is done while the lock is held, and the lock is free after it', async () => {
  const { done, world } = heldWorld(0)
  expect(await withLock(world, paths, async () => done.push('work'))).toBe(2)
  expect(done).toEqual(['try /farm/.herd.json.lock', 'work', 'free'])
})

test('the lock is free after work that failed', async () => {
  const { done, world } = heldWorld(0)
  await expect(withLock(world, paths, () => Promise.reject(new Error('of the work')))).rejects.toThrow(
    'of the work',
  )
  expect(done.at(-1)).toBe('free')
})

test('while another program saves it is waited for', async () => {
  const { done, world } = heldWorld(2)
  await withLock(world, paths, async () => done.push('work'))
  const asked = 'try /farm/.herd.json.lock'
  expect(done).toEqual([asked, 'wait 10', asked, 'wait 10', asked, 'work', 'free'])
})

test('after five seconds it is given up, and nothing is done', async () => {
  const { done, world } = heldWorld(Number.POSITIVE_INFINITY)
  await expect(withLock(world, paths, async () => done.push('work'))).rejects.toMatchObject({
    problems: [{ code: 'herd-locked', path: '/farm/herd.json', values: { seconds: 5 } }],
  })
  expect(done.filter((each) => each === 'wait 10')).toHaveLength(500)
  expect(done).not.toContain('work')
})

test.each([
  [new Error('no such folder'), 'no such folder'],
  ['a text', 'a text'],
])('a lock that cannot be had is refused with its reason', (thrown, reason) => {
  const lock: Lock = {
    prepare: () => undefined,
    tryLock() {
      throw thrown
    },
  }
  expect(() => tryLock(memoryWorld({ lock }), paths)).toThrow(
    expect.objectContaining({
      problems: [
        { code: 'lock-failed', severity: 'fault', path: '/farm/.herd.json.lock', values: { reason } },
      ],
    }),
  )
})
