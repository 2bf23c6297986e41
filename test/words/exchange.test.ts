import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { fault } from '../../source/breeding/problem.ts'
import { checkSentences } from '../../source/words/check.ts'
import { commandSentences } from '../../source/words/commands.ts'
import { exchangeSentences } from '../../source/words/exchange.ts'
import { sentence, sentences } from '../../source/words/index.ts'

const sourceOf = (folder: string): string => {
  const url = new URL(`../../source/${folder}/`, import.meta.url)
  return readdirSync(url, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => readFileSync(new URL(name, url), 'utf8'))
    .join('\n')
}

test('every code of commands and exchange has a sentence', () => {
  const source = ['exchange', 'commands'].map(sourceOf).join('\n')
  const codes = [...source.matchAll(/\b(?:fault|notice|refused|found)\(\s*'([a-z-]+)'/g)].map(
    ([, code]) => code ?? '',
  )
  expect(codes.length).toBeGreaterThan(50)
  expect(codes.filter((code) => !Object.hasOwn(sentences, code))).toEqual([])
})

test('every sentence of these tables is said somewhere', () => {
  const cli = readFileSync(new URL('../../source/cli.ts', import.meta.url), 'utf8')
  const source = [...['exchange', 'commands', 'breeding'].map(sourceOf), cli].join('\n')
  for (const code of Object.keys({ ...exchangeSentences, ...commandSentences, ...checkSentences }))
    expect(source, code).toContain(`'${code}'`)
})

test('no two tables have the same code', () => {
  const tables = [exchangeSentences, commandSentences, checkSentences]
  const codes = tables.flatMap((table) => Object.keys(table))
  expect(codes.filter((code, place) => codes.indexOf(code) !== place)).toEqual([])
})

test('a sentence ends as one, and shows nothing that a terminal acts on', () => {
  const values = {
    column: '\u001b[2J',
    value: '\u202e',
    date: '2026-05-28',
    choices: '\u0007',
    other: '\u009b',
  }
  for (const code of Object.keys({ ...exchangeSentences, ...commandSentences, ...checkSentences })) {
    const said = sentence(fault(code, 'a\u001b.csv:2', values, '4\u202e12'))
    expect(said, code).toMatch(/^a<001B>\.csv:2: animal 4<202E>12: .*[.?]$/)
    expect(said, code).not.toMatch(/[\p{Cc}\p{Cf}]/u)
  }
})
