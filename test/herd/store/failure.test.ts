/** What a failed call of the system means to the user. */
import { expect, test } from 'vitest'
import { fault } from '../../../source/breeding/problem.ts'
import { Refusal } from '../../../source/herd/herd-file.ts'
import { attempt, failure } from '../../../source/herd/store/failure.ts'
import { systemCode } from '../../../source/herd/store/files.ts'
import { systemError } from '../support/memory-files.ts'

// Error codes by POSIX.1-2017 (IEEE Std 1003.1), System Interfaces, 2.3 Error Numbers.
test.each([
  ['ENOSPC', 'disk-full'],
  ['EDQUOT', 'disk-full'],
  ['EACCES', 'no-permission'],
  ['EPERM', 'no-permission'],
  ['EROFS', 'disk-read-only'],
  ['EIO', 'disk-error'],
  ['EMFILE', 'too-many-open-files'],
  ['ENFILE', 'too-many-open-files'],
  ['ENOENT', 'path-missing'],
  ['ENOTDIR', 'path-missing'],
  ['EEXIST', 'path-taken'],
  ['EISDIR', 'path-is-folder'],
  ['EBUSY', 'file-held'],
  ['ENAMETOOLONG', 'path-too-long'],
  ['ENOTTY', 'system-failure'],
])('%s is %s', (reason, code) => {
  expect(failure(systemError(reason), '/farm')).toEqual(fault(code, '/farm', { reason }))
})

test('what was refused already keeps its first reason', () => {
  const problem = fault('write-short', '/farm/herd.json')
  expect(failure(new Refusal(problem, fault('disk-full', '/')), '/farm')).toBe(problem)
  expect(failure(new Refusal(), '/farm')).toEqual(fault('system-failure', '/farm', { reason: '' }))
})

test('a failure of the program itself is no failure of the system', () => {
  const own = [
    new TypeError('x is not a function'),
    'text',
    undefined,
    Object.assign(new Error(''), { code: 7 }),
  ]
  for (const error of own) {
    expect(() => failure(error, '/farm')).toThrow()
    expect(() => systemCode(error)).toThrow()
  }
  expect(systemCode(systemError('EIO'))).toBe('EIO')
})

test('work with a file gives what it gives, and is refused with the name of the file', async () => {
  const failing = (error: unknown) => attempt('/farm', () => Promise.reject(error))
  const refusal = new Refusal(fault('write-short', '/elsewhere'))
  const own = new TypeError('of the program')
  expect(await attempt('/farm', async () => 7)).toBe(7)
  await expect(failing(systemError('EIO'))).rejects.toMatchObject({
    name: 'Refusal',
    message: 'disk-error /farm',
    problems: [{ code: 'disk-error', path: '/farm' }],
  })
  await expect(failing(refusal)).rejects.toBe(refusal)
  await expect(failing(own)).rejects.toBe(own)
})
