/** Reads the tables of an import from their files, and plans what they would record. */
import { readFile } from 'node:fs/promises'
import { openBook } from '../breeding/book.ts'
import type { Fact } from '../breeding/facts.ts'
import type { Outcome, Problem } from '../breeding/problem.ts'
import type { DateForm } from '../exchange/csv/date-forms.ts'
import { type ImportPlan, importPlan, type Sheets } from '../exchange/csv/import/plan.ts'
import type { Progress } from '../exchange/csv/import/progress.ts'
import { readSheet, type Sheet } from '../exchange/csv/reading.ts'
import { type TableName, tableNames } from '../exchange/csv/tables/names.ts'
import { newId } from '../herd/ids.ts'
import { asOutcome } from '../herd/outcome.ts'
import { attempt } from '../herd/store/failure.ts'
import { today } from './today.ts'

/** The files that were named, as sheets; the faults of all of them where any cannot be read. */
export async function readSheets(paths: Readonly<Partial<Record<string, string>>>): Promise<Outcome<Sheets>> {
  const sheets: Partial<Record<TableName, Sheet>> = {}
  const problems: Problem[] = []
  for (const table of tableNames) {
    const path = paths[table]
    if (path === undefined) continue
    const bytes = await asOutcome(() => attempt(path, () => readFile(path)))
    const sheet = bytes.ok ? readSheet(bytes.value, path) : bytes
    if (sheet.ok) sheets[table] = sheet.value
    else problems.push(...sheet.problems)
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: sheets }
}

/**
 * What the tables would record in a herd of these facts.
 *
 * @param dates how other forms of dates are read, @param progress is told how far it has got
 */
export function planOf(
  facts: readonly Fact[],
  sheets: Sheets,
  dates?: DateForm,
  progress?: Progress,
): Outcome<ImportPlan> {
  const { zone } = openBook(facts).farm
  return importPlan(facts, sheets, {
    today: today(zone),
    newId,
    ...(dates === undefined ? {} : { dates }),
    ...(progress === undefined ? {} : { progress }),
  })
}
