/** `dawnlist import`: reads tables into a herd. A dry run, unless `--write` is given. */
import type { NewFact } from '../breeding/facts.ts'
import { fault, type Outcome, type Problem } from '../breeding/problem.ts'
import { type DateForm, dateForms } from '../exchange/csv/date-forms.ts'
import type { ImportPlan } from '../exchange/csv/import/plan.ts'
import type { Progress } from '../exchange/csv/import/progress.ts'
import { tableNames } from '../exchange/csv/tables/names.ts'
import { openHerdFile } from '../herd/open.ts'
import type { HerdStore } from '../herd/store.ts'
import type { Given, Run } from './command.ts'
import { adePlanOf } from './import-ade.ts'
import { progressIn } from './import-progress.ts'
import { importReport } from './import-report.ts'
import { planOf, readSheets } from './import-sheets.ts'

/** Facts from which on their saving is worth a word. */
const MANY = 1000

export const run: Run = async (given, shell) => {
  const usage = misused(given)
  if (usage.length > 0) {
    shell.tell(usage)
    return 2
  }
  const fail = (problems: readonly Problem[]): number => {
    shell.tell(problems)
    return 1
  }
  const opened = await openHerdFile(given.args.FILE ?? '')
  if (!opened.ok) return fail(opened.problems)
  const herd = opened.value
  const { ade } = given.options
  const progress = progressIn(shell)
  const plan = ade === undefined ? await csvPlan(herd, given, progress) : await adePlanOf(herd, ade, progress)
  shell.passing?.('')
  if (!plan.ok) return fail(plan.problems)
  const write = given.switches.has('write')
  const refused = plan.value.tables.some((table) => table.refused.length > 0)
  if (write && plan.value.facts.length > 0) {
    const { facts } = plan.value
    if (facts.length >= MANY) progress?.('saving', 0, facts.length)
    const saved = await save(herd, facts, given)
    shell.passing?.('')
    if (!saved.ok) return fail([...saved.problems, fault('import-not-saved', herd.path)])
  }
  shell.print(importReport(plan.value, herd.path, write))
  return refused ? 1 : 0
}

async function csvPlan(
  herd: HerdStore,
  { options }: Given,
  progress: Progress | undefined,
): Promise<Outcome<ImportPlan>> {
  const sheets = await readSheets(options)
  return sheets.ok
    ? planOf(herd.facts, sheets.value, options.dates as DateForm | undefined, progress)
    : sheets
}

/** Records facts in one save; over an older copy only where that was asked for. */
async function save(herd: HerdStore, facts: readonly NewFact[], given: Given): Promise<Outcome<unknown>> {
  const recorded = await herd.record(facts, given.options.by)
  if (recorded.ok || !given.switches.has('merge-older')) return recorded
  return recorded.problems.every(({ code }) => code === 'herd-older') ? herd.retry(true) : recorded
}

function misused(given: Given): Problem[] {
  const { ade, dates } = given.options
  const problems: Problem[] = []
  const tables = tableNames.some((table) => given.options[table] !== undefined)
  if (!tables && ade === undefined) problems.push(fault('import-nothing', ''))
  if (tables && ade !== undefined) problems.push(fault('import-ade-alone', ''))
  if (dates !== undefined && !dateForms.some((form) => form === dates))
    problems.push(fault('option-dates', '', { value: dates }))
  return problems
}
