/** The sheet as a page of its own for print: A4, black on white, no network, no script. */
import { htmlText as html } from '../html-text.ts'
import type { SheetContent, SheetRow, SheetSection } from './content.ts'
import { linesIn } from './lines-in.ts'
import { numbersInRow, type Piece, pagesOf } from './pages.ts'
import { sheetStyle } from './style.ts'

/** Millimetres. A4 is 297 high; margins of 10, the foot, and a little for letters wider than reckoned are taken off. */
const ROOM = 297 - 2 * 10 - 14 - 4
const TITLE = 13
const BLOCK_LINE = 5.5

/** Millimetres of a line, and usual letters that stand on it, by what is written there. */
const lineOf = {
  block: { height: BLOCK_LINE, letters: 92 },
  name: { height: 4.8, letters: 58 },
  nameBesideStraw: { height: 4.8, letters: 26 },
  nameBesideResults: { height: 4.8, letters: 29 },
  what: { height: 4.8, letters: 62 },
  whatBesideStraw: { height: 4.8, letters: 29 },
  whatBesideResults: { height: 4.8, letters: 32 },
  straw: { height: 5.2, letters: 26 },
  place: { height: 4.8, letters: 38 },
  longNumber: { height: 4.8, letters: 8 },
  line: { height: 6.5, letters: 70 },
  step: { height: 5, letters: 88 },
  caution: { height: 4.8, letters: 100 },
} as const

const heightIn = (text: string, line: keyof typeof lineOf): number =>
  text === '' ? 0 : linesIn(text, lineOf[line].letters) * lineOf[line].height

/** Numbers of more letters than these are set smaller. */
const LARGE = 4
const MIDDLE = 6

/**
 * The sheet as HTML.
 *
 * @example sheetHtml(content).startsWith('<!doctype html>') // true
 */
export function sheetHtml(content: SheetContent): string {
  const blocks = content.blocks.reduce((sum, line) => sum + heightIn(line, 'block'), 0)
  const pages = pagesOf(content, {
    first: ROOM - TITLE - blocks,
    others: ROOM - TITLE,
    numbersInRow: numbersInRow(content),
    heightOf,
  })
  const title = `${content.farm}, ${content.date}`
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${html(title)}</title>
<style>${sheetStyle}</style>
</head>
<body>
${pages.map((pieces, place) => page(content, pieces, place, pages.length)).join('\n')}
</body>
</html>
`
}

/** Millimetres of a piece; the style gives it these at least. */
function heightOf(piece: Piece): number {
  switch (piece.kind) {
    case 'heading':
      return 12
    case 'row':
      return rowHeight(piece.row, piece.scanning)
    case 'numbers':
      return 10
    case 'line':
      return 1.5 + heightIn(piece.text, 'line')
    case 'card':
      return 14 + piece.steps.reduce((sum, step) => sum + heightIn(step, 'step'), 0)
    case 'cautions':
      return 5 + piece.cautions.reduce((sum, text) => sum + heightIn(text, 'caution'), 0)
    case 'nothing':
      return 20
  }
}

function rowHeight(row: SheetRow, scanning: boolean): number {
  const beside = scanning ? 'BesideResults' : row.session === '' ? '' : 'BesideStraw'
  const head = [row.name, ...row.warnings.map((warning) => `! ${warning}`)].join('  ')
  const who =
    (head === '' ? lineOf.name.height : heightIn(head, `name${beside}`)) + heightIn(row.what, `what${beside}`)
  const service = heightIn(row.straw, 'straw') + heightIn(placeText(row), 'place')
  const number = row.number.length > MIDDLE ? heightIn(row.number, 'longNumber') : 0
  return Math.max(11, 1.3 + Math.max(who, service, number))
}

const placeText = ({ session, place }: SheetRow): string =>
  [session, place].filter((part) => part !== '').join(', ')

function page(content: SheetContent, pieces: readonly Piece[], place: number, count: number): string {
  const blocks = place === 0 ? content.blocks.map((line) => `<p class="block">${html(line)}</p>`) : []
  const mind = content.shortCautions.map((text) => `<b>!</b> ${html(text)}`).join('; ')
  return `<section class="page">
<header><h1${linesIn(content.farm, 24) > 1 ? ' class="long"' : ''}>${html(content.farm)}</h1><p class="date">${html(content.date)}</p></header>
${[...blocks, ...pieces.map(pieceHtml)].join('\n')}
<footer><span>${mind}</span><span class="page-number">page ${place + 1} of ${count}</span></footer>
</section>`
}

function pieceHtml(piece: Piece): string {
  switch (piece.kind) {
    case 'heading':
      return headingHtml(piece.section, piece.continued)
    case 'row':
      return rowHtml(piece.row, piece.scanning)
    case 'numbers':
      return `<div class="numbers">${piece.numbers
        .map(({ number, done }) => `<span>${box(done)}<b>${html(number)}</b></span>`)
        .join('')}</div>`
    case 'line':
      return `<p class="line">${html(piece.text)}</p>`
    case 'card':
      return `<div class="card"><h3>Serving card</h3><ol>${piece.steps.map((step) => `<li>${html(step)}</li>`).join('')}</ol></div>`
    case 'cautions':
      return `<ul class="cautions">${piece.cautions.map((text) => `<li>${html(text)}</li>`).join('')}</ul>`
    case 'nothing':
      return '<p class="nothing">Nothing to do today.</p>'
  }
}

const box = (done: boolean): string => `<i class="box">${done ? '&#10003;' : ''}</i>`

function headingHtml(section: SheetSection, continued: boolean): string {
  const count = continued ? 'continued' : `${section.todo} to do`
  return `<h2>${html(section.name)} <small>${count}</small><em>${html(section.cautions.join('; '))}</em></h2>`
}

function rowHtml(row: SheetRow, scanning: boolean): string {
  const warnings = row.warnings.map((warning) => ` <strong>! ${html(warning)}</strong>`).join('')
  const who = `<span class="who"><b>${html(row.name)}</b>${warnings}<br>${html(row.what)}</span>`
  const size = row.number.length > MIDDLE ? ' long' : row.number.length > LARGE ? ' middle' : ''
  const number = `<b class="number${size}">${html(row.number)}</b>`
  const rest = scanning ? results : `${serviceHtml(row)}<span class="note"></span>`
  return `<div class="row">${box(row.done)}${number}${who}${rest}</div>`
}

function serviceHtml(row: SheetRow): string {
  if (row.session === '') return ''
  const place = [`<b>${html(row.session)}</b>`, html(row.place)].filter((part) => part !== '').join(', ')
  const straw = row.straw === '' ? '' : `<b class="straw">${html(row.straw)}</b><br>`
  return `<span class="service">${straw}${place}</span>`
}

/** What the scanner says, to be ticked; the age in days. */
const results = `<span class="results">${['in calf', 'empty', 'unsure']
  .map((result) => `${box(false)} ${result}`)
  .join(' ')} <i class="age"></i> days</span>`
