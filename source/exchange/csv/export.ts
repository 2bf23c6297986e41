/** A herd as tables: what an import of them makes is the same herd on every date. */

import type { HerdBook } from '../../breeding/book.ts'
import { compareTexts } from '../../breeding/compare-texts.ts'
import type { Fact, SeasonFact } from '../../breeding/facts.ts'
import { compareNumbers } from '../../breeding/order.ts'
import { settings, standardPolicy } from '../../breeding/policy.ts'
import { fault, type Outcome } from '../../breeding/problem.ts'
import type { Column } from './columns.ts'
import { fieldsOf } from './import/fact-fields.ts'
import { written } from './import/policy.ts'
import type { Fields } from './import/rows.ts'
import { columnsOf } from './tables/index.ts'
import type { TableName } from './tables/names.ts'
import { csvText } from './writing.ts'

type CsvFiles = Readonly<Record<TableName, string>>

/**
 * The tables of a herd. Who recorded what and when, and facts that were voided, stay in the herd file; so do the
 * farm's name, zone and milkings. policy.csv holds the settings that the farm has changed.
 *
 * @param book of the herd, @param path of its file, for the problem
 * @returns the text of each file; or number-shared where two animals have one number, for then no table can tell
 *   their facts apart
 * @example exportTables(book, 'farm.json').value.animals // 'number,name,official_id,…\r\n412,…\r\n'
 */
export function exportTables(book: HerdBook, path: string): Outcome<CsvFiles> {
  const animals = [...book.animals.values()].sort((a, b) => compareNumbers(a.number, b.number))
  const shared = animals.filter(({ number }, place) => animals[place - 1]?.number === number)
  if (shared.length > 0)
    return {
      ok: false,
      problems: shared.map(({ number }) => fault('export-number-shared', path, {}, number)),
    }
  const happenings = animals.flatMap(({ happenings, number }) =>
    happenings.map(({ fact }) => ({ fact, number })),
  )
  const places = ordersOf(book)
  const stock = [...book.stock, ...book.nitrogen].sort(
    (a, b) =>
      compareTexts(a.date, b.date) ||
      compareTexts(a.kind, b.kind) ||
      (places.get(a.id) ?? 0) - (places.get(b.id) ?? 0),
  )
  const told = (fact: Fact): Fields => ({ ...fact, order: places.get(fact.id) })
  return {
    ok: true,
    value: {
      animals: table(
        'animals',
        animals.map(({ record }) => told(record)),
      ),
      facts: table(
        'facts',
        happenings
          .sort((a, b) => compareTexts(a.fact.date, b.fact.date))
          .map(({ fact, number }) => ({ ...fieldsOf(fact, number), order: places.get(fact.id) })),
      ),
      straws: table('straws', stock.filter(({ kind }) => kind === 'stock-take').map(told)),
      stock: table('stock', stock.filter(({ kind }) => kind !== 'stock-take').map(told)),
      seasons: table('seasons', seasonsOf(book).map(told)),
      policy: table('policy', changedSettings(book)),
    },
  }
}

const table = (name: TableName, rows: readonly Fields[]): string => {
  const columns = columnsOf[name]
  return csvText(
    columns.map((column) => column.name),
    rows.map((fields) => columns.map((column) => cellOf(column, fields))),
  )
}

const cellOf = ({ field, cell }: Column, fields: Fields): string =>
  fields[field] === undefined ? '' : cell.write(fields[field])

/**
 * Which was recorded first, by fact id, of the facts of one kind on a date: about one animal, or about any where
 * straws are used or counted.
 */
function ordersOf({ live }: HerdBook): Map<string, number> {
  const groups = Map.groupBy(live, ({ kind, about, date }) =>
    JSON.stringify([date, kind, kind === 'service' ? '' : about]),
  )
  const orders = new Map<string, number>()
  for (const group of groups.values())
    if (group.length > 1) for (const [place, fact] of group.entries()) orders.set(fact.id, place + 1)
  return orders
}

/** The latest fact of each season. */
function seasonsOf(book: HerdBook): SeasonFact[] {
  const ids = new Map(book.allSeasons.map(({ factId }, place) => [factId, place]))
  return book.live
    .filter((fact): fact is SeasonFact => fact.kind === 'season' && ids.has(fact.id))
    .sort((a, b) => (ids.get(a.id) ?? 0) - (ids.get(b.id) ?? 0))
}

const changedSettings = ({ policy }: HerdBook): Fields[] =>
  settings
    .filter(({ key }) => policy[key] !== standardPolicy[key])
    .map(({ key }) => ({ key, value: written(policy, key) }))
