/** facts.csv against the facts on record. */
import type { AnimalFact, NewFact } from '../../../breeding/facts.ts'
import { fault, notice, type Problem } from '../../../breeding/problem.ts'
import { factColumns, factKinds } from '../tables/facts.ts'
import { type AnimalRow, splitById } from './by-id.ts'
import { correctionOf } from './correction.ts'
import { besides, contradicted, type Once, type OnRecord, pairGroup } from './dated.ts'
import { agrees, differences } from './differences.ts'
import { columnOf, factOf, fieldsOf, neededBy } from './fact-fields.ts'
import type { Herd, PlannedAnimal, PlannedAnimals } from './herd.ts'
import { isId } from './id-form.ts'
import type { PlannedFact, RowOutcome } from './outcome.ts'
import { implausible, inconsistent } from './plausible.ts'
import { counted, type Progress } from './progress.ts'
import type { TableRow } from './rows.ts'

const ofEveryFact = ['number', 'date', 'time', 'kind', 'id', 'order']

/** Sorts the rows of facts.csv into known, new, changed and refused. */
export function factOutcomes(
  rows: readonly TableRow[],
  herd: Herd,
  animals: PlannedAnimals,
  progress?: Progress,
): RowOutcome[] {
  const outcomes: RowOutcome[] = []
  const refuse = (row: TableRow, problem: Problem) => outcomes.push({ outcome: 'refused', row, problem })
  const good: AnimalRow[] = []
  for (const row of rows) {
    const animal = animals.byNumber.get(String(row.given.number))
    const problem = unfitRow(row, animal, animals)
    if (problem !== undefined) refuse(row, problem)
    else if (animal !== undefined) good.push({ row, animal })
  }
  const { byIdentity, others, repeated } = splitById(good, herd, refuse)
  for (const row of repeated) outcomes.push({ outcome: 'known', row })
  const claimed = new Set<string>()
  for (const [id, { row, animal }] of byIdentity) {
    const fact = herd.standing(id)
    if (fact !== undefined) claimed.add(fact.id)
    outcomes.push(identified(row, animal, fact as AnimalFact | undefined, herd))
  }
  const settled = Map.groupBy(byIdentity.values(), keyOfGroup)
  const done = counted(progress, 'comparing', others.length)
  for (const [key, group] of Map.groupBy(others, keyOfGroup)) {
    done(group.length)
    const [about = '', date, kind] = JSON.parse(key) as string[]
    const { number } = group[0]?.animal ?? { number: '' }
    const live = (herd.book.animals.get(about)?.happenings ?? [])
      .map(({ fact }) => fact)
      .filter((fact) => fact.date === date && fact.kind === kind && !claimed.has(fact.id))
      .map((fact) => ({ fact, fields: fieldsOf(fact, number) }))
    outcomes.push(...groupOutcomes(group, live, settled.get(key) ?? [], herd))
  }
  return outcomes
}

const onceADay: Once<AnimalFact> = { sameThing: () => true, changes: () => true }

const keyOfGroup = ({ row: { given }, animal }: AnimalRow): string =>
  JSON.stringify([animal.id, given.date, given.kind])

/** What speaks against a row before it is held against the record. */
function unfitRow(
  { given, path }: TableRow,
  animal: PlannedAnimal | undefined,
  animals: PlannedAnimals,
): Problem | undefined {
  const number = String(given.number)
  if (animals.shared.has(number)) return fault('fact-number-shared', path, { column: 'number' }, number)
  if (animal === undefined) {
    const refusedAt = animals.refused.get(number)
    return refusedAt === undefined
      ? fault('fact-animal-unknown', path, { column: 'number' }, number)
      : fault('fact-animal-refused', path, { column: 'number', other: refusedAt }, number)
  }
  if (typeof given.id === 'string' && !isId(given.id))
    return fault('id-form', path, { column: 'id', value: given.id }, number)
  const kind = given.kind as AnimalFact['kind']
  const foreign = Object.keys(given).find(
    (field) => !ofEveryFact.includes(field) && !factKinds[kind].may.includes(field),
  )
  if (foreign === undefined) return undefined
  return fault('column-not-for-fact', path, { column: columnOf.get(foreign) ?? foreign, fact: kind }, number)
}

/**
 * The outcome of a row that names a fact of the herd. A row that says what the fact said before it was corrected is
 * older than the correction, and does not undo it.
 */
function identified(
  row: TableRow,
  animal: PlannedAnimal,
  fact: AnimalFact | undefined,
  herd: Herd,
): RowOutcome {
  if (fact === undefined) {
    const taken = notice('row-taken-back', row.path, { id: String(row.given.id) }, animal.number)
    return { outcome: 'known', row, notice: taken }
  }
  const numberOf = ({ about }: AnimalFact): string => herd.book.animals.get(about)?.number ?? ''
  const outcome = changedOutcome({ row, animal }, { fact, fields: fieldsOf(fact, numberOf(fact)) }, herd)
  const first = herd.byId.get(String(row.given.id)) as AnimalFact
  const isStale =
    outcome.outcome !== 'known' && agrees(factColumns, fieldsOf(first, numberOf(first)), row.given, besides)
  if (!isStale) return outcome
  const corrected = notice('row-corrected-since', row.path, { id: first.id }, animal.number)
  return { outcome: 'known', row, notice: corrected }
}

function groupOutcomes(
  group: readonly AnimalRow[],
  live: readonly OnRecord<AnimalFact>[],
  settled: readonly AnimalRow[],
  herd: Herd,
): RowOutcome[] {
  const animalOf = new Map(group.map(({ row, animal }) => [row, animal]))
  const kind = group[0]?.row.given.kind as AnimalFact['kind']
  const rows = group.map(({ row }) => row)
  const once = factKinds[kind].onceADay ? onceADay : undefined
  const dealtWith = settled.map(({ row }) => row)
  return pairGroup(rows, live, factColumns, once, dealtWith).map((pairing) => {
    const { row } = pairing
    const animal = animalOf.get(row) as PlannedAnimal
    if (pairing.state === 'known') return { outcome: 'known', row }
    if (pairing.state === 'contradicted') return contradicted(row, pairing.other, animal.number)
    if (pairing.state === 'changed') return changedOutcome({ row, animal }, pairing.record, herd)
    return newOutcome({ row, animal }, herd)
  })
}

function newOutcome({ row, animal }: AnimalRow, herd: Herd): RowOutcome {
  const { given, path } = row
  const id = given.id as string | undefined
  const problem =
    (row.asRecorded ? undefined : implausible(given, animal, herd.today, path)) ??
    inconsistent(given, neededBy(given), path, animal.number)
  if (problem !== undefined) return { outcome: 'refused', row, problem }
  return { outcome: 'new', row, facts: [planned(row, factOf(given, animal.id, id))] }
}

function changedOutcome({ row, animal }: AnimalRow, record: OnRecord<AnimalFact>, herd: Herd): RowOutcome {
  const { fact, fields } = record
  const found = differences(factColumns, fields, row.given, besides)
  if (found.length === 0) return { outcome: 'known', row }
  const sameKind = row.given.kind === fact.kind
  const after = { ...(sameKind ? fields : { time: fields.time }), ...row.given }
  const problem =
    implausible(after, animal, herd.today, row.path) ??
    inconsistent(after, neededBy(after), row.path, animal.number)
  if (problem !== undefined) return { outcome: 'refused', row, problem }
  const id = row.given.id as string | undefined
  const replacement = factOf(after, animal.id, id === undefined || herd.byId.has(id) ? herd.newId() : id)
  return {
    outcome: 'changed',
    row,
    facts: [planned(row, replacement), { fact: correctionOf(fact, replacement) }],
    change: { path: row.path, name: animal.number, differences: found },
  }
}

function planned(row: TableRow, fact: NewFact): PlannedFact {
  const order = row.given.order
  return typeof order === 'number' ? { fact, order } : { fact }
}
