import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { Folder } from './support/run.ts'

/** Two cows on heat on 6 May 2026. */
const tables = {
  animals:
    'number,name,electronic_id,born,block,lactation\n412,Bess,826012345678901,2021-02-03,spring,2\n9,Blanche,,2021-03-01,spring,1\n',
  facts:
    'number,date,time,fact,how,bull\n412,2026-02-01,,calving,,\n9,2026-02-01,,calving,,\n412,2026-05-06,04:10,heat,standing,\n9,2026-05-06,04:30,heat,standing,\n412,2026-04-30,,looked,,\n',
  seasons: 'block,mating_start,ai_weeks,bull_weeks\nspring,2026-05-01,6,3\n',
}

test('draft: numbers, electronic numbers, and who has none is named', async () => {
  const folder = new Folder()
  await folder.herdOf(tables)
  const on = ['--date', '2026-05-06']
  expect(folder.run('draft', 'herd.json', ...on)).toEqual({ status: 0, out: '9\n412\n', err: '' })
  const electronic = folder.run('draft', 'herd.json', '--electronic', ...on)
  expect([electronic.status, electronic.out]).toEqual([1, '826012345678901\n'])
  expect(electronic.err).toContain('animal 9: she has no electronic number on record')
  expect(folder.run('draft', 'herd.json', '--session', 'noon').status).toBe(2)
})

test('sheet: to standard output or a file, as HTML or text, and never over the herd', async () => {
  const folder = new Folder()
  await folder.herdOf(tables)
  const on = ['--date', '2026-05-06']
  const { status, out } = folder.run('sheet', 'herd.json', ...on)
  expect(status).toBe(0)
  expect(out).toMatch(/^<!doctype html>.*Wed 6 May 2026.*<\/html>\n$/s)
  const text = folder.run('sheet', 'herd.json', '--text', ...on, '-o', 'sheet.txt')
  expect([text.status, text.out]).toEqual([0, ''])
  expect(readFileSync(folder.file('sheet.txt'), 'utf8')).toContain('[ ]    412 Bess')
  const before = readFileSync(folder.file('herd.json'))
  const over = folder.run('sheet', 'herd.json', '-o', './herd.json', '--replace')
  expect(over.status).toBe(1)
  expect(over.err).toContain('this is the herd file itself')
  expect(readFileSync(folder.file('herd.json'))).toEqual(before)
})

test('export --ics: a calendar, the same bytes each time', async () => {
  const folder = new Folder()
  await folder.herdOf(tables)
  const words = ['export', 'herd.json', '--to', 'cal', '--ics', '--date', '2026-05-06']
  expect(folder.run(...words).out.trim()).toMatch(/key-dates\.ics$/)
  const text = readFileSync(folder.file('cal/key-dates.ics'), 'utf8')
  expect(text).toContain('SUMMARY:spring block: mating starts\r\n')
  expect(folder.run(...words).status).toBe(0)
  expect(readFileSync(folder.file('cal/key-dates.ics'), 'utf8')).toBe(text)
})

test('export --ade and import --ade: read back it is known, in another herd it is new once', async () => {
  const folder = new Folder()
  await folder.herdOf(tables)
  const exported = folder.run('export', 'herd.json', '--to', 'ade', '--ade')
  expect(exported.status).toBe(0)
  expect(exported.err).toContain('Not carried by the standard, and not written: looked 1.')
  expect(readdirSync(folder.file('ade')).sort()).toEqual([
    'abortions.json',
    'animals.json',
    'do-not-breed.json',
    'heats.json',
    'inseminations.json',
    'parturitions.json',
    'pregnancy-checks.json',
  ])
  const back = folder.run('import', 'herd.json', '--ade', 'ade', '--write')
  expect([back.status, back.out.split('\n').at(-2)]).toEqual([0, 'herd.json: nothing to record.'])
  await folder.herd('other.json')
  expect(folder.run('import', 'other.json', '--ade', 'ade', '--write').out).toContain(
    'other.json: 6 rows recorded.',
  )
  expect(folder.run('import', 'other.json', '--ade', 'ade', '--write').out).toContain('nothing to record')
  const heats = readFileSync(folder.file('ade/heats.json'), 'utf8')
  expect(folder.runAs({ input: heats }, 'import', 'other.json', '--ade', '-').out).toContain('(facts): 0 new')
  const cut = folder.runAs({ input: heats.slice(0, -20) }, 'import', 'other.json', '--ade', '-')
  expect([cut.status, cut.err.startsWith('-: ')]).toEqual([1, true])
  expect(folder.run('draft', 'other.json', '--date', '2026-05-06').out).toBe('')
})

test('wrong usage, and what cannot be read', async () => {
  const folder = new Folder()
  await folder.herd()
  folder.file('a.csv', 'number\n')
  expect(folder.run('export', 'herd.json', '--to', 'x', '--ade', '--ics').status).toBe(2)
  const both = folder.run('import', 'herd.json', '--ade', 'x', '--animals', 'a.csv')
  expect([both.status, both.err]).toEqual([2, 'give either --ade or CSV files, not both.\n'])
  const none = folder.run('import', 'herd.json', '--ade', 'none.json')
  expect([none.status, none.err]).toEqual([1, 'none.json: there is no such file or folder.\n'])
  const csv = folder.run('import', 'herd.json', '--ade', 'a.csv')
  expect([csv.status, csv.err]).toEqual([
    1,
    'a.csv: this is no JSON. A file of ICAR ADE events is JSON in UTF-8.\n',
  ])
})
