/** Small fixed tables: a heading over each column, a line a row. On the screen ink-table draws them; see table-inset.tsx. */
import { type Bit, bit, type Line } from './line.tsx'
import type { Theme } from './theme.ts'
import { fill } from './width.ts'

export interface Column {
  readonly name: string
  /** Cells, one of air on either side included. */
  readonly cells: number
  readonly side?: 'left' | 'right'
}

export interface Table {
  readonly columns: readonly Column[]
  /** One bit a column. */
  readonly rows: readonly (readonly Bit[])[]
}

/** A table in its place among the lines of a page. */
export interface PlacedTable {
  readonly table: Table
  /** Line of the page that its heading stands on. */
  readonly at: number
}

/** Lines of a table, its heading too. */
export const tableHeight = ({ rows }: Table): number => rows.length + 1

/** The table with as many rows as fit into so many lines, from one on; its heading stays. */
export const tableWithin = (table: Table, lines: number, from = 0): Table => ({
  ...table,
  rows: table.rows.slice(from, from + Math.max(0, lines - 1)),
})

/** A text as it stands in a column, without the air beside it. */
export const inColumn = (text: string, { cells, side }: Column, sign: string): string =>
  fill(text, Math.max(0, cells - 2), sign, side)

/** The table as lines: for a screen reader, and until it can be drawn. */
export function tableLines({ columns, rows }: Table, { signs }: Theme): readonly Line[] {
  const line = (bits: readonly Bit[]): Line =>
    columns.map((column, index) => ({
      ...bits[index],
      text: ` ${inColumn(bits[index]?.text ?? '', column, signs.cut)} `,
    }))
  return [line(columns.map(({ name }) => bit(name, 'faint'))), ...rows.map(line)]
}
