/** The sheet as plain text for a line printer: 80 columns, 66 lines a page, form feeds between pages. */
import { safeText } from '../../words/safe.ts'
import type { SheetContent, SheetRow, SheetSection } from './content.ts'
import { numbersInRow, type Piece, pagesOf } from './pages.ts'

const WIDTH = 80
/** Lines of a page: 11 inches at six lines an inch. */
const LINES = 66
const NUMBER_WIDTH = 6
const NAME_WIDTH = 13
/** Where the words of a row begin. */
const INDENT = 4 + NUMBER_WIDTH + 1 + NAME_WIDTH + 1
/** Least room for a note by hand. */
const NOTE = 8

/**
 * The sheet as text.
 *
 * @example sheetText(content).split('\f').length // 3 pages
 */
export function sheetText(content: SheetContent): string {
  const title = spread(plain(content.farm), content.date)
  const head = [...title, ...content.blocks.flatMap((line) => set(plain(line), '  ', WIDTH))]
  const mind = set(plain(content.shortCautions.join('; ')), '! ', WIDTH)
  const room = LINES - 2 - mind.length
  const inRow = numbersInRow(content)
  const toLines = (piece: Piece): string[] => linesOf(piece, Math.floor(WIDTH / inRow))
  const pages = pagesOf(content, {
    first: room - head.length,
    others: room - title.length,
    numbersInRow: inRow,
    heightOf: (piece) => toLines(piece).length,
  })
  const printed = pages.map((pieces, place) => {
    const lines = [...(place === 0 ? head : title), ...pieces.flatMap(toLines)]
    while (lines.length < LINES - 1 - mind.length) lines.push('')
    return [...lines, ...mind, `page ${place + 1} of ${pages.length}`.padStart(WIDTH)].map((line) =>
      line.trimEnd(),
    )
  })
  return `${printed.map((lines) => lines.join('\n')).join('\n\f')}\n`
}

/** Harmless for a printer, with the quotes and dashes that every printer has. */
const plain = (text: string): string =>
  safeText(text).replace(/[‘’]/g, "'").replace(/[“”]/g, '"').replace(/[–—]/g, '-')

/** Two texts at the two edges of a line, or on lines of their own where one has no room for both. */
function spread(left: string, right: string): string[] {
  const room = WIDTH - right.length - 1
  if (left.length <= room) return [`${left.padEnd(room)} ${right}`]
  return [...set(left, '', WIDTH), ...set(right, '', WIDTH).map((line) => line.padStart(WIDTH))]
}

function linesOf(piece: Piece, cell: number): string[] {
  switch (piece.kind) {
    case 'heading':
      return headingLines(piece.section, piece.continued)
    case 'row':
      return rowLines(piece.row, piece.scanning)
    case 'numbers':
      return [
        '',
        piece.numbers.map(({ number, done }) => `${box(done)} ${plain(number)}`.padEnd(cell)).join(''),
      ]
    case 'line':
      return ['', ...set(plain(piece.text), '', WIDTH)]
    case 'card':
      return [
        '',
        '- SERVING CARD '.padEnd(WIDTH, '-'),
        ...piece.steps.flatMap((step, place) => set(plain(step), `${place + 1}. `.padEnd(4), WIDTH)),
      ]
    case 'cautions':
      return ['', '-'.repeat(WIDTH), ...piece.cautions.flatMap((caution) => set(plain(caution), '- ', WIDTH))]
    case 'nothing':
      return ['', 'Nothing to do today.']
  }
}

const box = (done: boolean): string => (done ? '[x]' : '[ ]')

function headingLines(section: SheetSection, continued: boolean): string[] {
  const name = `${section.name.toUpperCase()}${continued ? ' (continued)' : `, ${section.todo} to do`}`
  return ['', ...spread(name, plain(section.cautions.join('; '))), '='.repeat(WIDTH)]
}

/** Who and why, with room for a note; and where she is served, when and with what. Long names begin the words. */
function rowLines(row: SheetRow, scanning: boolean): string[] {
  const number = plain(row.number)
  const name = plain(row.name)
  const isLong = number.length > NUMBER_WIDTH
  const fits = !isLong && name.length <= NAME_WIDTH
  const head = `${box(row.done)} ${isLong ? '' : number.padStart(NUMBER_WIDTH)} `.padEnd(
    INDENT - NAME_WIDTH - 1,
  )
  const why = [...row.warnings.map((warning) => `! ${warning}`), row.what].join(', ')
  const lines = fits
    ? set(plain(why), `${head}${name.padEnd(NAME_WIDTH)} `, WIDTH)
    : set([isLong ? number : '', name, plain(why)].filter((part) => part !== '').join(', '), head, WIDTH)
  if (scanning) return ['', ...lines, `${' '.repeat(INDENT)}${results}`]
  const last = `${lines.pop()} `
  lines.push(last.length > WIDTH - NOTE ? last : last.padEnd(WIDTH, '_'))
  const service = [row.session, row.straw, row.place]
    .filter((part) => part !== '')
    .map(plain)
    .join(' | ')
  return ['', ...lines, ...(service === '' ? [] : set(service, ' '.repeat(INDENT - NAME_WIDTH - 1), WIDTH))]
}

/** What the scanner says, to be ticked. */
const results = '[ ] in calf  [ ] empty  [ ] unsure  ____ days'

/** Words set in lines behind a head, the later lines indented as far; a number stays with its `%`. */
function set(text: string, head: string, width: number): string[] {
  const lines: string[] = []
  let line = head
  const longest = Math.max(1, width - head.length)
  const words = text
    .split(/ (?!%)/)
    .flatMap((word) => word.match(new RegExp(`.{1,${longest}}`, 'gu')) ?? [''])
  for (const word of words) {
    if (line.length + word.length > width && line.length > head.length) {
      lines.push(line.trimEnd())
      line = ' '.repeat(head.length)
    }
    line += `${word} `
  }
  return [...lines, line.trimEnd()]
}
