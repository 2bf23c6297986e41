/** The tables of a herd, in the order in which they are read. */
import type { Column } from '../columns.ts'
import { animalColumns } from './animals.ts'
import { factColumns } from './facts.ts'
import { policyColumns } from './policy.ts'
import { seasonColumns } from './seasons.ts'
import { stockColumns } from './stock.ts'
import { strawColumns } from './straws.ts'

export const tableNames = ['policy', 'seasons', 'animals', 'facts', 'straws', 'stock'] as const
export type TableName = (typeof tableNames)[number]

export const columnsOf: Readonly<Record<TableName, readonly Column[]>> = {
  policy: policyColumns,
  seasons: seasonColumns,
  animals: animalColumns,
  facts: factColumns,
  straws: strawColumns,
  stock: stockColumns,
}
