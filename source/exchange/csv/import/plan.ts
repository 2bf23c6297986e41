/** What an import would record, as data. Nothing is written here. */
import type { Day } from '../../../breeding/day.ts'
import type { Fact, NewFact } from '../../../breeding/facts.ts'
import type { Outcome, Problem } from '../../../breeding/problem.ts'
import type { DateForm } from '../date-forms.ts'
import type { Sheet } from '../reading.ts'
import { columnsOf } from '../tables/index.ts'
import { type TableName, tableNames } from '../tables/names.ts'
import { animalOutcomes, animalsAfter } from './animals.ts'
import { factOutcomes } from './facts.ts'
import { type Herd, herdOf } from './herd.ts'
import { inOrder } from './order.ts'
import type { RowOutcome, TablePlan } from './outcome.ts'
import { policyOutcomes } from './policy.ts'
import type { Progress } from './progress.ts'
import { readRows, type TableRows } from './rows.ts'
import { seasonOutcomes } from './seasons.ts'
import { stockOutcomes, strawOutcomes } from './straws.ts'

export interface ImportPlan {
  readonly tables: readonly TablePlan[]
  /** The facts to record, in order, for all rows that are not refused. */
  readonly facts: readonly NewFact[]
}

interface ImportOptions {
  /** The day of recording. */
  readonly today: Day
  /** How dates are written beside YYYY-MM-DD. */
  readonly dates?: DateForm
  /** A new random id each time. */
  readonly newId: () => string
  readonly progress?: Progress
}

export type Sheets = Readonly<Partial<Record<TableName, Sheet>>>

/**
 * Holds tables against a herd.
 *
 * @param facts of the herd, in the order they were recorded
 * @returns for each table what is new, known, changed and refused, and the facts to record; or the problems of a
 *   whole file (csv-column-missing, csv-column-twice), and then nothing of any table is to be recorded
 * @example importPlan(facts, { animals, facts }, { today, newId }).value.tables[0].new // 36
 */
export function importPlan(
  facts: readonly Fact[],
  sheets: Sheets,
  options: ImportOptions,
): Outcome<ImportPlan> {
  const herd = herdOf(facts, options.today, options.newId)
  const read = new Map<TableName, TableRows>()
  const faults: Problem[] = []
  for (const table of tableNames) {
    const sheet = sheets[table]
    if (sheet === undefined) continue
    const rows = readRows(sheet, columnsOf[table], options.dates, options.progress)
    if (rows.ok) read.set(table, rows.value)
    else faults.push(...rows.problems)
  }
  return faults.length > 0
    ? { ok: false, problems: faults }
    : { ok: true, value: planRows(read, herd, options.progress) }
}

/** Holds rows, wherever they were read, against a herd. */
export function planRows(
  read: ReadonlyMap<TableName, TableRows>,
  herd: Herd,
  progress?: Progress,
): ImportPlan {
  const outcomes = outcomesOf(read, herd, progress)
  const planned = [...outcomes.values()].flat().flatMap((each) => ('facts' in each ? each.facts : []))
  return {
    tables: [...read].map(([table, rows]) => tablePlan(table, rows, outcomes.get(table) ?? [])),
    facts: inOrder(planned, numbersOf(herd, planned), herd.book.farm.milkings),
  }
}

function outcomesOf(
  read: ReadonlyMap<TableName, TableRows>,
  herd: Herd,
  progress: Progress | undefined,
): Map<TableName, RowOutcome[]> {
  const rows = (table: TableName) => read.get(table)?.rows ?? []
  const animals = animalOutcomes(rows('animals'), herd)
  const unread = new Map(
    (read.get('animals')?.refused ?? []).map((problem) => [problem.animal ?? '', problem.path]),
  )
  return new Map([
    ['policy', policyOutcomes(rows('policy'), herd)],
    ['seasons', seasonOutcomes(rows('seasons'), herd)],
    ['animals', animals],
    ['facts', factOutcomes(rows('facts'), herd, animalsAfter(animals, unread, herd), progress)],
    ['straws', strawOutcomes(rows('straws'), herd)],
    ['stock', stockOutcomes(rows('stock'), herd)],
  ])
}

function numbersOf(herd: Herd, planned: readonly { readonly fact: NewFact }[]): Map<string, string> {
  const numbers = new Map([...herd.book.animals.values()].map(({ id, number }) => [id, number]))
  for (const { fact } of planned) if (fact.kind === 'animal') numbers.set(fact.about, fact.number)
  return numbers
}

function tablePlan(table: TableName, rows: TableRows, outcomes: readonly RowOutcome[]): TablePlan {
  const refused = outcomes.flatMap((each) => (each.outcome === 'refused' ? [each.problem] : []))
  return {
    table,
    path: rows.path,
    new: outcomes.filter(({ outcome }) => outcome === 'new').length,
    known: outcomes.filter(({ outcome }) => outcome === 'known').length,
    changed: outcomes.flatMap((each) => (each.outcome === 'changed' ? [each.change] : [])).sort(byLine),
    refused: [...rows.refused, ...refused].sort(byLine),
    notices: [
      ...rows.notices,
      ...outcomes.flatMap((each) =>
        each.outcome === 'known' && each.notice !== undefined ? [each.notice] : [],
      ),
    ],
  }
}

/** The last number of a path: the line of `facts.csv:12`, the place of `events.json: member[3]`. */
const lineOf = ({ path }: { readonly path: string }): number => Number(/(\d+)\D*$/.exec(path)?.[1] ?? 0)
const byLine = (a: { readonly path: string }, b: { readonly path: string }): number => lineOf(a) - lineOf(b)
