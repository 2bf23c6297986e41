/** A small herd to read tables into, and the reading of them. */
import { isoDay } from '../../../../source/breeding/day.ts'
import type { Fact, NewFact } from '../../../../source/breeding/facts.ts'
import type { Problem } from '../../../../source/breeding/problem.ts'
import type { DateForm } from '../../../../source/exchange/csv/date-forms.ts'
import { type ImportPlan, importPlan, type Sheets } from '../../../../source/exchange/csv/import/plan.ts'
import { readSheet } from '../../../../source/exchange/csv/reading.ts'
import type { TableName } from '../../../../source/exchange/csv/tables/names.ts'
import { asFacts } from '../../../../source/herd/recording.ts'

export const today = isoDay('2026-06-01')
export const at = new Date('2026-06-01T05:00:00Z')

/** Ids in order: `n1`, `n2`, … */
export function counter(): () => string {
  let count = 0
  return () => `n${++count}`
}

let made = 0

/** Facts of a herd; those without an id get `k1`, `k2`, … within it. */
export function herd(...newFacts: readonly NewFact[]): Fact[] {
  const farm: NewFact = {
    about: 'herd',
    date: '2026-01-01',
    kind: 'farm',
    name: 'Long Acre',
    zone: 'UTC',
    milkings: ['05:30', '15:30'],
  }
  return asFacts([farm, ...newFacts.map((fact, place) => ({ id: `k${place + 1}`, ...fact }) as NewFact)], {
    at,
  })
}

export const cow = (
  number: string,
  more: Partial<NewFact<Extract<Fact, { kind: 'animal' }>>> = {},
): NewFact => ({
  about: number,
  date: '2026-01-01',
  kind: 'animal',
  number,
  sex: 'F',
  ...more,
})

/** A season of six weeks of AI from 1 May. */
export const season: NewFact = {
  about: 'herd',
  date: '2026-01-01',
  kind: 'season',
  block: 'spring',
  matingStart: '2026-05-01',
  aiWeeks: 6,
  bullWeeks: 3,
}

export type Files = Readonly<Partial<Record<TableName, string | Uint8Array>>>

/** The sheets of some files, named after their tables. */
function sheetsOf(files: Files): { sheets: Sheets; problems: readonly Problem[] } {
  const read = Object.entries(files).map(
    ([name, text]) =>
      [name, readSheet(typeof text === 'string' ? Buffer.from(text) : text, `${name}.csv`)] as const,
  )
  return {
    sheets: Object.fromEntries(read.flatMap(([name, sheet]) => (sheet.ok ? [[name, sheet.value]] : []))),
    problems: read.flatMap(([, sheet]) => (sheet.ok ? [] : sheet.problems)),
  }
}

interface Imported extends ImportPlan {
  /** The facts of the herd with those of the plan recorded. */
  readonly after: readonly Fact[]
  readonly problems: readonly Problem[]
}

/** Reads files into a herd; nothing is planned where a whole file is refused. */
export function imported(facts: readonly Fact[], files: Files, dates?: DateForm): Imported {
  const { sheets, problems } = sheetsOf(files)
  made += 1
  let count = 0
  const newId = () => `n${made}-${++count}`
  const plan =
    problems.length > 0 ? undefined : importPlan(facts, sheets, { today, newId, ...(dates ? { dates } : {}) })
  if (plan === undefined || !plan.ok)
    return { tables: [], facts: [], after: facts, problems: plan?.problems ?? problems }
  return { ...plan.value, problems, after: [...facts, ...asFacts(plan.value.facts, { at })] }
}

/** What became of each table: new, known, changed and refused rows. */
export const counts = ({ tables }: ImportPlan): Record<string, readonly number[]> =>
  Object.fromEntries(
    tables.map((each) => [each.table, [each.new, each.known, each.changed.length, each.refused.length]]),
  )

/** Code, place and column of what is refused. */
export const refusals = ({ tables, problems }: Imported): string[] =>
  [...problems, ...tables.flatMap(({ refused }) => refused)].map(({ code, path, values }) =>
    [code, path, values?.column].filter((part) => part !== undefined).join(' '),
  )
