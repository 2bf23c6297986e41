/** What an import would record, or has recorded, in words. */
import type { Problem } from '../breeding/problem.ts'
import type { Change, TablePlan } from '../exchange/csv/import/outcome.ts'
import type { ImportPlan } from '../exchange/csv/import/plan.ts'
import { counted } from '../words/counted.ts'
import { sentence } from '../words/index.ts'
import { safeText } from '../words/safe.ts'

const shown = (text: string): string => (text === '' ? 'nothing' : `"${safeText(text)}"`)

const changeLine = ({ path, name, differences }: Change): string =>
  `  changed: ${safeText(path)}: ${safeText(name)}: ${differences
    .map(({ column, before, after }) => `${column} ${shown(before)} -> ${shown(after)}`)
    .join(', ')}`

const problemLine = (word: string, problem: Problem): string => `  ${word}: ${sentence(problem)}`

const tableLines = (table: TablePlan): string[] => [
  `${safeText(table.path)} (${table.table}): ${table.new} new, ${table.known} known, ${table.changed.length} changed, ${table.refused.length} refused`,
  ...table.notices.map((each) => problemLine('note', each)),
  ...table.changed.map(changeLine),
  ...table.refused.map((each) => problemLine('refused', each)),
]

/** What became of the rows as a whole. */
function closing(plan: ImportPlan, path: string, written: boolean): string {
  const rows = plan.tables.reduce((sum, table) => sum + table.new + table.changed.length, 0)
  const file = safeText(path)
  if (rows === 0) return `${file}: nothing to record.`
  if (written) return `${file}: ${counted(rows, 'row')} recorded.`
  return `${file}: nothing was recorded, this was a trial. With --write ${counted(rows, 'row is', 'rows are')} recorded.`
}

/** The lines of every table. */
export const tablesReport = (plan: ImportPlan): string[] => plan.tables.flatMap(tableLines)

/**
 * The report of an import: a block a table, then what became of it all.
 *
 * @param path of the herd file, @param written whether the facts have been recorded
 */
export const importReport = (plan: ImportPlan, path: string, written: boolean): string =>
  [...tablesReport(plan), closing(plan, path, written)].map((line) => `${line}\n`).join('')
