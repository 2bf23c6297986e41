import { spawn } from 'node:child_process'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { callWith, entry, Folder } from './support/run.ts'

const tables = {
  animals:
    'number,name,born,breed,block,lactation\n412,"Bess, old",2021-02-03,HF,spring,2\n413,=1+1,2022-03-01,HF,spring,1\n',
  facts:
    'number,date,time,fact,how,sire,kind,method,result\n412,2026-02-01,,calving,,,,,\n412,2026-05-06,06:10,heat,paint,,,,\n412,2026-05-06,15:30,service,,S17,sexed,,\n413,2026-02-20,,calving,,,,,\n',
  seasons: 'block,mating_start,ai_weeks,bull_weeks\nspring,2026-05-01,6,3\n',
  straws: 'date,sire,kind,count\n2026-04-20,S17,sexed,40\n',
  stock: 'date,what,sire,kind,count,depth_cm\n2026-04-25,delivery,S17,sexed,10,\n2026-04-25,nitrogen,,,,31\n',
  policy: 'key,value\ncalvedToServe,45\n',
}

const written = (folder: Folder): string[] =>
  Object.entries(tables).flatMap(([name, text]) => {
    folder.file(`${name}.csv`, text)
    return [`--${name}`, `${name}.csv`]
  })

const dates = ['2026-05-07', '2026-05-28']

test('a trial writes nothing; --write records all in one save; again, nothing', async () => {
  const folder = new Folder()
  const path = await folder.herd()
  const before = readFileSync(path)
  const words = ['import', 'herd.json', ...written(folder)]
  const trial = folder.run(...words)
  expect([trial.status, trial.err]).toEqual([0, ''])
  expect(trial.out).toContain('facts.csv (facts): 4 new, 0 known, 0 changed, 0 refused')
  expect(trial.out).toContain(
    'herd.json: nothing was recorded, this was a trial. With --write 11 rows are recorded.',
  )
  expect(readFileSync(path)).toEqual(before)
  const real = folder.run(...words, '--write', '--by', 'MK')
  expect([real.status, real.out.split('\n').at(-2)]).toEqual([0, 'herd.json: 11 rows recorded.'])
  const text = readFileSync(path, 'utf8')
  expect(text).toMatch(/"revision":2,/)
  const facts = (JSON.parse(text) as { facts: { by?: string; action?: string }[] }).facts.slice(1)
  expect(facts.map(({ by }) => by)).toEqual(Array(11).fill('MK'))
  expect(new Set(facts.map(({ action }) => action)).size).toBe(1)
  const again = folder.run(...words, '--write')
  expect([again.status, again.out.split('\n').at(-2)]).toEqual([0, 'herd.json: nothing to record.'])
  expect(readFileSync(path, 'utf8')).toBe(text)
})

test('long work says how far it has got where there is a place for it, and leaves that place empty', async () => {
  const folder = new Folder()
  const path = await folder.herd()
  const rows = Array.from(
    { length: 2500 },
    (_, i) => `412,2026-05-06,06:${String(i % 60).padStart(2, '0')},note,${i}\n`,
  )
  const words = [
    'import',
    path,
    '--animals',
    folder.file('animals.csv', 'number\n412\n'),
    '--facts',
    folder.file('facts.csv', `number,date,time,fact,note\n${rows.join('')}`),
    '--write',
  ]
  const passed: string[] = []
  const ended = await callWith({ passing: (text) => void passed.push(text) }, ...words)
  expect([ended.status, ended.err]).toEqual([0, ''])
  expect(passed).toEqual([
    'reading: 1000 of 2500 rows',
    'reading: 2000 of 2500 rows',
    'held against the herd: 2500 of 2500 rows',
    '',
    'saving 2501 facts',
    '',
  ])
})

test('in a pipe nothing passes: standard error stays empty', async () => {
  const folder = new Folder()
  await folder.herd()
  folder.file('animals.csv', 'number\n412\n')
  folder.file('facts.csv', `number,date,fact,note\n${'412,2026-05-06,note,x\n'.repeat(2500)}`)
  const ended = folder.run(
    'import',
    'herd.json',
    '--animals',
    'animals.csv',
    '--facts',
    'facts.csv',
    '--write',
  )
  expect([ended.status, ended.err]).toEqual([0, ''])
  for (const control of ['\r', '\u001b']) expect(ended.out).not.toContain(control)
})

test('a herd that is exported and imported prints the same lists and animals', async () => {
  const folder = new Folder()
  await folder.herd()
  folder.run('import', 'herd.json', ...written(folder), '--write')
  const exported = folder.run('export', 'herd.json', '--to', 'out/tables')
  expect([exported.status, exported.err]).toEqual([0, ''])
  expect(readdirSync(folder.file('out/tables')).sort()).toEqual(
    Object.keys(tables)
      .map((name) => `${name}.csv`)
      .sort(),
  )
  expect(readFileSync(folder.file('out/tables/animals.csv'), 'utf8')).toContain("413,'=1+1,")
  await folder.herd('copy.json')
  const from = Object.keys(tables).flatMap((name) => [`--${name}`, `out/tables/${name}.csv`])
  expect(folder.run('import', 'copy.json', ...from, '--write').status).toBe(0)
  for (const date of dates) {
    const [one, other] = ['herd.json', 'copy.json'].map((file) =>
      folder.run('list', file, '--date', date, '--json'),
    )
    expect(one?.out).toContain('"version"')
    expect(other).toEqual(one)
    for (const number of ['412', '413']) {
      const [her, copy] = ['herd.json', 'copy.json'].map((file) =>
        folder.run('animal', file, number, '--date', date, '--json'),
      )
      expect(JSON.parse(copy?.out ?? '')).toEqual(JSON.parse(her?.out ?? ''))
    }
  }
})

test('export never writes over something else unless told to, and never half', async () => {
  const folder = new Folder()
  await folder.herd()
  folder.run('export', 'herd.json', '--to', 'out')
  expect(folder.run('export', 'herd.json', '--to', 'out').status).toBe(0)
  writeFileSync(folder.file('out/animals.csv'), 'mine')
  const refused = folder.run('export', 'herd.json', '--to', 'out')
  expect([refused.status, refused.out]).toEqual([1, ''])
  expect(refused.err).toContain('animals.csv: the file is there already and holds something else')
  expect(readFileSync(folder.file('out/animals.csv'), 'utf8')).toBe('mine')
  expect(folder.run('export', 'herd.json', '--to', 'out', '--replace').status).toBe(0)
  expect(readFileSync(folder.file('out/animals.csv'), 'utf8')).toMatch(/^number,/)
  expect(readdirSync(folder.file('out')).filter((name) => name.endsWith('.tmp'))).toEqual([])
  folder.file('taken', 'x')
  const inFile = folder.run('export', 'herd.json', '--to', 'taken')
  expect(inFile.status).toBe(1)
  expect(inFile.err).toContain('taken: ')
})

test('changed values are shown old -> new and recorded', async () => {
  const folder = new Folder()
  await folder.herd()
  folder.run('import', 'herd.json', ...written(folder), '--write')
  folder.file('more.csv', 'number,date,fact,ease\n412,2026-02-01,calving,3\n')
  const { status, out } = folder.run('import', 'herd.json', '--facts', 'more.csv', '--write')
  expect(status).toBe(0)
  expect(out).toContain('changed: more.csv:2: 412: ease nothing -> "3"')
  expect(folder.run('animal', 'herd.json', '412', '--json', '--date', '2026-05-28').out).toContain(
    '"ease": 3',
  )
})

test('a reader that goes away early is no fault', async () => {
  const folder = new Folder()
  await folder.herd()
  const child = spawn(process.execPath, [entry, 'help'], { stdio: ['ignore', 'pipe', 'pipe'] })
  child.stdout.destroy()
  let err = ''
  child.stderr.on('data', (chunk) => {
    err += String(chunk)
  })
  const status = await new Promise((resolve) => child.on('close', resolve))
  expect([status, err]).toEqual([0, ''])
})
