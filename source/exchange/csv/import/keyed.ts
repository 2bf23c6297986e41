/** Tables with one row a thing: animals, seasons, settings. */
import { fault, type Problem } from '../../../breeding/problem.ts'
import type { Column } from '../columns.ts'
import { contentOf, differences } from './differences.ts'
import type { PlannedFact, RowOutcome } from './outcome.ts'
import type { Fields, TableRow } from './rows.ts'

interface Keyed {
  readonly columns: readonly Column[]
  /** What the row is about, as it is shown: a number, a block and its mating start. */
  readonly keyOf: (given: Fields) => string
  /** What is on record about it. */
  readonly onRecord: (key: string) => Fields | undefined
  /** What speaks against the row. */
  readonly against?: (given: Fields, row: TableRow) => Problem | undefined
  /** The facts that record it, from what is on record and what the row gives. */
  readonly record: (fields: Fields, key: string) => readonly PlannedFact[]
}

/**
 * Sorts the rows of a table into known, new, changed and refused. Two rows about one thing that say different
 * things are both refused; said twice alike, the second is known.
 */
export function keyedOutcomes(rows: readonly TableRow[], table: Keyed): RowOutcome[] {
  const byKey = Map.groupBy(rows, (row) => table.keyOf(row.given))
  return [...byKey].flatMap(([key, group]) => groupOutcomes(key, group, table))
}

function groupOutcomes(key: string, group: readonly TableRow[], table: Keyed): RowOutcome[] {
  const [first, ...others] = group
  if (first === undefined) return []
  const other = others.find(
    ({ given }) => contentOf(table.columns, given) !== contentOf(table.columns, first.given),
  )
  if (other !== undefined)
    return group.map((row) => ({
      outcome: 'refused',
      row,
      problem: fault('row-twice', row.path, { key, other: (row === first ? other : first).path }),
    }))
  return [rowOutcome(key, first, table), ...others.map((row) => ({ outcome: 'known', row }) as const)]
}

function rowOutcome(key: string, row: TableRow, table: Keyed): RowOutcome {
  const before = table.onRecord(key)
  const found = before === undefined ? [] : differences(table.columns, before, row.given)
  if (before !== undefined && found.length === 0) return { outcome: 'known', row }
  const problem = table.against?.(row.given, row)
  if (problem !== undefined) return { outcome: 'refused', row, problem }
  const facts = table.record({ ...before, ...row.given }, key)
  if (before === undefined) return { outcome: 'new', row, facts }
  return { outcome: 'changed', row, facts, change: { path: row.path, name: key, differences: found } }
}
