/** A fact about an animal as the values of the columns of facts.csv, and back. */
import type { AnimalFact, NewFact } from '../../../breeding/facts.ts'
import { factColumns, factKinds } from '../tables/facts.ts'
import type { Fields } from './rows.ts'

/** Name of the column of a field. */
export const columnOf: ReadonlyMap<string, string> = new Map(
  factColumns.map((column) => [column.field, column.name]),
)

/** A fact as the values of its columns; a field that has no column is left out. */
export function fieldsOf(fact: AnimalFact, number: string): Fields {
  const { proposed, ...said } = fact as AnimalFact & { proposed?: { sire: string; straw: string } }
  const all: Fields = { ...said, number, proposedSire: proposed?.sire, proposedStraw: proposed?.straw }
  return Object.fromEntries(
    factColumns.flatMap(({ field }) => (all[field] === undefined ? [] : [[field, all[field]]])),
  )
}

/** The fact that the values of the columns make. */
export function factOf(fields: Fields, about: string, id: string | undefined): NewFact {
  const kind = fields.kind as AnimalFact['kind']
  const fact: Record<string, unknown> = { ...(id === undefined ? {} : { id }), about, date: fields.date }
  if (fields.time !== undefined) fact.time = fields.time
  fact.kind = kind
  for (const field of factKinds[kind].may) {
    const value = fields[field] ?? factKinds[kind].standard?.[field]
    if (value !== undefined && !field.startsWith('proposed')) fact[field] = value
  }
  if (fields.proposedSire !== undefined)
    fact.proposed = { sire: fields.proposedSire, straw: fields.proposedStraw }
  return fact as unknown as NewFact
}

/** Fields that a fact must have, with the names of their columns. */
export function neededBy(fields: Fields): ReadonlyMap<string, string> {
  const needs = [...factKinds[fields.kind as AnimalFact['kind']].needs]
  if (fields.proposedSire !== undefined) needs.push('proposedStraw')
  if (fields.proposedStraw !== undefined) needs.push('proposedSire')
  return new Map(needs.map((field) => [field, columnOf.get(field) ?? field]))
}
