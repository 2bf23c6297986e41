/** seasons.csv against the seasons on record. */
import { dayIso } from '../../../breeding/day.ts'
import { HERD, type NewFact, type SeasonFact } from '../../../breeding/facts.ts'
import { seasonColumns } from '../tables/seasons.ts'
import type { Herd } from './herd.ts'
import { keyedOutcomes } from './keyed.ts'
import type { RowOutcome } from './outcome.ts'
import type { Fields, TableRow } from './rows.ts'

const seasonKey = (fields: Fields): string => `${fields.block} ${fields.matingStart}`

/** Sorts the rows of seasons.csv into known, new, changed and refused. A season is told by its block and start. */
export function seasonOutcomes(rows: readonly TableRow[], herd: Herd): RowOutcome[] {
  const live = herd.book.live.filter((fact): fact is SeasonFact => fact.kind === 'season')
  const latest = new Map(
    live.map((fact) => [seasonKey(fact as unknown as Fields), fact as unknown as Fields]),
  )
  return keyedOutcomes(rows, {
    columns: seasonColumns,
    keyOf: seasonKey,
    onRecord: (key) => latest.get(key),
    record: (fields) => {
      const fact: Record<string, unknown> = { about: HERD, date: dayIso(herd.today), kind: 'season' }
      for (const { field } of seasonColumns) if (fields[field] !== undefined) fact[field] = fields[field]
      return [{ fact: fact as unknown as NewFact<SeasonFact> }]
    },
  })
}
