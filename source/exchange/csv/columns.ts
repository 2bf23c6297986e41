/** Columns of a table, and which column of a file is which of them. */
import { fault, notice, type Outcome, type Problem } from '../../breeding/problem.ts'
import type { Cell } from './cells.ts'
import type { Sheet } from './reading.ts'

export interface Column {
  /** Its name in the header row. */
  readonly name: string
  /** Name of the value it fills. */
  readonly field: string
  readonly cell: Cell
  /** The file must have this column. */
  readonly required?: true
  /** Other names that it is known under in the trade, and other words for what stands in it. */
  readonly also?: readonly string[]
  readonly words?: Readonly<Record<string, string>>
}

export const column = (name: string, cell: Cell, field: string = name): Column => ({ name, field, cell })
export const required = (each: Column): Column => ({ ...each, required: true })

/** Which cell of a row belongs to which column. */
interface Layout {
  readonly places: ReadonlyArray<{ readonly column: Column; readonly place: number }>
  /** Columns left out, and columns recognised under another spelling: to be shown. */
  readonly notices: readonly Problem[]
}

/**
 * The letters and digits of a name, so that `Foetal Age` and `foetal_age` are one.
 *
 * @example plain('Foetal Age') // 'foetalage'
 */
export const plain = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '')

/** The column that each header means: by its own name, else by another one, where no header bears its own. */
function columnByPlace(
  header: readonly string[],
  columns: readonly Column[],
): readonly (Column | undefined)[] {
  const own = header.map(
    (name) =>
      columns.find((each) => each.name === name) ?? columns.find((each) => plain(each.name) === plain(name)),
  )
  return header.map((name, place) => {
    const other = columns.find((each) => each.also?.some((also) => plain(also) === plain(name)))
    return own[place] ?? (other === undefined || own.includes(other) ? undefined : other)
  })
}

/**
 * Finds the columns of a table in the header of a file. Order is free, another spelling or name is taken kindly and shown, unknown
 * columns are named and left out.
 *
 * @returns the layout, or the problems of the file: csv-column-twice, csv-column-missing
 */
export function layoutOf(sheet: Sheet, columns: readonly Column[]): Outcome<Layout> {
  const places: Array<{ column: Column; place: number }> = []
  const notices: Problem[] = []
  const faults: Problem[] = []
  const header = `${sheet.path}:1`
  const named = columnByPlace(sheet.header, columns)
  for (const [place, name] of sheet.header.entries()) {
    const found = named[place]
    if (found === undefined) {
      if (name.trim() !== '') notices.push(notice('column-unknown', header, { column: name }))
    } else if (places.some((other) => other.column === found)) {
      faults.push(fault('csv-column-twice', header, { column: found.name }))
    } else {
      places.push({ column: found, place })
      if (found.name !== name.trim().toLowerCase())
        notices.push(notice('column-matched', header, { column: found.name, found: name }))
    }
  }
  const missing = columns.filter((each) => each.required && !places.some((other) => other.column === each))
  for (const each of missing)
    faults.push(
      fault('csv-column-missing', header, {
        column: each.name,
        columns: columns.map(({ name }) => name).join(', '),
      }),
    )
  return faults.length > 0 ? { ok: false, problems: faults } : { ok: true, value: { places, notices } }
}
