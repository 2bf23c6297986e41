/** The columns of each table. */
import type { Column } from '../columns.ts'
import { animalColumns } from './animals.ts'
import { factColumns } from './facts.ts'
import type { TableName } from './names.ts'
import { otherNames, otherWords } from './other-words.ts'
import { policyColumns } from './policy.ts'
import { seasonColumns } from './seasons.ts'
import { stockColumns } from './stock.ts'
import { strawColumns } from './straws.ts'

/** Columns with the other names and words that they are understood by. */
const kindly = (table: TableName, columns: readonly Column[]): readonly Column[] =>
  columns.map((column) => {
    const also = otherNames[table]?.[column.name]
    const words = otherWords[table]?.[column.name]
    return { ...column, ...(also && { also }), ...(words && { words }) }
  })

export const columnsOf: Readonly<Record<TableName, readonly Column[]>> = {
  policy: policyColumns,
  seasons: kindly('seasons', seasonColumns),
  animals: kindly('animals', animalColumns),
  facts: kindly('facts', factColumns),
  straws: kindly('straws', strawColumns),
  stock: kindly('stock', stockColumns),
}
