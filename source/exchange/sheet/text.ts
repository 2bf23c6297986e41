/** The sheet as plain text for a line printer: 80 columns, 66 lines a page, form feeds between pages. */
import { safeText } from '../../words/safe.ts'
import type { SheetContent, SheetRow, SheetSection } from './content.ts'
import { type Piece, pagesOf } from './pages.ts'

const WIDTH = 80
/** Lines of a page: 11 inches at six lines an inch. */
const LINES = 66
/** Of them at the foot of each page, and at the head of the later ones. */
const FOOT = 2
const LATER_HEAD = 2
const NUMBERS_IN_ROW = 6
const NUMBER_WIDTH = 6
const NAME_WIDTH = 12
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
  const head = [title, ...content.blocks.map((line) => `  ${plain(line)}`)]
  const room = LINES - FOOT
  const pages = pagesOf(content, {
    first: room - head.length,
    others: room - LATER_HEAD,
    numbersInRow: NUMBERS_IN_ROW,
    heightOf: (piece) => linesOf(piece).length,
  })
  const printed = pages.map((pieces, place) => {
    const lines = [...(place === 0 ? head : [title]), ...pieces.flatMap(linesOf)]
    while (lines.length < LINES - 1) lines.push('')
    return [...lines, spread('', `page ${place + 1} of ${pages.length}`)].map((line) => line.trimEnd())
  })
  return `${printed.map((lines) => lines.join('\n')).join('\n\f')}\n`
}

/** Harmless for a printer, with the quotes and dashes that every printer has. */
const plain = (text: string): string =>
  safeText(text).replace(/[‘’]/g, "'").replace(/[“”]/g, '"').replace(/[–—]/g, '-')

/** Two texts at the two edges of a line; the left one gives way. */
function spread(left: string, right: string): string {
  const room = WIDTH - right.length - 1
  return `${cut(left, room).padEnd(room)} ${right}`
}

const cut = (text: string, width: number): string =>
  text.length > width ? `${text.slice(0, width - 1)}~` : text

function linesOf(piece: Piece): string[] {
  switch (piece.kind) {
    case 'heading':
      return headingLines(piece.section, piece.continued)
    case 'row':
      return rowLines(piece.row)
    case 'numbers':
      return [
        '',
        piece.numbers.map(({ number, done }) => `${box(done)} ${cut(plain(number), 8).padEnd(9)}`).join(''),
      ]
    case 'line':
      return ['', piece.text]
    case 'cautions':
      return ['', '-'.repeat(WIDTH), ...piece.cautions.flatMap((caution) => set(plain(caution), '- ', WIDTH))]
    case 'nothing':
      return ['', 'Nothing to do today.']
  }
}

const box = (done: boolean): string => (done ? '[x]' : '[ ]')

function headingLines(section: SheetSection, continued: boolean): string[] {
  const name = `${section.name.toUpperCase()}${continued ? ' (continued)' : `, ${section.todo} to do`}`
  const caution = cut(plain(section.cautions.join('; ')), WIDTH - name.length - 4)
  return ['', spread(name, caution), '='.repeat(WIDTH)]
}

/** Who and why, with room for a note; and where she is served, when and with what. */
function rowLines(row: SheetRow): string[] {
  const number = cut(plain(row.number), NUMBER_WIDTH).padStart(NUMBER_WIDTH)
  const head = `${box(row.done)} ${number} ${cut(plain(row.name), NAME_WIDTH).padEnd(NAME_WIDTH)} `
  const why = [...row.warnings.map((warning) => `! ${warning}`), row.what].join(', ')
  const lines = set(plain(why), head, WIDTH)
  const last = `${lines.pop()} `
  lines.push(last.length > WIDTH - NOTE ? last : last.padEnd(WIDTH, '_'))
  const service = [row.session, row.straw, row.place]
    .filter((part) => part !== '')
    .map(plain)
    .join(' | ')
  return ['', ...lines, ...(service === '' ? [] : set(service, ' '.repeat(INDENT - NAME_WIDTH - 1), WIDTH))]
}

/** Words set in lines behind a head, the later lines indented as far. */
function set(text: string, head: string, width: number): string[] {
  const lines: string[] = []
  let line = head
  for (const word of text.split(' ')) {
    if (line.length + word.length > width && line.length > head.length) {
      lines.push(line.trimEnd())
      line = ' '.repeat(head.length)
    }
    line += `${word} `
  }
  return [...lines, line.trimEnd()]
}
