import type { Environment } from '../../../source/herd/store/environment.ts'
import type { Lock } from '../../../source/herd/store/lock.ts'
import type { Random } from './memory-files.ts'
import { MemoryFiles } from './memory-files.ts'

/** A lock for programs that share one memory. */
export function memoryLock(): Lock {
  const held = new Set<string>()
  return {
    prepare: () => undefined,
    tryLock(path) {
      if (held.has(path)) return undefined
      held.add(path)
      return () => held.delete(path)
    },
  }
}

/** A lock that keeps nobody away, as on some network folders. */
export const noLock: Lock = { prepare: () => undefined, tryLock: () => () => undefined }

/** A computer in memory on the morning of 28 May 2026, where waiting takes no time. */
export const memoryWorld = (change: Partial<Environment> = {}): Environment => ({
  files: new MemoryFiles(),
  lock: memoryLock(),
  now: () => new Date('2026-05-28T04:15:09.120Z'),
  platform: 'linux',
  pause: async () => undefined,
  migrations: [],
  ...change,
})

/**
 * Random numbers that a seed repeats (mulberry32, public domain).
 *
 * @param seed a whole number
 */
export function seeded(seed: number): Random {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}
