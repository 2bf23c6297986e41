/** A screen as a text file to be read by eye: the characters, then how each cell is drawn. */
import type { Cell } from '../../../build/picture/cell.ts'
import type { Screen } from './screen.ts'

const letters = ['k', 'r', 'g', 'y', 'b', 'm', 'c', 'w']

/** One character for the look of a cell: the colour's letter, upper case where bold; `*` bold, `_` underlined, `,` faint. */
function lookOf(cell: Cell): string {
  const letter = letters[cell.colour % 8]
  if (cell.colour >= 0 && letter !== undefined) return cell.bold ? letter.toUpperCase() : letter
  if (cell.bold) return '*'
  if (cell.underlined) return '_'
  if (cell.faint) return ','
  return cell.text.trim() === '' ? ' ' : '.'
}

/** The characters of the screen and, below a line of equal signs, the look of each. */
export function golden(screen: Screen): string {
  const { columns, rows } = screen.output
  const looks = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_unused, column) => lookOf(screen.cell(column, row)))
      .join('')
      .trimEnd(),
  )
  return `${[...screen.lines, '='.repeat(columns), ...looks].join('\n')}\n`
}
