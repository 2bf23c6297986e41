import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { fault } from '../../source/breeding/problem.ts'
import { herdSentences } from '../../source/words/herd.ts'
import { sentence } from '../../source/words/index.ts'

const folder = new URL('../../source/herd/', import.meta.url)
const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'))
  .join('\n')

/** Codes as the source of the herd file has them: of problems, of failed calls, and of wrong fields. */
const codes = [
  ...[...source.matchAll(/(?:fault|notice|problem)\(\s*'([a-z-]+)'/g)].map(([, code]) => code ?? ''),
  ...[...source.matchAll(/^ {2}E[A-Z]+: '([a-z-]+)'/gm)].map(([, code]) => code ?? ''),
  ...[...source.matchAll(/\berror: '([a-z-]+)'/g)].map(([, code]) => `field-${code}`),
  ...[...source.matchAll(/\? '(id-[a-z-]+)' : '(id-[a-z-]+)'/g)].flatMap(([, one, other]) => [
    one ?? '',
    other ?? '',
  ]),
]

test('every code of the herd file has its sentence, and every sentence its code', () => {
  expect(codes.length).toBeGreaterThan(60)
  expect([...new Set(codes)].sort()).toEqual(Object.keys(herdSentences).sort())
})

test('a sentence names the file, says what is wrong and what to do, and is harmless', () => {
  expect(sentence(fault('herd-newer', 'farm.json', { found: 7, known: 1 }))).toBe(
    'farm.json: a newer dawnlist wrote this file (format 7; this one knows up to 1). Nothing was written. Install the newer one here too.',
  )
  expect(sentence(fault('kind-unknown', 'farm.json:5: facts[3].kind', { kind: '\u001b[2J' }, '412'))).toBe(
    'farm.json:5: facts[3].kind: animal 412: there is no kind of fact "<001B>[2J". Correct the word, or remove the fact.',
  )
  for (const code of Object.keys(herdSentences)) {
    const said = sentence(fault(code, 'farm.json', { reason: 'disk-full', file: 'a', line: 3 }))
    expect(said).toMatch(/^farm\.json: .*[.?]$/)
  }
})
