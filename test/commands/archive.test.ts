import { readFileSync, writeFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { createHerdFile } from '../../source/herd/create.ts'
import { good, note, oldHerd, oldNote } from '../herd/support/herds.ts'
import { Folder } from './support/run.ts'

/** A farm that began long before today, whenever that is. */
async function oldFarm(): Promise<Folder> {
  const folder = new Folder()
  good(await createHerdFile(folder.file('herd.json'), [...oldHerd, oldNote('old'), note('new')], 'MK'))
  return folder
}

test('a trial unless --write is given; then the past is printed from the archive, and the herd says so', async () => {
  const folder = await oldFarm()
  const trial = folder.run('archive', 'herd.json')
  expect(trial).toMatchObject({ status: 0, err: '' })
  expect(trial.out).toMatch(
    /^herd\.json: 1 fact from before \w{3} \d+ \w{3} \d{4} \(note 1\) can be archived, 11 stay\. Nothing was written: add --write to do it\.\n$/,
  )
  const list = folder.run('list', 'herd.json', '--json').out
  const done = folder.run('archive', 'herd.json', '--write', '--by', 'MK')
  expect(done).toMatchObject({ status: 0, err: '' })
  const archive = /(herd\.archive-\d{4}-\d{2}-\d{2}\.json)\n$/.exec(done.out)?.[1] ?? ''
  expect(done.out).toContain('went to the archive, 11 stay. The whole herd as it was: ')
  expect(folder.run('list', 'herd.json', '--json')).toMatchObject({ status: 0, err: '', out: list })
  expect(folder.run('animal', 'herd.json', '412').out).not.toContain('note: old')
  expect(folder.run('animal', archive, '412').out).toContain('note: old')
  const past = folder.run('list', 'herd.json', '--date', '2022-06-02')
  expect(past.err).toMatch(
    /^heats, services and checks from before \d+ \w{3} \d{4} are not in this herd any more: they stand in herd\.archive-[\d-]+\.json, beside it\. What is said here of days before \d+ \w{3} \d{4} may lack them; name that file instead\.\n$/,
  )
  const season = folder.run('season', 'herd.json')
  expect(season.out).toContain(`Earlier seasons are in ${archive}.`)
  expect(folder.run('archive', 'herd.json', '--write').out).toMatch(
    /nothing to archive\. No fact from before/,
  )
})

test('tables of an archived herd name the archive; rows of what went are known when they are read again', async () => {
  const folder = await oldFarm()
  folder.run('export', 'herd.json', '--to', 'before')
  folder.run('archive', 'herd.json', '--write')
  const exported = folder.run('export', 'herd.json', '--to', 'after')
  expect(exported.err).toMatch(
    /stand in herd\.archive-[\d-]+\.json, beside the herd, and are not among these files\./,
  )
  const facts = folder.file('before/facts.csv')
  expect(readFileSync(facts, 'utf8')).toContain('old')
  const read = folder.run('import', 'herd.json', '--facts', 'before/facts.csv')
  expect(read.status).toBe(0)
  expect(read.out).toMatch(/0 new/)
})

test('a young herd has nothing to archive', async () => {
  const folder = new Folder()
  await folder.herd()
  expect(folder.run('archive', 'herd.json', '--write')).toEqual({
    status: 0,
    err: '',
    out: 'herd.json: nothing to archive. Every season of the herd is younger than two years, or still needed.\n',
  })
  expect(folder.run('archive', 'none.json').err).toContain('there is no such file')
})

test('check names a copy beside the herd that holds more, with the command that adds it', async () => {
  const folder = await oldFarm()
  writeFileSync(folder.file('herd (other computer).json'), readFileSync(folder.file('herd.json')))
  folder.file('facts.csv', 'number,date,fact\n412,2026-05-27,looked\n')
  folder.run('import', 'herd (other computer).json', '--facts', 'facts.csv', '--write')
  const found = folder.run('check', 'herd.json')
  expect(found.status).toBe(1)
  expect(found.out).toMatch(
    /herd \(other computer\)\.json: this copy of the herd holds 1 fact that .*herd\.json lacks; .* To add them: dawnlist check \/.*herd\.json --merge "\/.*herd \(other computer\)\.json"\.\n/,
  )
})
