import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { firstHerd, tableNames } from '../../build/docs/first-herd.ts'
import { below } from '../../build/paths.ts'
import { Folder } from '../commands/support/run.ts'

test('the tables of the first morning make the list that the page shows', () => {
  const { tables, list } = firstHerd(readFileSync(below('docs/first-morning.md'), 'utf8'))
  const folder = new Folder()
  for (const [name, text] of tables) folder.file(name, text)
  const from = tableNames.flatMap((name) => [`--${name}`, `${name}.csv`])
  const made = folder.run('new', 'herd.json', '--farm', 'Long Acre', '--zone', 'Europe/Dublin')
  expect([made.status, made.err]).toEqual([0, ''])
  const trial = folder.run('import', 'herd.json', ...from)
  expect(trial.out).toContain('nothing was recorded, this was a trial')
  expect(folder.run('import', 'herd.json', ...from, '--write').status).toBe(0)
  expect(folder.run('list', 'herd.json', '--date', '2026-05-28').out).toBe(list)
  expect(folder.run('check', 'herd.json').status).toBe(0)
})
