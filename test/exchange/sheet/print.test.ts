/** The sheet as a browser prints it: pages counted, every part measured. Skipped, with the reason, without a browser. */
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { growHerd } from '../../../sample-herd/growing/herd.ts'
import { openBook } from '../../../source/breeding/book.ts'
import { isoDay } from '../../../source/breeding/day.ts'
import { morningList } from '../../../source/breeding/morning-list.ts'
import { type SheetContent, sheetContent } from '../../../source/exchange/sheet/content.ts'
import { sheetHtml } from '../../../source/exchange/sheet/html.ts'
import { hostile } from './support/sheets.ts'

const browser = ['chromium', 'chromium-browser'].find(
  (name) => spawnSync(name, ['--version'], { stdio: 'ignore' }).status === 0,
)
const tools = browser !== undefined && spawnSync('pdftotext', ['-v'], { stdio: 'ignore' }).status === 0
if (!tools) process.stdout.write('The print of the sheet is skipped: it needs chromium and pdftotext.\n')

/** Farm, date, number of pages and cautions on every page of a print, and its text with single spaces. */
function printed(content: SheetContent): {
  readonly pages: readonly string[]
  readonly cut: readonly string[]
} {
  const folder = mkdtempSync(join(tmpdir(), 'dawnlist-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  const run = (args: readonly string[]): string =>
    execFileSync(browser as string, ['--headless', '--no-sandbox', '--disable-gpu', ...args], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
      timeout: 150_000,
    })
  const html = sheetHtml(content)
  writeFileSync(join(folder, 'sheet.html'), html)
  const pdf = join(folder, 'sheet.pdf')
  run(['--no-pdf-header-footer', `--print-to-pdf=${pdf}`, join(folder, 'sheet.html')])
  expect(execFileSync('pdfinfo', [pdf], { encoding: 'utf8' })).toMatch(
    /Page size: +59[45]\.\d+ x 84[12]\.\d+ pts \(A4\)/,
  )
  const pages = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' })
    .split('\f')
    .slice(0, -1)
  writeFileSync(join(folder, 'measured.html'), measuring(html))
  const dom = run(['--dump-dom', join(folder, 'measured.html')])
  const found = JSON.parse(/<pre id="cut">(.*?)<\/pre>/s.exec(dom)?.[1] ?? '["not measured"]') as string[]
  return { pages, cut: found }
}

/** The sheet with a script that names every part that is wider or higher than its place, or reaches into the foot. */
const measuring = (html: string): string =>
  html.replace(/<meta http-equiv[^>]*>/, '').replace(
    '</body>',
    `<script>
    const cut = []
    for (const page of document.querySelectorAll('.page')) {
      const foot = page.querySelector('footer').getBoundingClientRect()
      for (const part of page.querySelectorAll('h1, h2, h2 em, .date, .block, .row, .row > *, .numbers, .numbers span, .line, .card, .cautions, footer')) {
        const at = part.getBoundingClientRect()
        const name = part.tagName + ' ' + part.className
        if (part.scrollWidth > part.clientWidth + 1 && getComputedStyle(part).display !== 'inline') cut.push(name + ' is too wide')
        if (at.right > page.getBoundingClientRect().right - 40) cut.push(name + ' leaves the page')
        if (part.tagName !== 'FOOTER' && at.bottom > foot.top + 1) cut.push(name + ' reaches into the foot')
        if (at.bottom > page.getBoundingClientRect().bottom - 20) cut.push(name + ' leaves the foot')
      }
    }
    const pre = document.createElement('pre')
    pre.id = 'cut'
    pre.textContent = JSON.stringify([...new Set(cut)])
    document.body.append(pre)
    </script></body>`,
  )

/** Content of the sample herd on a day. */
const sampleOn = (date: string): SheetContent => {
  const book = openBook(growHerd())
  return sheetContent(book, morningList(book, isoDay(date)))
}
test.skipIf(!tools).each([
  ['the demo morning', sampleOn('2026-05-28')],
  ['the bull weeks', sampleOn('2026-06-14')],
  ['a scanning visit', sampleOn('2026-06-10')],
  ['the heat record before mating', sampleOn('2026-04-10')],
  ['hostile names', hostile()],
] as const)(
  '%s: a browser prints as many A4 pages as the sheet says, nothing cut, every row once',
  (_what, content) => {
    const { pages, cut } = printed(content)
    expect(cut).toEqual([])
    const said = sheetHtml(content).split('<section class="page">').length - 1
    expect(pages).toHaveLength(said)
    for (const [place, page] of pages.entries()) {
      expect(page).toContain(`page ${place + 1} of ${pages.length}`)
      expect(page).toContain(content.date)
      expect(page.replace(/\s+/g, ' ')).toContain(content.farm.slice(0, 20))
      expect(page.replace(/\s+/g, ' ')).toContain('law')
    }
    const text = pages.join('').replace(/\s+/g, '')
    for (const { rows, numbers } of content.sections) {
      for (const { number } of [...rows, ...numbers]) if (number.length <= 6) expect(text).toContain(number)
    }
    const rows = content.sections.flatMap((section) => section.rows)
    expect(sheetHtml(content).split('<div class="row">')).toHaveLength(rows.length + 1)
    if (rows.some(({ straw }) => straw !== '')) expect(text).toContain('Servingcard')
    expect(text).toContain('dependsonlocallaw')
  },
  330_000,
)
