/** straws.csv and stock.csv against the stock on record. */
import type { StockFact } from '../../../breeding/book.ts'
import { dayIso, isoDay } from '../../../breeding/day.ts'
import { HERD, type NewFact, type NitrogenFact } from '../../../breeding/facts.ts'
import { fault, type Problem } from '../../../breeding/problem.ts'
import type { Column } from '../columns.ts'
import { stockColumns, stockKinds } from '../tables/stock.ts'
import { strawColumns } from '../tables/straws.ts'
import { correctionOf } from './correction.ts'
import { besides, contradicted, type Once, type OnRecord, type Pairing, pairGroup } from './dated.ts'
import { differences } from './differences.ts'
import type { Herd } from './herd.ts'
import type { PlannedFact, RowOutcome } from './outcome.ts'
import { inconsistent } from './plausible.ts'
import type { Fields, TableRow } from './rows.ts'

type FlaskFact = StockFact | NitrogenFact

const recordOf = (fact: FlaskFact): OnRecord<FlaskFact> => ({ fact, fields: fact as unknown as Fields })

const lotFields = ['sire', 'straw', 'batch', 'flask', 'canister']
const sameLot = (a: Fields, b: Fields): boolean => lotFields.every((field) => a[field] === b[field])
const sireKey = (fields: Fields): string => JSON.stringify([fields.sire, fields.straw])
const nameOf = (fields: Fields): string => [fields.sire, fields.straw, fields.batch].filter(Boolean).join(' ')

/**
 * Sorts the rows of straws.csv into known, new, changed and refused. A lot is counted once a day: another number on
 * the same date changes the count. A row without a date is known where a count of any date says the same, else it
 * is a count of today; beside dated rows of the same straws it would mean nothing certain and is refused.
 */
export function strawOutcomes(rows: readonly TableRow[], herd: Herd): RowOutcome[] {
  const today = dayIso(herd.today)
  const counts = Map.groupBy(
    herd.book.stock.filter((fact) => fact.kind === 'stock-take').map(recordOf),
    ({ fields }) => sireKey(fields),
  )
  return [...Map.groupBy(rows, ({ given }) => sireKey(given))].flatMap(([key, group]) => {
    const live = counts.get(key) ?? []
    const dated = group.find(({ given }) => given.date !== undefined)
    const undated = group.filter(({ given }) => given.date === undefined)
    if (dated === undefined)
      return countOutcomes(
        group,
        live,
        { sameThing: sameLot, changes: (row, { fields }) => fields.date === today && sameLot(row, fields) },
        herd,
      )
    const once: Once<FlaskFact> = { sameThing: sameLot, changes: (row, { fields }) => sameLot(row, fields) }
    const byDate = Map.groupBy(
      group.filter(({ given }) => given.date !== undefined),
      ({ given }) => given.date,
    )
    return [
      ...undated.map(
        (row): RowOutcome => ({
          outcome: 'refused',
          row,
          problem: fault('straw-dates-mixed', row.path, { column: 'date', other: dated.path }),
        }),
      ),
      ...[...byDate].flatMap(([date, ofDate]) =>
        countOutcomes(
          ofDate,
          live.filter(({ fields }) => fields.date === date),
          once,
          herd,
        ),
      ),
    ]
  })
}

const countOutcomes = (
  rows: readonly TableRow[],
  live: readonly OnRecord<FlaskFact>[],
  once: Once<FlaskFact>,
  herd: Herd,
): RowOutcome[] =>
  pairGroup(rows, live, strawColumns, once).map((each) => outcomeOf(each, strawColumns, herd))

/** Sorts the rows of stock.csv into known, new and refused: each row is one event, so another value is another event. */
export function stockOutcomes(rows: readonly TableRow[], herd: Herd): RowOutcome[] {
  const keyOf = (fields: Fields): string => `${fields.date} ${fields.kind}`
  const events = Map.groupBy([...herd.book.stock, ...herd.book.nitrogen].map(recordOf), ({ fields }) =>
    keyOf(fields),
  )
  return [...Map.groupBy(rows, ({ given }) => keyOf(given))].flatMap(([key, group]) =>
    pairGroup(group, events.get(key) ?? [], stockColumns).map((each) => outcomeOf(each, stockColumns, herd)),
  )
}

function outcomeOf(pairing: Pairing<FlaskFact>, columns: readonly Column[], herd: Herd): RowOutcome {
  const { row } = pairing
  if (pairing.state === 'known') return { outcome: 'known', row }
  if (pairing.state === 'contradicted') return contradicted(row, pairing.other)
  const before = pairing.state === 'changed' ? pairing.record : undefined
  const fields: Fields = { date: dayIso(herd.today), kind: 'stock-take', ...before?.fields, ...row.given }
  const problem = against(fields, row, herd)
  if (problem !== undefined) return { outcome: 'refused', row, problem }
  if (before === undefined) return { outcome: 'new', row, facts: [recorded(row, fields, columns)] }
  const replacement = recorded(row, fields, columns, herd.newId())
  return {
    outcome: 'changed',
    row,
    facts: [replacement, { fact: correctionOf(before.fact, replacement.fact) }],
    change: {
      path: row.path,
      name: nameOf(fields),
      differences: differences(columns, before.fields, row.given, besides),
    },
  }
}

function against(fields: Fields, { path, given }: TableRow, herd: Herd): Problem | undefined {
  const date = String(fields.date)
  if (isoDay(date) > herd.today) return fault('date-future', path, { column: 'date', date })
  const kind = stockKinds[String(fields.kind)]
  if (kind === undefined) return undefined
  const may = ['date', 'time', 'kind', 'order', ...kind.may]
  const foreign = stockColumns.find(({ field }) => given[field] !== undefined && !may.includes(field))
  if (foreign !== undefined)
    return fault('column-not-for-fact', path, { column: foreign.name, fact: String(fields.kind) })
  return inconsistent(fields, new Map(kind.needs.map((field) => [field, columnName(field)])), path)
}

const columnName = (field: string): string =>
  stockColumns.find((column) => column.field === field)?.name ?? field

function recorded(row: TableRow, fields: Fields, columns: readonly Column[], id?: string): PlannedFact {
  const { date, time, kind } = fields
  const fact: Record<string, unknown> = { ...(id === undefined ? {} : { id }), about: HERD, date }
  if (time !== undefined) fact.time = time
  fact.kind = kind
  for (const { field } of columns)
    if (field !== 'order' && fields[field] !== undefined) fact[field] = fields[field]
  const order = row.given.order
  return { fact: fact as unknown as NewFact, ...(typeof order === 'number' ? { order } : {}) }
}
