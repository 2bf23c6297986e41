/** The sheet cut into pages. What is kept together is decided here once, for print and for plain text. */
import { safeText } from '../../words/safe.ts'
import type { SheetContent, SheetRow, SheetSection } from './content.ts'

export type Piece =
  | { readonly kind: 'heading'; readonly section: SheetSection; readonly continued: boolean }
  | { readonly kind: 'row'; readonly row: SheetRow; readonly scanning: boolean }
  | { readonly kind: 'numbers'; readonly numbers: SheetSection['numbers'] }
  | { readonly kind: 'line'; readonly text: string }
  | { readonly kind: 'card'; readonly steps: readonly string[] }
  | { readonly kind: 'cautions'; readonly cautions: readonly string[] }
  | { readonly kind: 'nothing' }

/** Sizes in one unit, millimetres or lines. */
interface PageSizes {
  /** Room for pieces on the first page, and on the others. */
  readonly first: number
  readonly others: number
  /** Numbers side by side. */
  readonly numbersInRow: number
  readonly heightOf: (piece: Piece) => number
}

/**
 * Sets the pieces on pages, in order. A heading stands with the first piece of its section, and again where the
 * section goes on; the serving card stands whole behind the animals to be served, the cautions whole at the end.
 *
 * @returns at least one page
 */
export function pagesOf(content: SheetContent, sizes: PageSizes): Piece[][] {
  const pages: Piece[][] = [[]]
  let left = sizes.first
  const put = (...pieces: readonly Piece[]): void => {
    pages.at(-1)?.push(...pieces)
    for (const piece of pieces) left -= sizes.heightOf(piece)
  }
  const turn = (): void => {
    pages.push([])
    left = sizes.others
  }
  const height = (pieces: readonly Piece[]): number =>
    pieces.reduce((sum, piece) => sum + sizes.heightOf(piece), 0)
  const putWhole = (piece: Piece): void => {
    if (sizes.heightOf(piece) > left) turn()
    put(piece)
  }
  const card: Piece = { kind: 'card', steps: content.servingCard }
  const lastServed = content.sections.findLast(({ rows }) =>
    rows.some(({ straw, done }) => straw !== '' && !done),
  )
  if (content.sections.length === 0) put({ kind: 'nothing' })
  for (const section of content.sections) {
    const [first, ...rest] = piecesOf(section, sizes.numbersInRow)
    if (first === undefined) continue
    const heading: Piece = { kind: 'heading', section, continued: false }
    if (height([heading, first]) > left) turn()
    put(heading, first)
    for (const piece of rest) {
      if (sizes.heightOf(piece) > left) {
        turn()
        put({ ...heading, continued: true })
      }
      put(piece)
    }
    if (section === lastServed && content.servingCard.length > 0) putWhole(card)
  }
  putWhole({ kind: 'cautions', cautions: content.cautions })
  return pages
}

/**
 * Numbers side by side: fewer where they are long, so that none is cut.
 *
 * @example numbersInRow(content) // 6
 */
export function numbersInRow(content: SheetContent): number {
  const lengths = content.sections.flatMap(({ numbers }) =>
    numbers.map(({ number }) => safeText(number).length),
  )
  const longest = Math.max(0, ...lengths)
  return longest <= 6 ? 6 : longest <= 16 ? 3 : 1
}

function piecesOf(section: SheetSection, numbersInRow: number): Piece[] {
  const pieces: Piece[] = section.rows.map((row) => ({ kind: 'row', row, scanning: section.scanning }))
  for (let place = 0; place < section.numbers.length; place += numbersInRow)
    pieces.push({ kind: 'numbers', numbers: section.numbers.slice(place, place + numbersInRow) })
  for (const text of section.lines) pieces.push({ kind: 'line', text })
  return pieces
}
