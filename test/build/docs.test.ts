/** The book against the program. `npm run docs` writes the pages that are made from the program's tables. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { places } from '../../build/docs/messages-page.ts'
import { pages } from '../../build/docs/pages.ts'
import { below } from '../../build/paths.ts'
import { parse } from '../../source/commands/parse.ts'
import { commandNamed } from '../../source/commands/table.ts'
import { screenWords } from '../../source/screens/words/screen.ts'
import { sentences } from '../../source/words/index.ts'

const book = [
  'README.md',
  ...readdirSync(below('docs'))
    .filter((name) => name.endsWith('.md'))
    .map((name) => `docs/${name}`),
]
/** A page as it is, or as it would be made now. */
const text = (path: string): string =>
  pages.find(([made]) => made === path)?.[1]() ?? readFileSync(below(path), 'utf8')

describe('pages made from the tables of the program', () => {
  test.each(pages)('%s is as the tables stand (else: npm run docs)', async (path, make) => {
    await expect(make()).toMatchFileSnapshot(below(path))
  })

  test('every value in them has been filled in', () => {
    for (const [path] of pages) expect(text(path), path).not.toMatch(/undefined|NaN|\[object/)
  })

  test('each sentence belongs to one place', () => {
    const codes = places.slice(0, -2).flatMap(([, , table]) => Object.keys(table))
    expect(codes.toSorted()).toEqual(Object.keys(sentences).toSorted())
  })
})

test('what the page of troubles puts in quotes is what the program says', () => {
  const rows = text('docs/when-something-is-wrong.md').matchAll(/^\| ([^|]*) \|/gm)
  const quoted = [...rows].flatMap(([, seen = '']) =>
    [...seen.matchAll(/"([^"]+)"/g)].map(([, words = '']) => words),
  )
  const said = [text('docs/messages.md'), screenWords.notSaved(1), text('source/entry.ts')].join('\n')
  expect(quoted.length).toBeGreaterThan(8)
  expect(quoted.filter((words) => !said.includes(words))).toEqual([])
})

test('the package brings the manual page, as a list, for npm puts no other in its place', () => {
  const { man, files } = JSON.parse(text('package.json')) as { man: string[]; files: string[] }
  expect(man).toEqual(['./man/dawnlist.1'])
  expect(files).toEqual(expect.arrayContaining(['dist', 'docs', 'man', 'sample-herd/sample-herd.json']))
})

describe.each(book)('%s', (path) => {
  test('leads to files that are there, and to headings that are there', () => {
    const slug = (heading: string): string =>
      heading
        .toLowerCase()
        .replace(/[^\w -]/g, '')
        .replaceAll(' ', '-')
    for (const [, link = ''] of text(path).matchAll(/\]\(([^)\s]+)\)/g)) {
      if (link.startsWith('https://')) continue
      const [file = '', anchor] = link.split('#')
      const target = file === '' ? path : join(path, '..', file)
      expect(existsSync(below(target)), link).toBe(true)
      if (anchor === undefined) continue
      const found = text(target)
      const headings = [...found.matchAll(/^#+ (.*)$/gm)].map(([, heading = '']) => slug(heading))
      expect(headings, link).toContain(anchor)
    }
  })

  test('names commands as they may be typed', () => {
    const blocks = [...text(path).matchAll(/^```(?:sh)?\n([\s\S]*?)^```$/gm)].flatMap(([, block = '']) =>
      block.split('\n').filter((line) => /^(?:\.\/)?dawnlist /.test(line)),
    )
    // Within a sentence a command may be named alone: `dawnlist check`.
    const spans = [...text(path).matchAll(/`((?:\.\/)?dawnlist [^`\s]+\s[^`]+)`/g)].map(
      ([, span = '']) => span,
    )
    const lines = [...blocks, ...spans].filter((line) => !line.includes('COMMAND'))
    for (const line of lines) {
      const [, name = '', ...words] = (line.match(/"[^"]*"|\S+/g) ?? []).map((word) =>
        word.replaceAll('"', ''),
      )
      const command = commandNamed(name)
      const given = command === undefined ? parse(open(), [name, ...words]) : parse(command, words)
      expect(given.ok ? [] : given.problems, line).toEqual([])
    }
  })
})

function open() {
  const command = commandNamed('open')
  if (command === undefined) throw new Error('no command opens a file')
  return command
}
