/**
 * The words of the ICAR ADE standard (ICAR, Animal Data Exchange JSON schemas, branch ADE-1) beside those of the herd.
 */
import type { CheckFact, CheckMethod, HeatFact, HeatSource } from '../../breeding/facts.ts'

/** Resource types that are read and written, by the file name of their schema. */
export const resourceTypes = {
  animal: 'icarAnimalCoreResource',
  heat: 'icarReproHeatEventResource',
  insemination: 'icarReproInseminationEventResource',
  check: 'icarReproPregnancyCheckEventResource',
  parturition: 'icarReproParturitionEventResource',
  abortion: 'icarReproAbortionEventResource',
  doNotBreed: 'icarReproDoNotBreedEventResource',
} as const
export type ResourceName = keyof typeof resourceTypes

/** `icarReproHeatEventResource`, `ReproHeatEvent`, `icarReproHeatEventCollection`: the same kind of thing. */
const short = (type: string): string =>
  type
    .replace(/^.*[/#]/, '')
    .replace(/\.json$/i, '')
    .replace(/(Resource|Collection)$/i, '')
    .replace(/^icar/i, '')
    .toLowerCase()

const byShortName = new Map(
  (Object.keys(resourceTypes) as ResourceName[]).map((name) => [short(resourceTypes[name]), name]),
)

/**
 * The resource of a type, by its file name or its short name; of a collection, that of its members.
 *
 * @example resourceNamed('ReproHeatEvent') // 'heat'
 */
export const resourceNamed = (type: unknown): ResourceName | undefined =>
  typeof type === 'string' ? byShortName.get(short(type)) : undefined

export const calvingEases = [
  'EasyUnassisted',
  'EasyAssisted',
  'DifficultExtraAssistance',
  'DifficultVeterinaryCare',
  'CaesareanOrSurgery',
] as const

export const checkMethods: Readonly<Record<CheckMethod, string>> = {
  ultrasound: 'Echography',
  hand: 'Palpation',
  milk: 'Milk',
  blood: 'Blood',
}

export const certainties: Readonly<Record<HeatFact['certainty'], string>> = {
  sure: 'InHeat',
  suspect: 'Suspect',
}

/** How a heat was seen, and the sign that tells it where the method does not. */
export const heatMethods: Readonly<Record<HeatSource, { readonly method: string; readonly sign?: string }>> =
  {
    activity: { method: 'Pedometer' },
    standing: { method: 'Visual', sign: 'StandsUnder' },
    mucus: { method: 'Visual', sign: 'ClearSlime' },
    paint: { method: 'Other' },
    other: { method: 'Other' },
  }

/** How a heat was seen; undefined where the standard does not tell. */
export function heatSourceOf(method: unknown, signs: readonly unknown[]): HeatSource | undefined {
  if (method === 'Pedometer') return 'activity'
  if (signs.includes('StandsUnder')) return 'standing'
  return signs.includes('ClearSlime') || signs.includes('Slime') ? 'mucus' : undefined
}

/** Result of a check: more than one foetus makes `Multiple`. */
export function resultWord({ result, foetuses }: CheckFact): string {
  if (result === 'pregnant') return (foetuses ?? 1) > 1 ? 'Multiple' : 'Pregnant'
  return result === 'empty' ? 'Empty' : 'Unknown'
}

const results: Readonly<Record<string, CheckFact['result']>> = {
  Pregnant: 'pregnant',
  Multiple: 'pregnant',
  Empty: 'empty',
  Unknown: 'unsure',
}

export const resultOf = (word: unknown): CheckFact['result'] | undefined =>
  typeof word === 'string' && Object.hasOwn(results, word) ? results[word] : undefined

/** The method of a check by its word; undefined for those that the herd does not know. */
export const methodOf = (word: unknown): CheckMethod | undefined =>
  (Object.keys(checkMethods) as CheckMethod[]).find((method) => checkMethods[method] === word)

/** Schemes of our own: the standard leaves them to who issues the numbers, and a herd's numbers are the farm's. */
export const schemes = {
  herd: 'dawnlist.herd',
  number: 'dawnlist.number',
  officialId: 'dawnlist.official-id',
  electronicId: 'dawnlist.electronic-id',
  internationalId: 'dawnlist.international-id',
  sire: 'dawnlist.sire',
  breed: 'dawnlist.breed',
} as const

/** Source of the events of a herd. */
export const sourceOf = (herdId: string): string => `dawnlist:${herdId}`
/** Whether events come from a herd of this program, whichever. */
export const isOurs = (source: unknown): boolean =>
  typeof source === 'string' && source.startsWith('dawnlist:')
