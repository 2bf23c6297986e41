import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { below } from '../../build/paths.ts'
import { obstacles, withVersion } from '../../build/release/rules.ts'

const good = {
  version: '1.2.3',
  changes: '# Changes\n\n## [1.2.3] - 2026-05-28\n\n- Something.\n',
  status: '',
  branch: 'main',
  tags: ['v1.2.2'],
}

test('nothing stands against a release of a clean main with its changes written down', () => {
  expect(obstacles(good)).toEqual([])
})

test.each([
  [{ version: '' }, 'is no version'],
  [{ version: '1.2' }, 'is no version'],
  [{ version: 'v1.2.3' }, 'is no version'],
  [{ version: '01.2.3' }, 'is no version'],
  [{ branch: 'other' }, 'made on main'],
  [{ status: ' M README.md' }, 'Not everything is committed'],
  [{ changes: '# Changes\n\n## [Unreleased]\n' }, 'has no heading'],
  [{ changes: '## [1x2.3] - 2026-05-28\n' }, 'has no heading'],
  [{ tags: ['v1.2.3'] }, 'is tagged already'],
])('%j stands against it', (change, sentence) => {
  expect(obstacles({ ...good, ...change })).toEqual([expect.stringContaining(sentence)])
})

test('the version is set for the program alone, in both files', () => {
  for (const name of ['package.json', 'package-lock.json']) {
    const before = readFileSync(below(name), 'utf8')
    const after = withVersion(before, '98.76.54')
    const changed = after.split('\n').filter((line, index) => line !== before.split('\n')[index])
    expect(changed.map((line) => line.trim())).toEqual(
      Array.from({ length: name === 'package.json' ? 1 : 2 }, () => '"version": "98.76.54",'),
    )
  }
})

test('the changes of the version that stands in package.json are written down', () => {
  const { version } = JSON.parse(readFileSync(below('package.json'), 'utf8')) as { version: string }
  expect(readFileSync(below('CHANGELOG.md'), 'utf8')).toMatch(
    new RegExp(`^## \\[${version.replaceAll('.', '\\.')}\\] - \\d{4}-\\d{2}-\\d{2}$`, 'm'),
  )
})
