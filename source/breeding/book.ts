/**
 * The herd book: the facts of a file put in order, corrections applied, one record an animal. It holds what does
 * not depend on the day; what an animal's facts mean on a day is her standing (standing.ts).
 */
import { type Day, isoDay } from './day.ts'
import {
  type AnimalFact,
  type AnimalRecordFact,
  type DeliveryFact,
  type Fact,
  type FarmFact,
  HERD,
  type NitrogenFact,
  type PolicyFact,
  type SeasonFact,
  type ServiceFact,
  type SpoiledFact,
  type StockTakeFact,
} from './facts.ts'
import { Clock, kindRank, type Minute, standardMilkings } from './moment.ts'
import { type Policy, policyFrom } from './policy.ts'
import { type Season, seasonFrom } from './season.ts'
import { voidedBy } from './voided.ts'

/** A fact with its day and its minute counted once. */
export interface Happening<F extends AnimalFact = AnimalFact> {
  readonly fact: F
  readonly day: Day
  readonly minute: Minute
  /** Place among her facts: day, minute, kind. */
  readonly order: number
}

export interface AnimalRecord {
  readonly id: string
  readonly number: string
  readonly record: AnimalRecordFact
  readonly born: Day | undefined
  /** What happened to her, in order of day, minute and kind; voided facts are not among it. */
  readonly happenings: readonly Happening[]
}

export type StockFact = StockTakeFact | DeliveryFact | SpoiledFact

export interface HerdBook {
  readonly farm: { readonly name: string; readonly zone: string; readonly milkings: readonly string[] }
  readonly policy: Policy
  /** Seasons of each block, by mating start. */
  readonly seasons: ReadonlyMap<string, readonly Season[]>
  /** All seasons, by mating start, then block. */
  readonly allSeasons: readonly Season[]
  /** By id, in order of the file. */
  readonly animals: ReadonlyMap<string, AnimalRecord>
  readonly byNumber: ReadonlyMap<string, AnimalRecord>
  readonly byInternationalId: ReadonlyMap<string, AnimalRecord>
  /** Live stock facts by date, then order of the file. */
  readonly stock: readonly StockFact[]
  readonly nitrogen: readonly NitrogenFact[]
  /** Live services, by AI and by bulls, in order of the file. */
  readonly services: readonly ServiceFact[]
  /** All live facts, in order of the file; corrections are not among them. */
  readonly live: readonly Fact[]
  /** Ids of the facts that a correction voids. */
  readonly voided: ReadonlySet<string>
}

interface Draft {
  record: AnimalRecordFact | undefined
  happenings: Happening[]
  sorted: boolean
}

/**
 * Opens the book of a list of facts.
 *
 * @param facts in the order they were recorded; each has passed the schema
 * @returns the book; facts about an animal without a record are left out (the schema refuses such files)
 * @example openBook(facts).byNumber.get('412')?.happenings.length // 15
 */
export function openBook(facts: readonly Fact[]): HerdBook {
  const voided = voidedBy(facts)
  const live: Fact[] = []
  const ofHerd: Fact[] = []
  const ofAnimals: (AnimalFact | AnimalRecordFact)[] = []
  const services: ServiceFact[] = []
  for (const fact of facts) {
    if (fact.kind === 'correction' || (voided.size > 0 && voided.has(fact.id))) continue
    live.push(fact)
    if (fact.kind === 'service') services.push(fact)
    if (fact.about === HERD) ofHerd.push(fact)
    else ofAnimals.push(fact as AnimalFact | AnimalRecordFact)
  }
  const farm = ofHerd.findLast((fact): fact is FarmFact => fact.kind === 'farm')
  const milkings = farm?.milkings ?? standardMilkings
  const animals = animalRecords(ofAnimals, milkings)
  const records = [...animals.values()]
  const seasons = new Map(
    ofHerd
      .filter((fact): fact is SeasonFact => fact.kind === 'season')
      .map((fact) => [`${fact.matingStart} ${fact.block}`, fact]),
  )
  const allSeasons = [...seasons.values()].map(seasonFrom).sort(bySeasonStart)
  return {
    farm: { name: farm?.name ?? '', zone: farm?.zone ?? 'UTC', milkings },
    policy: policyFrom(ofHerd.filter((fact): fact is PolicyFact => fact.kind === 'policy')),
    seasons: Map.groupBy(allSeasons, (season) => season.block),
    allSeasons,
    animals,
    byNumber: new Map(records.map((animal) => [animal.number, animal])),
    byInternationalId: new Map(
      records.flatMap((animal) =>
        animal.record.internationalId === undefined ? [] : [[animal.record.internationalId, animal] as const],
      ),
    ),
    stock: ofHerd.filter(isStock).sort(byDate),
    nitrogen: ofHerd.filter((fact): fact is NitrogenFact => fact.kind === 'nitrogen').sort(byDate),
    services,
    live,
    voided,
  }
}

const isStock = (fact: Fact): fact is StockFact =>
  fact.kind === 'stock-take' || fact.kind === 'delivery' || fact.kind === 'spoiled'

const byDate = (a: Fact, b: Fact): number => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)

const bySeasonStart = (a: Season, b: Season): number =>
  a.matingStart - b.matingStart || (a.block < b.block ? -1 : a.block > b.block ? 1 : 0)

function animalRecords(
  facts: readonly (AnimalFact | AnimalRecordFact)[],
  milkings: readonly string[],
): Map<string, AnimalRecord> {
  const drafts = new Map<string, Draft>()
  const clock = new Clock(milkings)
  for (const fact of facts) {
    let draft = drafts.get(fact.about)
    if (draft === undefined) {
      draft = { record: undefined, happenings: [], sorted: true }
      drafts.set(fact.about, draft)
    }
    if (fact.kind === 'animal') {
      draft.record = fact
      continue
    }
    const day = isoDay(fact.date)
    const minute = clock.minute(fact.time)
    const order = (day * 1440 + minute) * 32 + kindRank(fact.kind)
    const before = draft.happenings[draft.happenings.length - 1]
    if (before !== undefined && before.order > order) draft.sorted = false
    draft.happenings.push({ fact, day, minute, order })
  }
  const animals = new Map<string, AnimalRecord>()
  for (const [id, draft] of drafts) {
    if (draft.record === undefined) continue
    if (!draft.sorted) draft.happenings.sort((a, b) => a.order - b.order)
    animals.set(id, {
      id,
      number: draft.record.number,
      record: draft.record,
      born: draft.record.born === undefined ? undefined : isoDay(draft.record.born),
      happenings: draft.happenings,
    })
  }
  return animals
}

/**
 * The animal that a parent field or a sire code names: by the farm's number, else by international ID.
 *
 * @returns undefined where she or he is not in the file
 */
export const animalNamed = (book: HerdBook, name: string | undefined): AnimalRecord | undefined =>
  name === undefined ? undefined : (book.byNumber.get(name) ?? book.byInternationalId.get(name))
