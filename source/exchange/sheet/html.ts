/** The sheet as a page of its own for print: A4, black on white, no network, no script. */
import { htmlText as html } from '../html-text.ts'
import type { SheetContent, SheetRow, SheetSection } from './content.ts'
import { type Piece, pagesOf } from './pages.ts'
import { sheetStyle } from './style.ts'

/** Millimetres. A4 is 297 high; margins of 10 and the foot are taken off. */
const ROOM = 297 - 2 * 10 - 7
const TITLE = 13
const BLOCK_LINE = 5.5
const NUMBERS_IN_ROW = 6
/** Letters of a caution on one line, at the size it is set in. */
const CAUTION_LETTERS = 118

/**
 * The sheet as HTML.
 *
 * @example sheetHtml(content).startsWith('<!doctype html>') // true
 */
export function sheetHtml(content: SheetContent): string {
  const pages = pagesOf(content, {
    first: ROOM - TITLE - content.blocks.length * BLOCK_LINE,
    others: ROOM - TITLE,
    numbersInRow: NUMBERS_IN_ROW,
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

/** Millimetres of a piece; the style gives it exactly these. */
function heightOf(piece: Piece): number {
  switch (piece.kind) {
    case 'heading':
      return 12
    case 'row':
      return 11
    case 'numbers':
      return 10
    case 'line':
      return 8
    case 'cautions':
      return 6 + piece.cautions.reduce((sum, text) => sum + Math.ceil(text.length / CAUTION_LETTERS) * 4.4, 0)
    case 'nothing':
      return 20
  }
}

function page(content: SheetContent, pieces: readonly Piece[], place: number, count: number): string {
  const blocks = place === 0 ? content.blocks.map((line) => `<p class="block">${html(line)}</p>`) : []
  return `<section class="page">
<header><h1>${html(content.farm)}</h1><p class="date">${html(content.date)}</p></header>
${[...blocks, ...pieces.map(pieceHtml)].join('\n')}
<footer>page ${place + 1} of ${count}</footer>
</section>`
}

function pieceHtml(piece: Piece): string {
  switch (piece.kind) {
    case 'heading':
      return headingHtml(piece.section, piece.continued)
    case 'row':
      return rowHtml(piece.row)
    case 'numbers':
      return `<div class="numbers">${piece.numbers
        .map(({ number, done }) => `<span>${box(done)}<b>${html(number)}</b></span>`)
        .join('')}</div>`
    case 'line':
      return `<p class="line">${html(piece.text)}</p>`
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

function rowHtml(row: SheetRow): string {
  const warnings = row.warnings.map((warning) => ` <strong>! ${html(warning)}</strong>`).join('')
  const who = `<span class="who"><b>${html(row.name)}</b>${warnings}<br>${html(row.what)}</span>`
  const place = [`<b>${html(row.session)}</b>`, html(row.place)].filter((part) => part !== '').join(', ')
  const service =
    row.session === '' ? '' : `<span class="service"><b>${html(row.straw)}</b><br>${place}</span>`
  const number = `<b class="number${row.number.length > 5 ? ' long' : ''}">${html(row.number)}</b>`
  return `<div class="row">${box(row.done)}${number}${who}${service}<span class="note"></span></div>`
}
