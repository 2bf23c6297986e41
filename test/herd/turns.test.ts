import { setImmediate } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { Turns } from '../../source/herd/turns.ts'

test('pieces of work are done one after the other, in the order in which they came', async () => {
  const turns = new Turns()
  const done: string[] = []
  const slow = turns.take(async () => {
    done.push('slow begins')
    await setImmediate()
    done.push('slow ends')
    return 'slow'
  })
  const quick = turns.take(async () => {
    done.push('quick')
    return 'quick'
  })
  expect(await quick).toBe('quick')
  expect(await slow).toBe('slow')
  expect(done).toEqual(['slow begins', 'slow ends', 'quick'])
})

test('work that fails fails for who asked, and holds up nothing behind it', async () => {
  const turns = new Turns()
  const failing = turns.take(() => Promise.reject(new Error('of the work')))
  const next = turns.take(async () => 'next')
  await expect(failing).rejects.toThrow('of the work')
  expect(await next).toBe('next')
})

test('the end comes when all is done, failed or not', async () => {
  const turns = new Turns()
  const done: string[] = []
  const failing = turns.take(async () => {
    await setImmediate()
    done.push('failed')
    throw new Error('of the work')
  })
  const ended = turns.end().then(() => done.push('end'))
  await expect(failing).rejects.toThrow('of the work')
  await ended
  expect(done).toEqual(['failed', 'end'])
})
