import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test, vi } from 'vitest'
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay } from '../../../source/breeding/day.ts'
import type { NewFact } from '../../../source/breeding/facts.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'
import { type SheetContent, sheetContent } from '../../../source/exchange/sheet/content.ts'
import { sheetHtml } from '../../../source/exchange/sheet/html.ts'
import { sheetText } from '../../../source/exchange/sheet/text.ts'
import { cow, herd } from '../csv/support/herd.ts'

vi.setConfig({ testTimeout: 180_000 })

const season: NewFact = {
  about: 'herd',
  date: '2026-01-01',
  kind: 'season',
  block: 'spring',
  matingStart: '2026-05-01',
  aiWeeks: 6,
  bullWeeks: 3,
}

/** Cows on heat on 8 May, and straws for them. */
const onHeat = (count: number, first: { readonly name?: string } = {}): NewFact[] => [
  season,
  {
    about: 'herd',
    date: '2026-04-20',
    kind: 'stock-take',
    sire: 'S17',
    straw: 'conventional',
    flask: '1',
    canister: '3',
    count: 500,
  },
  ...Array.from({ length: count }, (_, place) => String(100 + place)).flatMap((number, place): NewFact[] => [
    cow(number, {
      block: 'spring',
      lactation: 2,
      name: `Bess ${place}`,
      ...(place === 0 ? first : {}),
    }),
    { about: number, date: '2026-02-10', kind: 'calving' },
    { about: number, date: '2026-05-08', time: '05:00', kind: 'heat', how: 'standing', certainty: 'sure' },
  ]),
]

const contentOf = (facts: readonly NewFact[], date: string): SheetContent => {
  const book = openBook(herd(...facts))
  return sheetContent(book, morningList(book, isoDay(date)))
}

test('a row tells number, name, why, which milking, the straw and where it is', () => {
  const [serve] = contentOf(onHeat(1), '2026-05-08').sections
  expect(serve).toMatchObject({
    name: 'Serve',
    todo: 1,
    cautions: [expect.stringContaining('crush'), expect.stringContaining('nitrogen')],
  })
  expect(serve?.rows).toEqual([
    {
      number: '100',
      name: 'Bess 0',
      what: 'on heat, seen today',
      warnings: ['parents unknown'],
      session: 'this morning',
      straw: 'S17 conventional',
      place: 'flask 1, canister 3',
      done: false,
    },
  ])
})

test('what is ticked is ticked on the sheet', () => {
  const served: NewFact = {
    about: '100',
    date: '2026-05-08',
    kind: 'service',
    sire: 'S17',
    straw: 'conventional',
  }
  const content = contentOf([...onHeat(1), served], '2026-05-08')
  expect(content.sections[0]).toMatchObject({ todo: 0, rows: [{ done: true }] })
  expect(sheetText(content)).toContain('[x]    100 Bess 0')
  expect(sheetHtml(content)).toContain('<i class="box">&#10003;</i>')
})

test('the cautions of the day are those of its work, and the law', () => {
  const cautions = contentOf(onHeat(1), '2026-05-08').cautions.join(' ')
  for (const word of ['crush', 'nitrogen', 'local law']) expect(cautions).toContain(word)
  expect(cautions).not.toContain('No bull is safe')
  expect(contentOf(onHeat(1), '2026-06-20').cautions.join(' ')).toContain('No bull is safe')
})

test('animals with the bull are one line, the heat record is numbers to cross off', () => {
  const bull = contentOf(onHeat(30), '2026-06-20').sections.find(({ section }) => section === 'sweep-bull')
  expect(bull).toMatchObject({ rows: [], numbers: [], lines: ['30 with the bull'] })
  const record = contentOf(
    onHeat(30).filter(({ kind }) => kind !== 'heat'),
    '2026-04-10',
  ).sections.find(({ section }) => section === 'heat-record')
  expect(record?.rows).toEqual([])
  expect(record?.numbers).toHaveLength(30)
})

const visible = (html: string): string =>
  html
    .replace(/<style>.*<\/style>/s, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ')

test.each([0, 1, 19, 20, 21, 60, 300])(
  '%d animals: each stands on the sheet once, every page says who and when and which page it is',
  (count) => {
    const content = contentOf(onHeat(count), '2026-05-08')
    const pages = sheetHtml(content).split('<section class="page">').slice(1)
    const printed = sheetText(content).split('\f')
    for (const [place, page] of pages.entries()) {
      expect(visible(page)).toContain(`page ${place + 1} of ${pages.length}`)
      expect(visible(page)).toContain('Long Acre Fri 8 May 2026')
    }
    for (const [place, page] of printed.entries()) {
      const lines = page.trimEnd().split('\n')
      expect(lines).toHaveLength(66)
      expect(lines[0]).toMatch(/^Long Acre +Fri 8 May 2026$/)
      expect(lines.at(-1)?.trim()).toBe(`page ${place + 1} of ${printed.length}`)
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(80)
    }
    for (let number = 100; number < 100 + count; number += 1) {
      expect(pages.join('').split(`<b class="number">${number}</b>`)).toHaveLength(2)
      expect(printed.join('').split(`[ ]    ${number} `)).toHaveLength(2)
    }
  },
)

test('a heading never stands alone at the foot, and comes again where its section goes on', () => {
  for (let count = 15; count < 60; count += 1) {
    const pages = sheetHtml(contentOf(onHeat(count), '2026-05-08'))
      .split('<section class="page">')
      .slice(1)
    for (const page of pages) expect(page).not.toMatch(/<\/h2>\s*<footer>/)
    for (const page of pages.slice(1))
      if (page.includes('class="row"')) expect(page).toContain('<small>continued</small>')
  }
})

test('nothing from the herd is markup, nothing acts on a printer, nothing is fetched', () => {
  const odd = '<script>alert(1)</script>"\u001b[2J\u202e&'
  const content = contentOf(onHeat(1, { name: odd }), '2026-05-08')
  const html = sheetHtml({ ...content, farm: odd })
  expect(html).not.toMatch(/<script|https?:|url\(|src=/)
  expect(html.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u)
  expect(html).toContain('&lt;script&gt;alert(1)&lt;/script&gt;&quot;&lt;001B&gt;[2J&lt;202E&gt;&amp;')
  expect(sheetText({ ...content, farm: odd }).replace(/[\n\f]/g, '')).not.toMatch(/[\p{Cc}\p{Cf}]/u)
})

test('a day without work says so', () => {
  const content = contentOf([season], '2026-05-08')
  expect(sheetText(content)).toContain('Nothing to do today.')
  expect(visible(sheetHtml(content))).toContain('Nothing to do today.')
})

const browser = ['chromium', 'chromium-browser'].find(
  (name) => spawnSync(name, ['--version'], { stdio: 'ignore' }).status === 0,
)
const tools = browser !== undefined && spawnSync('pdftotext', ['-v'], { stdio: 'ignore' }).status === 0
if (!tools) process.stdout.write('The print of the sheet is skipped: it needs chromium and pdftotext.\n')

test.skipIf(!tools)(
  'a browser prints as many A4 pages as the sheet says, nothing cut off at the foot',
  () => {
    const folder = mkdtempSync(join(tmpdir(), 'dawnlist-'))
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
    const content = contentOf(onHeat(47), '2026-05-08')
    writeFileSync(join(folder, 'sheet.html'), sheetHtml(content))
    const pdf = join(folder, 'sheet.pdf')
    execFileSync(
      browser as string,
      [
        '--headless',
        '--no-sandbox',
        '--disable-gpu',
        '--no-pdf-header-footer',
        `--print-to-pdf=${pdf}`,
        join(folder, 'sheet.html'),
      ],
      { stdio: 'ignore', timeout: 60_000 },
    )
    const pages = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' })
      .split('\f')
      .slice(0, -1)
    expect(execFileSync('pdfinfo', [pdf], { encoding: 'utf8' })).toMatch(
      /Page size: +59[45]\.\d+ x 84[12]\.\d+ pts \(A4\)/,
    )
    for (const [place, page] of pages.entries())
      expect(page).toContain(`page ${place + 1} of ${pages.length}`)
    const text = pages.join('')
    for (let number = 100; number < 147; number += 1) expect(text).toMatch(new RegExp(`\\b${number}\\b`))
    expect(text).toContain('depends on local law')
  },
  90_000,
)
