/** What a row says otherwise than what is on record. */
import type { Column } from '../columns.ts'
import type { Fields } from './rows.ts'

export interface Difference {
  readonly column: string
  /** As written in the table; empty where nothing was on record. */
  readonly before: string
  readonly after: string
}

const written = (column: Column, fields: Fields): string =>
  fields[column.field] === undefined ? '' : column.cell.write(fields[column.field])

/**
 * The columns in which a row differs from what is on record. A column without a value in the row says nothing.
 *
 * @param besides fields that are not compared
 */
export function differences(
  columns: readonly Column[],
  before: Fields,
  given: Fields,
  besides: readonly string[] = [],
): Difference[] {
  const found: Difference[] = []
  for (const column of columns) {
    if (given[column.field] === undefined || besides.includes(column.field)) continue
    const was = written(column, before)
    const is = written(column, given)
    if (was !== is) found.push({ column: column.name, before: was, after: is })
  }
  return found
}

/** Whether what is on record says all that a row says. */
export const agrees = (
  columns: readonly Column[],
  before: Fields,
  given: Fields,
  besides: readonly string[] = [],
) =>
  columns.every(
    (column) =>
      given[column.field] === undefined ||
      given[column.field] === before[column.field] ||
      besides.includes(column.field) ||
      written(column, before) === written(column, given),
  )

/** All that a row says, as one text: equal for rows that say the same. */
export const contentOf = (
  columns: readonly Column[],
  given: Fields,
  besides: readonly string[] = [],
): string =>
  JSON.stringify(columns.map((column) => (besides.includes(column.field) ? '' : written(column, given))))
