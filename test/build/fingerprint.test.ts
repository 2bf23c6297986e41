import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { recordOf, sourceSum, staleness } from '../../build/fingerprint.ts'

let top = ''

const write = (path: string, text: string): void => {
  mkdirSync(join(top, path, '..'), { recursive: true })
  writeFileSync(join(top, path), text)
}

beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'dawnlist-fingerprint-'))
  write('source/cli.ts', 'one')
  write('source/breeding/day.ts', 'two')
  write('dist/dawnlist.js', 'built')
  write('dist/build.json', JSON.stringify(recordOf(top, sourceSum(top))))
})

afterEach(() => rmSync(top, { recursive: true, force: true }))

test('a bundle that was just built is not stale', () => {
  expect(staleness(top)).toBeUndefined()
})

test('without a record it has not been built', () => {
  rmSync(join(top, 'dist'), { recursive: true })
  expect(staleness(top)).toBe('dist has not been built.')
})

test.each([
  ['a byte of the source changed', () => write('source/breeding/day.ts', 'twp')],
  ['a source file came', () => write('source/breeding/new.ts', '')],
  ['a source file went', () => rmSync(join(top, 'source/cli.ts'))],
  ['the lock changed', () => write('package-lock.json', '{}')],
])('stale: %s', (_what, change) => {
  change()
  expect(staleness(top)).toBe('dist was built from another state of the source.')
})

test.each([
  ['a built file changed', () => write('dist/dawnlist.js', 'Built'), 'dist/dawnlist.js'],
  ['a built file went', () => rmSync(join(top, 'dist/dawnlist.js')), 'dist/dawnlist.js'],
  ['a file was left over', () => write('dist/old.js', ''), 'dist/old.js'],
])('stale: %s', (_what, change, name) => {
  change()
  expect(staleness(top)).toBe(`${name} is not as the build left it.`)
})

test('what the bundle is not made from does not make it stale', () => {
  write('test/a.test.ts', '')
  write('README.md', '')
  expect(staleness(top)).toBeUndefined()
})
