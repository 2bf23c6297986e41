import { expect, test } from 'vitest'
import type { NewFact } from '../../../source/breeding/facts.ts'
import type { SheetRow, SheetSection } from '../../../source/exchange/sheet/content.ts'
import { sheetHtml } from '../../../source/exchange/sheet/html.ts'
import { sheetText } from '../../../source/exchange/sheet/text.ts'
import { cow, season } from '../csv/support/herd.ts'
import { contentOf, hostile, onHeat } from './support/sheets.ts'

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
  const { shortCautions } = contentOf(onHeat(1), '2026-05-08')
  for (const word of ['crush', 'nitrogen', 'local law']) expect(shortCautions.join(' ')).toContain(word)
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

test('the serving card stands on the sheet for each straw of the morning, the supplier’s own card first', () => {
  const half: NewFact = {
    about: 'herd',
    date: '2026-04-21',
    kind: 'stock-take',
    sire: 'S30',
    straw: 'beef',
    volumeMl: 0.5,
    count: 5,
  }
  const beef = cow('200', { block: 'spring', lactation: 2, plan: 'beef' })
  const heat: NewFact = { ...(onHeat(1).at(-1) as NewFact), about: '200' } as NewFact
  const calved: NewFact = { about: '200', date: '2026-02-10', kind: 'calving' }
  const content = contentOf([...onHeat(3), half, beef, calved, heat], '2026-05-08')
  expect(content.servingCard[0]).toMatch(/supplier/)
  const said = content.servingCard.join(' ')
  expect(said).toMatch(/Conventional \(S17\): .*35-37 °C.*30 seconds.*0\.25 ml, 45.*0\.5 ml/)
  expect(said).toMatch(/Beef \(S30\): .*35-37 °C.*45 seconds for a straw of 0\.5 ml/)
  for (const word of ['one straw', '8 seconds', 'within 8 minutes', '10 at the very most'])
    expect(said).toContain(word)
  expect(visible(sheetHtml(content))).toContain('Serving card')
  expect(sheetText(content)).toContain('SERVING CARD')
  expect(contentOf(onHeat(1), '2026-06-20').servingCard).toEqual([])
})

test('on the day of a scanning visit its animals stand in the order of numbers, with room for the result', () => {
  const visit: NewFact = { ...season, scanDates: ['2026-06-10'] } as NewFact
  const served = onHeat(12).flatMap((fact): NewFact[] =>
    fact.kind === 'heat'
      ? [
          {
            about: fact.about,
            date: `2026-05-${fact.about.endsWith('1') ? '02' : '04'}`,
            kind: 'service',
            sire: 'S17',
          },
        ]
      : [fact.kind === 'season' ? visit : fact],
  )
  const [scan, ...others] = contentOf(served, '2026-06-10').sections
  expect(scan).toMatchObject({ name: 'Scanning visit', scanning: true, todo: 12 })
  expect(scan?.rows.map(({ number }) => number)).toEqual(
    Array.from({ length: 12 }, (_, i) => String(100 + i)),
  )
  expect(scan?.rows[1]?.what).toBe('39 days from service')
  expect(others.map(({ section }) => section)).not.toContain('pregnancy-check')
  const content = contentOf(served, '2026-06-10')
  expect(visible(sheetHtml(content))).toContain('in calf empty unsure days')
  expect(sheetText(content)).toContain('[ ] in calf  [ ] empty  [ ] unsure')
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

test('on the text sheet no number is parted from its per cent', () => {
  const section = (contentOf(onHeat(1), '2026-05-08').sections[0] ?? expect.fail()) as SheetSection
  const [row] = section.rows
  for (let letters = 1; letters < 40; letters += 1) {
    const rows = [{ ...(row as SheetRow), warnings: [], what: `${'a'.repeat(letters)} back today 11.5 %` }]
    const text = sheetText({ ...contentOf(onHeat(1), '2026-05-08'), sections: [{ ...section, rows }] })
    expect(text).toContain('11.5 %')
  }
})

test('whatever the names, the text sheet stays within 80 columns and 66 lines and cuts no number', () => {
  const content = hostile()
  const text = sheetText(content)
  for (const page of text.split('\f')) {
    expect(page.trimEnd().split('\n').length).toBeLessThanOrEqual(66)
    for (const line of page.split('\n')) expect(line.length).toBeLessThanOrEqual(80)
  }
  const whole = text.replace(/\s+/g, '')
  for (const { rows } of content.sections) for (const { number } of rows) expect(whole).toContain(number)
})
