import { fault } from '../../breeding/problem.ts'
import { Refusal } from '../herd-file.ts'
import type { Environment } from './environment.ts'
import type { Release } from './lock.ts'
import type { Paths } from './paths.ts'

const lockWait = 5000
const lockPause = 10

/**
 * Does something while no other program saves the same herd, waiting up to five seconds for its turn.
 *
 * @throws Refusal with `herd-locked` where another program keeps the lock, `lock-failed` where there can be none
 */
export async function withLock<T>(world: Environment, paths: Paths, work: () => Promise<T>): Promise<T> {
  const release = await takeLock(world, paths)
  try {
    return await work()
  } finally {
    release()
  }
}

async function takeLock(world: Environment, paths: Paths): Promise<Release> {
  for (let waited = 0; waited < lockWait; waited += lockPause) {
    const release = tryLock(world, paths)
    if (release !== undefined) return release
    await world.pause(lockPause)
  }
  throw new Refusal(fault('herd-locked', paths.file, { seconds: lockWait / 1000 }))
}

/** One try. @throws Refusal with `lock-failed` */
export function tryLock(world: Environment, paths: Paths): Release | undefined {
  try {
    return world.lock.tryLock(paths.lock)
  } catch (error) {
    throw new Refusal(
      fault('lock-failed', paths.lock, { reason: error instanceof Error ? error.message : String(error) }),
    )
  }
}
