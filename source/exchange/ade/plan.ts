/** What an import of ICAR ADE events would record, as data. */
import type { Day } from '../../breeding/day.ts'
import type { CorrectionFact, Fact } from '../../breeding/facts.ts'
import { herdOf } from '../csv/import/herd.ts'
import { type ImportPlan, planRows } from '../csv/import/plan.ts'
import type { Progress } from '../csv/import/progress.ts'
import type { TableRows } from '../csv/import/rows.ts'
import type { TableName } from '../csv/tables/names.ts'
import { deletions } from './deletions.ts'
import type { Documents } from './documents.ts'
import { latestOf } from './meta.ts'
import { rowsOf } from './rows.ts'

interface AdeOptions {
  /** Path of what was read, for the report. */
  readonly path: string
  readonly herdId: string
  /** The day of recording. */
  readonly today: Day
  readonly newId: () => string
  readonly progress?: Progress
}

/**
 * Holds events against a herd. An event replaces what was read before from the same source under the same id, and
 * takes it back where it is marked as deleted. An event of this herd that says what the herd says is known.
 *
 * @param facts of the herd, in the order they were recorded
 */
export function adePlan(
  facts: readonly Fact[],
  { found, notices }: Documents,
  options: AdeOptions,
): ImportPlan {
  const events = latestOf(found)
  const before = herdOf(facts, options.today, options.newId)
  const { corrections, changes } = deletions(events, before, options.herdId)
  const asIf = corrections.map(
    (fact, place) => ({ ...fact, id: `deletion-${place}`, at: '' }) as CorrectionFact,
  )
  const herd = herdOf([...facts, ...asIf], options.today, options.newId)
  const rows = rowsOf(events, herd, options.herdId, options.path)
  const plan = planRows(
    new Map<TableName, TableRows>([
      [
        'animals',
        {
          path: options.path,
          notices: [...notices, ...rows.notices],
          rows: rows.animals,
          refused: rows.refusedAnimals,
        },
      ],
      ['facts', { path: options.path, notices: [], rows: rows.events, refused: rows.refusedEvents }],
    ]),
    herd,
    options.progress,
  )
  return {
    tables: plan.tables.map((table) =>
      table.table === 'facts' ? { ...table, changed: [...table.changed, ...changes] } : table,
    ),
    facts: [...plan.facts, ...corrections],
  }
}
