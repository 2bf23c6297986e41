import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { call, Folder } from './support/run.ts'

const tables = {
  animals: 'number,born,block,lactation\n412,2021-02-03,spring,2\n9,2021-03-01,spring,1\n',
  facts:
    'number,date,fact,how,sire,kind\n412,2026-02-01,calving,,,\n9,2026-02-01,calving,,,\n412,2026-05-06,service,,S1,conventional\n9,2026-05-06,heat,standing,,\n',
  seasons: 'block,mating_start,ai_weeks,bull_weeks\nspring,2026-05-01,6,3\nautumn,2025-11-20,6,3\n',
}

test('season: text, JSON, a block, and changes of the plan', async () => {
  const folder = new Folder()
  await folder.herdOf(tables)
  const on = ['--date', '2026-05-10']
  const text = folder.run('season', 'herd.json', ...on)
  expect([text.status, text.err]).toEqual([0, ''])
  expect(text.out).toMatch(
    /^Long Acre, Sun 10 May 2026\nspring block, mating start Fri 1 May 2026\nAI day 10 of 42\n/,
  )
  const { out } = folder.run('season', 'herd.json', ...on, '--json', '--what-if', 'ai-weeks=-1, bulls=2')
  const season = JSON.parse(out)
  expect(season).toMatchObject({ version: 1, block: 'spring', day: 9, cohort: 2 })
  expect(season.what_if).toHaveLength(1)
  expect(season.what_if[0].change).toEqual({ ai_weeks: -1, heat_seen: null, conception: null, bulls: 2 })
  expect(JSON.parse(folder.run('season', 'herd.json', ...on, '--json', '--block', 'autumn').out).block).toBe(
    'autumn',
  )
})

test('season --html: a page, never over another file or the herd itself', async () => {
  const folder = new Folder()
  await folder.herdOf(tables)
  const words = ['season', 'herd.json', '--date', '2026-05-10', '--html']
  const made = folder.run(...words, 'season.html')
  expect([made.status, made.out, made.err]).toEqual([0, '', 'season.html\n'])
  expect(readFileSync(folder.file('season.html'), 'utf8')).toMatch(/^<!doctype html>.*<\/html>\n$/s)
  expect(folder.run(...words, 'season.html').status).toBe(0)
  folder.file('other.html', 'mine')
  expect(folder.run(...words, 'other.html').err).toContain('the file is there already')
  expect(readFileSync(folder.file('other.html'), 'utf8')).toBe('mine')
  expect(folder.run(...words, 'other.html', '--replace').status).toBe(0)
  const before = readFileSync(folder.file('herd.json'))
  const over = folder.run(...words, './herd.json', '--replace')
  expect([over.status, over.err]).toEqual([1, expect.stringContaining('this is the herd file itself')])
  expect(readFileSync(folder.file('herd.json'))).toEqual(before)
})

test('season: no season, no such block, and changes that are none', async () => {
  const folder = new Folder()
  await folder.herd()
  const none = folder.run('season', 'herd.json', '--date', '2026-05-10')
  expect([none.status, none.err]).toEqual([1, expect.stringContaining('no season is recorded yet')])
  await new Folder().herdOf(tables)
  const other = new Folder()
  await other.herdOf(tables)
  expect(other.run('season', 'herd.json', '--block', 'winter').err).toContain('There are: autumn, spring.')
  for (const change of [
    '',
    'ai-weeks',
    'ai-weeks=1.5',
    'heat-seen=2',
    'bulls=-1',
    'weather=1',
    'bulls=1,bulls=2',
    'ai-weeks=99',
    'toString=1',
  ]) {
    const { status, err } = await call('season', 'nowhere.json', `--what-if=${change}`)
    expect([status, err], change).toEqual([2, expect.stringContaining('is not a change of the plan')])
  }
  expect((await call('season', 'nowhere.json', '--json', '--html', 'a.html')).status).toBe(2)
})
