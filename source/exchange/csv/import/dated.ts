/** Rows that tell what happened on a date, held against what is on record. */
import { compareTexts } from '../../../breeding/compare-texts.ts'
import { fault } from '../../../breeding/problem.ts'
import type { Column } from '../columns.ts'
import { agrees, contentOf } from './differences.ts'
import { pairUp } from './match.ts'
import type { RowOutcome } from './outcome.ts'
import type { Fields, TableRow } from './rows.ts'

/** A live fact, as the values of its columns. */
export interface OnRecord<F> {
  readonly fact: F
  readonly fields: Fields
}

/** What a row of a group turned out to be. */
export type Pairing<F> =
  | { readonly row: TableRow; readonly state: 'known' | 'new' }
  | { readonly row: TableRow; readonly state: 'changed'; readonly record: OnRecord<F> }
  | { readonly row: TableRow; readonly state: 'contradicted'; readonly other: TableRow }

/** What happens at most once a day. */
export interface Once<F> {
  /** Whether two rows tell of the same thing. */
  readonly sameThing: (a: Fields, b: Fields) => boolean
  /** Whether a row that says otherwise changes this fact. */
  readonly changes: (row: Fields, record: OnRecord<F>) => boolean
}

/** Columns that tell a row from its like and say nothing of what happened. */
export const besides: readonly string[] = ['id', 'order']

const isNamed = ({ given }: TableRow): boolean => besides.some((field) => given[field] !== undefined)

/**
 * Pairs the rows of one group (one animal, date and kind; one lot of straws) with the live facts of the same group.
 * A row is known where a fact says all that it says, each fact for one row. Where a thing happens once a day, a row
 * that says otherwise changes the fact, and two rows that differ and have no name of their own (id, order)
 * contradict each other.
 *
 * @param once absent where any number of like facts can happen on a day
 * @param settled rows of the same group that named their fact by its id, and are dealt with
 * @returns what each row is; it does not depend on the order of rows
 */
export function pairGroup<F>(
  group: readonly TableRow[],
  facts: readonly OnRecord<F>[],
  columns: readonly Column[],
  once?: Once<F>,
  settled: readonly TableRow[] = [],
): Pairing<F>[] {
  const content = new Map([...group, ...settled].map((row) => [row, contentOf(columns, row.given, besides)]))
  const sorted = canonical(group, columns)
  const pairings: Pairing<F>[] = []
  const open: TableRow[] = []
  for (const row of sorted) {
    const alike =
      once === undefined || isNamed(row)
        ? []
        : [...settled, ...sorted].filter((other) => other !== row && once.sameThing(row.given, other.given))
    const other = alike.find((each) => content.get(each) !== content.get(row))
    if (other !== undefined) pairings.push({ row, state: 'contradicted', other })
    else if (alike.some((each) => open.includes(each) || settled.includes(each)))
      pairings.push({ row, state: 'known' })
    else open.push(row)
  }
  const paired = pairUp(open, facts, (row, fact) => agrees(columns, fact.fields, row.given, besides))
  const left = facts.filter((_, index) => !paired.includes(index))
  for (const [place, row] of open.entries()) {
    if (paired[place] !== undefined) {
      pairings.push({ row, state: 'known' })
      continue
    }
    const record = once === undefined ? undefined : left.findLast((each) => once.changes(row.given, each))
    if (record === undefined) pairings.push({ row, state: 'new' })
    else pairings.push({ row, state: 'changed', record: left.splice(left.indexOf(record), 1)[0] ?? record })
  }
  return pairings
}

/** Rows by what they say, those that say most first. */
function canonical(rows: readonly TableRow[], columns: readonly Column[]): TableRow[] {
  const text = new Map(rows.map((row) => [row, contentOf(columns, row.given)]))
  const size = (row: TableRow): number => Object.keys(row.given).length
  return rows.toSorted((a, b) => size(b) - size(a) || compareTexts(text.get(a) ?? '', text.get(b) ?? ''))
}

/** The outcome of a row that contradicts another one. */
export const contradicted = (row: TableRow, other: TableRow, animal?: string): RowOutcome => ({
  outcome: 'refused',
  row,
  problem: fault('row-contradicts', row.path, { other: other.path }, animal),
})
