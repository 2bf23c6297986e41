/** animals.csv against the animals on record. */
import { dayIso } from '../../../breeding/day.ts'
import { type AnimalRecordFact, HERD, type NewFact } from '../../../breeding/facts.ts'
import { animalColumns } from '../tables/animals.ts'
import { againstAnimal } from './animal-doubts.ts'
import type { Herd, PlannedAnimal, PlannedAnimals } from './herd.ts'
import { isId } from './id-form.ts'
import { keyedOutcomes } from './keyed.ts'
import type { PlannedFact, RowOutcome } from './outcome.ts'
import type { Fields, TableRow } from './rows.ts'

/** Sorts the rows of animals.csv into known, new, changed and refused. */
export function animalOutcomes(rows: readonly TableRow[], herd: Herd): RowOutcome[] {
  const against = againstAnimal(rows, herd, sharedNumbers(herd))
  const ids = new Set(herd.book.animals.keys())
  return keyedOutcomes(rows, {
    columns: animalColumns,
    keyOf: (given) => String(given.number),
    onRecord: (number) => herd.book.byNumber.get(number)?.record as Fields | undefined,
    against,
    record: (fields, number) => [recorded(fields, idOf(number, herd, ids), herd)],
  })
}

/**
 * The id of an animal: her own where she is on record, the number itself where no animal has it for an id, else a
 * random one.
 */
function idOf(number: string, herd: Herd, ids: Set<string>): string {
  const known = herd.book.byNumber.get(number)
  if (known !== undefined) return known.id
  const id = number === HERD || ids.has(number) || !isId(number) ? herd.newId() : number
  ids.add(id)
  return id
}

function recorded(fields: Fields, about: string, herd: Herd): PlannedFact {
  const fact: Record<string, unknown> = { about, date: dayIso(herd.today), kind: 'animal', sex: 'F' }
  for (const { field } of animalColumns) if (fields[field] !== undefined) fact[field] = fields[field]
  return { fact: fact as unknown as NewFact<AnimalRecordFact> }
}

/** Numbers that more than one animal of the herd has. */
function sharedNumbers(herd: Herd): Set<string> {
  const seen = new Set<string>()
  const shared = new Set<string>()
  for (const { number } of herd.book.animals.values())
    if (seen.size === seen.add(number).size) shared.add(number)
  return shared
}

/** The animals that the other tables can name: those on record, as the rows change them, and the new ones. */
export function animalsAfter(
  outcomes: readonly RowOutcome[],
  refusedAt: ReadonlyMap<string, string>,
  herd: Herd,
): PlannedAnimals {
  const byNumber = new Map<string, PlannedAnimal>()
  for (const { id, number, record } of herd.book.animals.values())
    byNumber.set(number, plannedAnimal(id, record))
  const refused = new Map(refusedAt)
  for (const each of outcomes) {
    if (each.outcome === 'refused') refused.set(String(each.row.given.number), each.row.path)
    if (each.outcome !== 'new' && each.outcome !== 'changed') continue
    for (const { fact } of each.facts)
      if (fact.kind === 'animal') byNumber.set(fact.number, plannedAnimal(fact.about, fact))
  }
  return { byNumber, shared: sharedNumbers(herd), refused }
}

const plannedAnimal = (
  id: string,
  { number, sex, born }: Omit<AnimalRecordFact, 'id' | 'at'>,
): PlannedAnimal => ({
  id,
  number,
  sex,
  ...(born === undefined ? {} : { born }),
})
