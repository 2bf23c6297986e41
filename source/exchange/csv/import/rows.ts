/** The rows of a sheet as values. */
import { fault, notice, type Outcome, type Problem } from '../../../breeding/problem.ts'
import type { Read } from '../cells.ts'
import { type Column, layoutOf, plain } from '../columns.ts'
import { type DateForm, dateForms, isOtherForm, readDate } from '../date-forms.ts'
import type { Sheet } from '../reading.ts'
import { counted, type Progress } from './progress.ts'

/** Values by field; a field that is not there is unknown. */
export type Fields = Readonly<Record<string, unknown>>

export interface TableRow {
  /** `facts.csv:12` */
  readonly path: string
  readonly given: Fields
  /** The row was written by an export: its herd took the fact as it is, and so does this one, odd or not. */
  readonly asRecorded?: boolean
}

export interface TableRows {
  /** Path of the file. */
  readonly path: string
  readonly rows: readonly TableRow[]
  /** Rows with a cell that cannot be read: one problem a row. */
  readonly refused: readonly Problem[]
  readonly notices: readonly Problem[]
}

/**
 * Reads the cells of a sheet by the columns of its table.
 *
 * @param form how dates are written beside YYYY-MM-DD, @param progress is told how far it has got
 * @returns rows, refused rows and notices, or the problems of the whole file
 */
export function readRows(
  sheet: Sheet,
  columns: readonly Column[],
  form: DateForm | undefined,
  progress?: Progress,
): Outcome<TableRows> {
  const layout = layoutOf(sheet, columns)
  if (!layout.ok) return layout
  const { places, notices } = layout.value
  const rows: TableRow[] = []
  const refused: Problem[] = []
  const understood: Understood = new Map()
  const done = counted(progress, 'reading', sheet.rows.length)
  for (const { line, cells } of sheet.rows) {
    done(1)
    const path = `${sheet.path}:${line}`
    const given: Record<string, unknown> = {}
    const problem = isHeader(cells, sheet.header)
      ? fault('row-header', path)
      : cells.slice(sheet.header.length).some((cell) => cell.trim() !== '')
        ? fault('row-long', path, { cells: cells.length, columns: sheet.header.length })
        : readCells(cells, places, form, path, given, understood)
    if (problem === undefined) rows.push({ path, given, asRecorded: given.id !== undefined })
    else refused.push(problem)
  }
  return {
    ok: true,
    value: {
      path: sheet.path,
      rows,
      refused,
      notices: [
        ...encodingNotice(sheet),
        ...notices,
        ...wordNotices(sheet, understood),
        ...dateNotices(sheet, places, form),
      ],
    },
  }
}

type Places = ReadonlyArray<{ readonly column: Column; readonly place: number }>

function readCells(
  cells: readonly string[],
  places: Places,
  form: DateForm | undefined,
  path: string,
  given: Record<string, unknown>,
  understood: Understood,
): Problem | undefined {
  const number = cells[places.find(({ column }) => column.name === 'number')?.place ?? -1]?.trim()
  for (const { column, place } of places) {
    const cell = cells[place] ?? ''
    if (cell.trim() === '') {
      if (column.required) return fault('cell-missing', path, { column: column.name }, number)
      continue
    }
    const read = kindlyRead(column, cell, form, understood)
    if ('value' in read) given[column.field] = read.value
    else return fault(read.refused, path, { column: column.name, ...read.values }, number)
  }
  return undefined
}

/** Other words that stood in cells, by column and word: what they were read as, and how often. */
type Understood = Map<string, { column: string; word: string; read: string; count: number }>

/** What a cell says, in the words of the table or in another one of the trade, which is then remembered. */
function kindlyRead(
  { cell, name, words = {} }: Column,
  typed: string,
  form: DateForm | undefined,
  understood: Understood,
): Read<unknown> {
  const read = cell.read(typed, form)
  if ('value' in read) return read
  const [, meant] = Object.entries(words).find(([word]) => plain(word) === plain(typed)) ?? []
  if (meant === undefined) return read
  const key = JSON.stringify([name, typed.trim()])
  const known = understood.get(key) ?? { column: name, word: typed.trim(), read: meant, count: 0 }
  understood.set(key, { ...known, count: known.count + 1 })
  return cell.read(meant, form)
}

const wordNotices = (sheet: Sheet, understood: Understood): Problem[] =>
  [...understood.values()].map((values) => notice('cell-matched', sheet.path, values))

const isHeader = (cells: readonly string[], header: readonly string[]): boolean =>
  header.every((name, place) => name.trim() === (cells[place] ?? '').trim())

const encodingNotice = (sheet: Sheet): Problem[] =>
  sheet.encoding === 'UTF-8' ? [] : [notice('csv-encoding', sheet.path, { encoding: sheet.encoding })]

/** How dates in another form were read, or how they could be. */
function dateNotices(sheet: Sheet, places: Places, form: DateForm | undefined): Problem[] {
  const cells = places
    .filter(({ column }) => column.cell.isDate)
    .flatMap(({ place }) => sheet.rows.map((row) => (row.cells[place] ?? '').trim()))
    .flatMap((cell) => cell.split(/\s+/))
    .filter(isOtherForm)
  const [first] = cells
  if (first === undefined) return []
  if (form !== undefined) {
    const read = cells.find((cell) => readDate(cell, form) !== undefined)
    if (read === undefined) return []
    return [notice('dates-read', sheet.path, { form, value: read, date: readDate(read, form) ?? '' })]
  }
  const values: Record<string, string | number> = { count: cells.length }
  for (const each of dateForms) {
    const fitting = cells.filter((cell) => readDate(cell, each) !== undefined)
    const example = fitting[0] ?? ''
    values[`${each} fits`] = fitting.length
    values[`${each} value`] = example
    values[`${each} date`] = readDate(example, each) ?? ''
  }
  return [notice('dates-offered', sheet.path, values)]
}
