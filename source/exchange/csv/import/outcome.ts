/** What becomes of a row. */
import type { NewFact } from '../../../breeding/facts.ts'
import type { Problem } from '../../../breeding/problem.ts'
import type { TableName } from '../tables/names.ts'
import type { Difference } from './differences.ts'
import type { TableRow } from './rows.ts'

export interface Change {
  /** `facts.csv:12` */
  readonly path: string
  /** Number of the animal, the block or the sire that it is about. */
  readonly name: string
  readonly differences: readonly Difference[]
}

/** Known: nothing to record. New and changed: the facts to record. Refused: why. */
export type RowOutcome =
  | { readonly outcome: 'known'; readonly row: TableRow; readonly notice?: Problem }
  | { readonly outcome: 'new'; readonly row: TableRow; readonly facts: readonly PlannedFact[] }
  | {
      readonly outcome: 'changed'
      readonly row: TableRow
      readonly facts: readonly PlannedFact[]
      readonly change: Change
    }
  | { readonly outcome: 'refused'; readonly row: TableRow; readonly problem: Problem }

/** A fact to be recorded, and its place among others of the same moment where the row told one. */
export interface PlannedFact {
  readonly fact: NewFact
  readonly order?: number
}

/** What becomes of a table. */
export interface TablePlan {
  readonly table: TableName
  /** Path of the file. */
  readonly path: string
  readonly new: number
  readonly known: number
  readonly changed: readonly Change[]
  /** One problem a refused row: file and line, column, reason. */
  readonly refused: readonly Problem[]
  /** What the user should know and need not do anything about. */
  readonly notices: readonly Problem[]
}
