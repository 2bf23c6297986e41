/** A fact as an event of the ICAR ADE standard. */
import type { AnimalRecord, HerdBook } from '../../breeding/book.ts'
import type {
  AnimalFact,
  CalvingFact,
  CheckFact,
  FromBullFact,
  HeatFact,
  ServiceFact,
  WithBullFact,
} from '../../breeding/facts.ts'
import {
  calvingEases,
  certainties,
  checkMethods,
  heatMethods,
  type ResourceName,
  resourceTypes,
  resultWord,
  schemes,
  sourceOf,
} from './codes.ts'
import { instantOf } from './instants.ts'

export interface Writing {
  readonly book: HerdBook
  readonly herdId: string
}

/** What a fact does not say itself: its place among the others of the animal. */
export interface Place {
  /** Of an AI: its order among those of the cycle, from 1. */
  readonly rank?: number
  /** Of a calving: the calvings up to it. */
  readonly parity?: number
  /** Of a time with the bull: what ended it. */
  readonly end?: FromBullFact
}

/** An event, and what kind of resource it is. */
export interface Event {
  readonly name: ResourceName
  readonly resource: Readonly<Record<string, unknown>>
}

/**
 * The event of a fact.
 *
 * @param place what its neighbours add, @param deletedAt when it was voided, where it was
 * @returns undefined where the standard has no event for it
 */
export function eventOf(
  fact: AnimalFact,
  animal: AnimalRecord,
  writing: Writing,
  place: Place = {},
  deletedAt?: string,
): Event | undefined {
  const body = bodyOf(fact, writing, place)
  if (body === undefined) return undefined
  const [name, fields] = body
  const { at, by } = fact
  const resource = {
    resourceType: resourceTypes[name],
    id: fact.id,
    animal: { scheme: schemes.number, id: animal.number },
    location: { scheme: schemes.herd, id: writing.herdId },
    eventDateTime: momentOf(fact, writing),
    ...fields,
    meta: {
      source: sourceOf(writing.herdId),
      sourceId: fact.id,
      ...(deletedAt === undefined ? {} : { isDeleted: true }),
      modified: deletedAt ?? at,
      created: at,
      ...(by === undefined ? {} : { creator: by }),
    },
  }
  return { name, resource }
}

/** A service without a time was done at its milking. */
const momentOf = (fact: AnimalFact, { book }: Writing): string =>
  instantOf(fact.date, fact.time ?? (fact.kind === 'service' ? fact.session : undefined), book.farm)

type Body = readonly [ResourceName, Readonly<Record<string, unknown>>]

function bodyOf(fact: AnimalFact, writing: Writing, place: Place): Body | undefined {
  switch (fact.kind) {
    case 'heat':
      return ['heat', heatBody(fact)]
    case 'service':
      return ['insemination', serviceBody(fact, place)]
    case 'with-bull':
      return ['insemination', runBody(fact, writing, place)]
    case 'check':
      return ['check', checkBody(fact)]
    case 'calving':
      return ['parturition', calvingBody(fact, place)]
    case 'loss':
      return ['abortion', {}]
    case 'bar':
    case 'unbar':
      return ['doNotBreed', { doNotBreed: fact.kind === 'bar', ...remark(fact.reason) }]
    default:
      return undefined
  }
}

const remark = (text: string | undefined) => (text === undefined ? {} : { remark: text })

function heatBody({ how, certainty, signs }: HeatFact) {
  const { method, sign } = heatMethods[how]
  return {
    heatDetectionMethod: method,
    certainty: certainties[certainty],
    ...(sign === undefined ? {} : { visualDetection: { heatSigns: [sign] } }),
    ...remark(signs),
  }
}

const sires = (sire: string | undefined) =>
  sire === undefined ? {} : { sireIdentifiers: [{ scheme: schemes.sire, id: sire }] }

function serviceBody({ natural, sire, straw, batch, inseminator }: ServiceFact, { rank }: Place) {
  if (natural === true) return { inseminationType: 'NaturalService', ...sires(sire) }
  const sexed = straw === 'sexed'
  const dose = {
    resourceType: 'icarReproSemenStrawResource',
    ...(batch === undefined ? {} : { batch }),
    ...sires(sire),
    ...(straw === undefined ? {} : { isSexedSemen: sexed, ...(sexed ? { sexedGender: 'Female' } : {}) }),
  }
  return {
    inseminationType: 'Insemination',
    ...(rank === undefined ? {} : { rank }),
    ...sires(sire),
    straw: dose,
    semenFromFarmStocks: true,
    ...(inseminator === undefined ? {} : { responsible: inseminator }),
  }
}

function runBody({ bull }: WithBullFact, { book }: Writing, { end }: Place) {
  return {
    inseminationType: 'RunWithBull',
    ...sires(bull),
    ...(end === undefined ? {} : { eventEndDateTime: instantOf(end.date, end.time, book.farm) }),
  }
}

function checkBody(fact: CheckFact) {
  return {
    method: checkMethods[fact.method],
    result: resultWord(fact),
    ...(fact.foetalAge === undefined ? {} : { foetalAge: fact.foetalAge }),
    ...(fact.foetuses === undefined ? {} : { foetusCount: fact.foetuses }),
  }
}

function calvingBody({ ease, calves = 1, dead = 0, calfSex }: CalvingFact, { parity }: Place) {
  const status = dead === 0 ? 'Alive' : dead === calves ? 'Stillborn' : undefined
  const progeny = [...(calfSex ?? '')].map((sex) => ({
    resourceType: 'icarProgenyDetailsResource',
    specie: 'Cattle',
    gender: sex === 'F' ? 'Female' : 'Male',
    ...(status === undefined ? {} : { birthStatus: status }),
  }))
  return {
    ...(parity === undefined ? {} : { damParity: parity }),
    liveProgeny: calves - dead,
    totalProgeny: calves,
    ...(ease === undefined ? {} : { calvingEase: calvingEases[ease - 1] }),
    ...(progeny.length === 0 ? {} : { progenyDetails: progeny }),
  }
}
