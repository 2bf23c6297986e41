/** A frame as the rows of the screen, from the first to the last. */
import { asciiLine, type Bit, bit, cutLine, type Line, lineWidth } from '../line.tsx'
import type { Size } from '../size.ts'
import type { Theme } from '../theme.ts'
import type { Frame } from './frame.ts'

/**
 * Exactly as many rows as the screen has, none wider than it.
 *
 * @example rowsOf(frame, { columns: 80, rows: 24 }, theme).length // 24
 */
export function rowsOf(frame: Frame, { columns, rows }: Size, theme: Theme): readonly Line[] {
  const { first, second } = frame.widths
  const page = [...frame.body, ...frame.below]
  const lines = [
    ...frame.head,
    ...(second === 0 ? page : page.map((line, row) => spread(line, frame.beside[row] ?? [], first, theme))),
    frame.foot,
  ]
  return Array.from({ length: rows }, (_, row) => {
    const line = lines[row] ?? []
    return cutLine(theme.ascii ? asciiLine(line) : line, columns, theme.signs.cut)
  })
}

/** Two pages side by side, with the fold between them. */
function spread(line: Line, beside: Line, cells: number, { signs }: Theme): Line {
  const left = cutLine(line, cells, signs.cut)
  const gap: Bit = bit(' '.repeat(Math.max(0, cells - lineWidth(left))))
  return [...left, gap, bit(` ${signs.fold} `, 'rule'), ...beside]
}
