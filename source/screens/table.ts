/** Small fixed tables: a heading over each column, a line a row. */
import { type Bit, bit, type Line } from './line.tsx'
import type { Theme } from './theme.ts'
import { fill } from './width.ts'

export interface Column {
  readonly name: string
  /** Cells, the gap after it included. */
  readonly cells: number
  readonly side?: 'left' | 'right'
}

export interface Table {
  readonly columns: readonly Column[]
  /** One bit a column. */
  readonly rows: readonly (readonly Bit[])[]
}

/** Lines of a table, its heading too. */
export const tableHeight = ({ rows }: Table): number => rows.length + 1

/** The table as lines. */
export function tableLines({ columns, rows }: Table, theme: Theme): readonly Line[] {
  const cell = (one: Bit, { cells, side }: Column): Bit => ({
    ...one,
    text: `${fill(one.text, cells - 1, theme.signs.cut, side)} `,
  })
  return [
    columns.map((column) => cell(bit(column.name, 'faint'), column)),
    ...rows.map((row) => row.map((one, index) => cell(one, columns[index] ?? { name: '', cells: 1 }))),
  ]
}
