import { chmodSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { type Ended, Folder } from './support/run.ts'

/** An id that is nobody: files of another user cannot be written by it. */
const nobody = process.getuid?.() === 0 ? 65534 : undefined

const herdText = (facts: readonly object[], format = 1): string =>
  `{"kind":"dawnlist","format":${format},"revision":1,"herd":"abc","sum":"${'0'.repeat(64)}","facts":[\n${facts.map((fact) => JSON.stringify(fact)).join(',\n')}\n]}\n`

const at = '2026-05-28T04:15:09.120Z'
const animal = { id: 'f1', about: '412', date: '2026-01-01', at, kind: 'animal', number: '412', sex: 'F' }
const heat = { id: 'f2', about: '412', date: '2026-05-28', at, kind: 'heat', how: 'paint', certainty: 'sure' }

const check = ({ status, out, err }: Ended, sentence: RegExp): void => {
  expect([status, out]).toEqual([1, ''])
  expect(err).toMatch(sentence)
  expect(err).not.toMatch(/\n\s+at .*\.ts:\d+/)
}

describe('every fault of a herd file is a sentence that names the file, status 1, and nothing is written', () => {
  test.each<[string, string | Buffer, RegExp]>([
    ['not JSON', 'number,date\n1,2\n', /^h\.json: the file is damaged/],
    ['other JSON', '{"kind":"book"}', /^h\.json: this is a JSON file, but no herd file/],
    ['null', 'null', /^h\.json: this is a JSON file, but no herd file/],
    ['empty', '', /^h\.json: the file is empty/],
    ['a newer format', herdText([], 99), /^h\.json: a newer dawnlist wrote this file \(format 99/],
    ['wrong shape', herdText([{ ...heat, how: 7 }, animal]), /facts\[0\]\.how: animal 412: "how" is "7"/],
    [
      'an unknown fact',
      herdText([animal, { ...heat, kind: 'foaling' }]),
      /animal 412: there is no kind of fact "foaling"/,
    ],
    [
      '30 February',
      herdText([animal, { ...heat, date: '2026-02-30' }]),
      /animal 412: "date" is "2026-02-30", which is no date/,
    ],
    [
      'a fact of an unknown animal',
      herdText([heat]),
      /this heat is about an animal \(412\) that is not in the file/,
    ],
    [
      'an id twice',
      herdText([animal, heat, { ...heat, how: 'other' }]),
      /two different facts have the id f2/,
    ],
    ['bytes of no text', Buffer.from([0xff, 0xfe, 0, 0x80]), /^h\.json: the file is damaged/],
  ])('%s', (_what, bytes, sentence) => {
    const folder = new Folder()
    const path = folder.file('h.json', bytes)
    folder.file('f.csv', 'number,date,fact\n412,2026-05-01,heat\n')
    const before = readFileSync(path)
    check(folder.run('import', 'h.json', '--facts', 'f.csv', '--write'), sentence)
    expect(readFileSync(path)).toEqual(before)
  })

  test('whichever command reads it', () => {
    const folder = new Folder()
    const path = folder.file('h.json', herdText([heat]))
    for (const words of [
      ['list', 'h.json'],
      ['check', 'h.json'],
      ['export', 'h.json', '--to', 'out'],
      ['animal', 'h.json', '412'],
      ['h.json'],
    ])
      check(folder.run(...words), /this heat is about an animal \(412\) that is not in the file/)
    expect(readFileSync(path, 'utf8')).toBe(herdText([heat]))
    expect(readdirSync(folder.path)).toEqual(['h.json'])
  })

  test('a damaged byte', async () => {
    const folder = new Folder()
    const path = await folder.herd()
    const bytes = readFileSync(path)
    bytes[bytes.indexOf('"name"') + 2] = 0x07
    writeFileSync(path, bytes)
    check(folder.run('list', 'herd.json'), /^herd\.json: the file is damaged/)
  })

  test('a number that two animals share is named by check, and the herd works', () => {
    const folder = new Folder()
    folder.file('h.json', herdText([animal, { ...animal, id: 'f3', about: '9' }]))
    const { status, out } = folder.run('check', 'h.json')
    expect(status).toBe(1)
    expect(out).toContain('two animals have the number 412')
    expect(folder.run('list', 'h.json').status).toBe(0)
    check(folder.run('export', 'h.json', '--to', 'out'), /animal 412: two animals have this number/)
  })

  test('a folder, and a file that is not there', () => {
    const folder = new Folder()
    check(folder.run('list', '.'), /^\.: this is a folder/)
    check(folder.run('list', 'none.json'), /^none\.json: there is no such file/)
  })

  test.skipIf(nobody === undefined)('no right to read it, no right to write it', async () => {
    const folder = new Folder()
    const path = await folder.herd()
    folder.file('a.csv', 'number\n412\n')
    chmodSync(folder.path, 0o755)
    chmodSync(path, 0o644)
    const words = ['import', 'herd.json', '--animals', 'a.csv', '--write']
    const written = folder.runAs({ uid: nobody as number }, ...words)
    expect(written.status).toBe(1)
    expect(written.err).toMatch(
      /herd\.json: the herd is only shown, nothing can be recorded: this user may not write there/,
    )
    chmodSync(path, 0o600)
    check(
      folder.runAs({ uid: nobody as number }, 'list', 'herd.json'),
      /^herd\.json: this user may not read or write here/,
    )
  })
})

describe('new', () => {
  test('a file that is there is never touched', () => {
    const folder = new Folder()
    folder.file('h.json', 'mine')
    check(
      folder.run('new', 'h.json', '--farm', 'x', '--zone', 'UTC'),
      /h\.json: a file of that name is there already/,
    )
    expect(readFileSync(folder.file('h.json'), 'utf8')).toBe('mine')
  })

  test('a folder that is not there', () => {
    const folder = new Folder()
    check(folder.run('new', 'no/h.json', '--farm', 'x', '--zone', 'UTC'), /there is no such file or folder/)
  })

  test('tells what it made, with nothing in it that a terminal acts on', () => {
    const folder = new Folder()
    const { status, out } = folder.run(
      'new',
      'h.json',
      '--farm',
      'Long\u001b[2JAcre\u202e',
      '--zone',
      'Europe/Dublin',
      '--milkings',
      '06:00',
    )
    expect([status, out]).toEqual([0, 'h.json: a new herd, Long<001B>[2JAcre<202E>.\n'])
    expect(folder.run('check', 'h.json')).toEqual({
      status: 0,
      out: 'h.json: 1 facts, 0 animals, nothing to report.\n',
      err: '',
    })
    expect(folder.run('list', 'h.json').out).not.toContain('\u001b')
  })
})

describe('a CSV file that cannot be read: status 1, its name, and nothing of any table is recorded', () => {
  test.each<[string, string | Buffer | undefined, RegExp]>([
    ['not there', undefined, /^f\.csv: there is no such file/],
    ['empty', '', /^f\.csv: the file is empty/],
    ['a column is missing', 'number,date\n', /^f\.csv:1: column fact is missing/],
    ['a column twice', 'number,date,fact,fact\n', /^f\.csv:1: column fact is there twice/],
    [
      'a quote that never closes',
      'number,date,fact\n"412,2026-05-01,heat\n',
      /^f\.csv:2: a quote opens here and never closes/,
    ],
    [
      'a quote in the wrong place',
      'number,date,fact\n41"2,2026-05-01,heat\n',
      /^f\.csv:2: a quote stands inside a text/,
    ],
    ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13]), /^f\.csv: this is not a CSV file/],
    ['tabs', 'number\tdate\tfact\n', /^f\.csv: the columns are separated by tabs/],
  ])('%s', async (_what, content, sentence) => {
    const folder = new Folder()
    const path = await folder.herd()
    const before = readFileSync(path)
    if (content !== undefined) folder.file('f.csv', content)
    folder.file('a.csv', 'number\n412\n')
    check(folder.run('import', 'herd.json', '--facts', 'f.csv', '--animals', 'a.csv', '--write'), sentence)
    expect(readFileSync(path)).toEqual(before)
  })

  test('a folder, and a file of another user', async () => {
    const folder = new Folder()
    await folder.herd()
    mkdirSync(folder.file('f.csv'))
    check(folder.run('import', 'herd.json', '--facts', 'f.csv'), /^f\.csv: this is a folder/)
    const closed = folder.file('closed.csv', 'number\n')
    chmodSync(closed, 0o000)
    chmodSync(folder.path, 0o777)
    chmodSync(folder.file('herd.json'), 0o644)
    if (nobody === undefined) return
    check(
      folder.runAs({ uid: nobody }, 'import', 'herd.json', '--animals', 'closed.csv'),
      /^closed\.csv: this user may not read/,
    )
  })

  test('two header rows: the second is refused, and so are rows that are wrong; the rest is recorded', async () => {
    const folder = new Folder()
    await folder.herd()
    folder.file('a.csv', 'number,born\nnumber,born\n412,2022-02-01\n413,2022-02-30\n412,2021-01-01\n')
    folder.file('f.csv', 'number,date,fact\n412,2026-05-01,heat\n')
    const { status, out } = folder.run(
      'import',
      'herd.json',
      '--animals',
      'a.csv',
      '--facts',
      'f.csv',
      '--write',
    )
    expect(status).toBe(1)
    expect(out).toContain('a.csv (animals): 0 new, 0 known, 0 changed, 4 refused')
    expect(out).toContain('refused: a.csv:2: this is the header row once more.')
    expect(out).toContain(
      'refused: a.csv:4: animal 413: column born: "2022-02-30" is not a date of the calendar',
    )
    expect(out).toContain(
      'refused: a.csv:3: 412 stands in the file twice with different values, here and in a.csv:5',
    )
    expect(out).toContain('refused: f.csv:2: animal 412: her row (a.csv:5) was refused')
  })
})

test('nothing that a terminal acts on reaches it from a file name, a cell or a word', async () => {
  const folder = new Folder()
  await folder.herd()
  folder.file('a.csv', '\u001b[31mnumber,number,sex\n4\u202e12,x\u0007y,\u009bM\n')
  const shown = [
    folder.run('import', 'herd.json', '--animals', 'a.csv'),
    folder.run('list', join('\u001b[2J', 'x')),
    folder.run('\u001b]0;title\u0007'),
    folder.run('import', 'herd.json', '--animals', '\u202ecsv'),
  ]
  for (const { out, err } of shown) expect(`${out}${err}`.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u)
})
