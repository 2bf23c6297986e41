/** An event of the ICAR ADE standard as rows of facts. */
import type { CheckMethod } from '../../breeding/facts.ts'
import { fault, type Problem } from '../../breeding/problem.ts'
import type { Fields } from '../csv/import/rows.ts'
import { calvingEases, certainties, heatSourceOf, methodOf, resultOf, schemes } from './codes.ts'
import type { Found } from './documents.ts'
import type { Identities } from './identities.ts'
import { momentIn } from './instants.ts'
import { idOf, isObject, type Loose, listOf, schemeOf, textOf, wholeOf, wordsOf } from './json.ts'

/** What the reading of events needs to know of the herd. */
export interface Reading {
  readonly identities: Identities
  readonly zone: string
  /** The herd's usual way to check, taken where an event does not tell. */
  readonly checkMethod: CheckMethod
  /** The kind of the straws of a sire that are not sexed, where the stock tells. */
  readonly unsexedKindOf: (sire: string | undefined) => 'conventional' | 'beef'
}

/** One or two facts of one event: a time with the bull may have an end. */
type EventFields = readonly [Fields, ...Fields[]]

/**
 * The facts that an event tells of, without ids.
 *
 * @returns the fields of each fact, or why the event is refused: ade-no-animal, ade-no-date, ade-date, ade-word,
 *   ade-embryo, ade-number
 */
export function eventFields({ path, name, resource }: Found, reading: Reading): EventFields | Problem {
  const number = reading.identities.numberOf(resource.animal)
  if (number === undefined) return fault('ade-no-animal', path)
  const typed = textOf(resource.eventDateTime)
  if (typed === undefined) return fault('ade-no-date', path, { field: 'eventDateTime' }, number)
  const moment = momentIn(typed, reading.zone)
  if (moment === undefined) return fault('ade-date', path, { field: 'eventDateTime', value: typed }, number)
  const event: Event = { path, resource, number, envelope: { number, ...moment }, reading }
  switch (name) {
    case 'heat':
      return heat(event)
    case 'insemination':
      return insemination(event)
    case 'check':
      return check(event)
    case 'parturition':
      return parturition(event)
    case 'abortion':
      return [{ ...event.envelope, kind: 'loss' }]
    default:
      return doNotBreed(event)
  }
}

interface Event {
  readonly path: string
  readonly resource: Loose
  readonly number: string
  readonly envelope: Fields
  readonly reading: Reading
}

/** Fields without those that are not known. */
const known = (fields: Fields): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined))

const wrongWord = ({ path, number }: Event, field: string, value: unknown): Problem =>
  fault('ade-word', path, { field, value: textOf(value) ?? '' }, number)

function heat({ envelope, resource }: Event): EventFields {
  const visual = isObject(resource.visualDetection) ? resource.visualDetection : {}
  const certainty = Object.entries(certainties).find(([, word]) => word === resource.certainty)?.[0]
  const how = heatSourceOf(resource.heatDetectionMethod, listOf(visual.heatSigns))
  return [known({ ...envelope, kind: 'heat', how, certainty, signs: wordsOf(resource.remark) })]
}

function insemination(event: Event): EventFields | Problem {
  const { envelope, resource, reading, path, number } = event
  const straw = isObject(resource.straw) ? resource.straw : {}
  const [identifier] = [...listOf(resource.sireIdentifiers), ...listOf(straw.sireIdentifiers)]
  const named =
    schemeOf(identifier) === schemes.sire ? idOf(identifier) : reading.identities.numberOf(identifier)
  const sire = named ?? textOf(resource.sireOfficialName) ?? textOf(straw.sireOfficialName)
  switch (resource.inseminationType) {
    case 'Insemination':
      return [
        known({
          ...envelope,
          kind: 'service',
          sire,
          straw: strawKind(straw.isSexedSemen, sire, reading),
          batch: textOf(straw.batch),
          inseminator: textOf(resource.responsible),
          // Of two at one moment the rank tells which came first.
          order: wholeOf(resource.rank),
        }),
      ]
    case 'NaturalService':
      return [known({ ...envelope, kind: 'service', natural: true, sire })]
    case 'RunWithBull':
      return run(event, sire)
    case 'Implantation':
      return fault('ade-embryo', path, {}, number)
    default:
      return wrongWord(event, 'inseminationType', resource.inseminationType)
  }
}

const strawKind = (sexed: unknown, sire: string | undefined, reading: Reading): string | undefined =>
  sexed === true ? 'sexed' : sexed === false ? reading.unsexedKindOf(sire) : undefined

function run(
  { envelope, resource, reading, path, number }: Event,
  bull: string | undefined,
): EventFields | Problem {
  const began = known({ ...envelope, kind: 'with-bull', bull })
  const typed = textOf(resource.eventEndDateTime)
  if (typed === undefined) return [began]
  const end = momentIn(typed, reading.zone)
  if (end === undefined) return fault('ade-date', path, { field: 'eventEndDateTime', value: typed }, number)
  return [began, known({ number, ...end, kind: 'from-bull', bull })]
}

function check(event: Event): EventFields | Problem {
  const { envelope, resource, reading } = event
  const result = resultOf(resource.result)
  if (result === undefined) return wrongWord(event, 'result', resource.result)
  const method = resource.method === undefined ? reading.checkMethod : methodOf(resource.method)
  if (method === undefined) return wrongWord(event, 'method', resource.method)
  const foetalAge = wholeOf(resource.foetalAge)
  const foetuses = wholeOf(resource.foetusCount) ?? (resource.result === 'Multiple' ? 2 : undefined)
  const outside = outsideOf(event, { foetalAge: [foetalAge, 20, 290], foetusCount: [foetuses, 1, 5] })
  return outside ?? [known({ ...envelope, kind: 'check', method, result, foetalAge, foetuses })]
}

function parturition(event: Event): EventFields | Problem {
  const { envelope, resource } = event
  const progeny = [...listOf(resource.progenyDetails), ...listOf(resource.progeny)].filter(isObject)
  const alive = wholeOf(resource.liveProgeny)
  const calves = wholeOf(resource.totalProgeny) ?? (progeny.length > 0 ? progeny.length : alive)
  const notAlive = progeny.filter(
    ({ birthStatus }) => birthStatus !== undefined && birthStatus !== 'Alive',
  ).length
  const dead = calves !== undefined && alive !== undefined ? calves - alive : notAlive
  const sexes = progeny.map(({ gender }) => (gender === 'Female' ? 'F' : gender === 'Male' ? 'M' : ''))
  const ease = textOf(resource.calvingEase)
  const easeNumber = ease === undefined ? undefined : (calvingEases as readonly string[]).indexOf(ease) + 1
  if (easeNumber === 0) return wrongWord(event, 'calvingEase', ease)
  const outside = outsideOf(event, {
    totalProgeny: [calves, 1, 5],
    liveProgeny: [calves === undefined ? undefined : calves - dead, 0, calves ?? 5],
  })
  if (outside !== undefined) return outside
  const allSexed = sexes.length > 0 && sexes.length === calves && !sexes.includes('')
  return [
    known({
      ...envelope,
      kind: 'calving',
      ease: easeNumber,
      calves,
      dead: dead > 0 ? dead : undefined,
      calfSex: allSexed ? sexes.join('') : undefined,
    }),
  ]
}

function doNotBreed({ envelope, resource }: Event): EventFields {
  const kind = resource.doNotBreed === false ? 'unbar' : 'bar'
  return [known({ ...envelope, kind, reason: wordsOf(resource.remark) })]
}

/** The first number outside its range, as a problem. */
function outsideOf(
  { path, number }: Event,
  numbers: Readonly<Record<string, readonly [value: number | undefined, from: number, to: number]>>,
): Problem | undefined {
  for (const [field, [value, from, to]] of Object.entries(numbers))
    if (value !== undefined && (value < from || value > to))
      return fault('ade-number', path, { field, value, from, to }, number)
  return undefined
}
