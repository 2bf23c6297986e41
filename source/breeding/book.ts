/**
 * The herd book: the facts of a file put in order, corrections applied, one record an animal. It holds what does
 * not depend on the day; what an animal's facts mean on a day is her standing (standing.ts).
 */

import { type AnimalRecord, animalRecord } from './animal-record.ts'
import { compareTexts } from './compare-texts.ts'
import {
  type AnimalFact,
  type AnimalRecordFact,
  type ArchiveFact,
  type DeliveryFact,
  type Fact,
  type FarmFact,
  HERD,
  type KeptResultFact,
  type NitrogenFact,
  type PolicyFact,
  type SeasonFact,
  type ServiceFact,
  type SpoiledFact,
  type StockTakeFact,
} from './facts.ts'
import { Clock, standardMilkings } from './moment.ts'
import { type Policy, policyFrom } from './policy.ts'
import { type Season, seasonFrom } from './season.ts'
import { voidedBy } from './voided.ts'

export type { AnimalRecord, Happening } from './animal-record.ts'

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
  /** Where facts of closed seasons went, in order of the file. */
  readonly archives: readonly ArchiveFact[]
  /** Results of checks that are still to be settled, by date, then order of the file. */
  readonly keptResults: readonly KeptResultFact[]
  /** Their records alone, by id, in order of the file. */
  readonly records: ReadonlyMap<string, AnimalRecordFact>
  /** Live services, by AI and by bulls, in order of the file. */
  readonly services: readonly ServiceFact[]
  /** All facts, voided ones and corrections too, in order of the file. */
  readonly facts: readonly Fact[]
  /** All live facts, in order of the file; corrections are not among them. */
  readonly live: readonly Fact[]
  /** Ids of the facts that a correction voids. */
  readonly voided: ReadonlySet<string>
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
  const records = new Map<string, AnimalRecordFact>()
  const ofAnimals = new Map<string, AnimalFact[]>()
  const services: ServiceFact[] = []
  for (const fact of facts) {
    if (fact.kind === 'correction' || (voided.size > 0 && voided.has(fact.id))) continue
    live.push(fact)
    if (fact.kind === 'service') services.push(fact)
    if (fact.about === HERD) ofHerd.push(fact)
    else if (fact.kind === 'animal') records.set(fact.about, fact)
    else {
      const ofHer = ofAnimals.get(fact.about)
      if (ofHer === undefined) ofAnimals.set(fact.about, [fact as AnimalFact])
      else ofHer.push(fact as AnimalFact)
    }
  }
  const farm = ofHerd.findLast((fact): fact is FarmFact => fact.kind === 'farm')
  const milkings = farm?.milkings ?? standardMilkings
  const clock = new Clock(milkings)
  const animals = new Map<string, AnimalRecord>()
  for (const [id, record] of records) animals.set(id, animalRecord(record, ofAnimals.get(id) ?? [], clock))
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
    ...byNames(animals),
    records,
    stock: ofHerd.filter(isStock).sort(byDate),
    archives: ofHerd.filter((fact): fact is ArchiveFact => fact.kind === 'archive'),
    nitrogen: ofHerd.filter((fact): fact is NitrogenFact => fact.kind === 'nitrogen').sort(byDate),
    keptResults: ofHerd.filter((fact): fact is KeptResultFact => fact.kind === 'kept-result').sort(byDate),
    services,
    facts,
    live,
    voided,
  }
}

/** Animals by the farm's number, and by international ID. */
function byNames(animals: ReadonlyMap<string, AnimalRecord>): {
  byNumber: Map<string, AnimalRecord>
  byInternationalId: Map<string, AnimalRecord>
} {
  const byNumber = new Map<string, AnimalRecord>()
  const byInternationalId = new Map<string, AnimalRecord>()
  for (const animal of animals.values()) {
    byNumber.set(animal.number, animal)
    const { internationalId } = animal.record
    if (internationalId !== undefined) byInternationalId.set(internationalId, animal)
  }
  return { byNumber, byInternationalId }
}

const isStock = (fact: Fact): fact is StockFact =>
  fact.kind === 'stock-take' || fact.kind === 'delivery' || fact.kind === 'spoiled'

const byDate = (a: Fact, b: Fact): number => compareTexts(a.date, b.date)

const bySeasonStart = (a: Season, b: Season): number =>
  a.matingStart - b.matingStart || compareTexts(a.block, b.block)

/**
 * The animal that a parent field or a sire code names: by the farm's number, else by international ID.
 *
 * @returns undefined where she or he is not in the file
 */
export const animalNamed = (book: HerdBook, name: string | undefined): AnimalRecord | undefined =>
  name === undefined ? undefined : (book.byNumber.get(name) ?? book.byInternationalId.get(name))
