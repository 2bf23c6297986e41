/** Days of gestation, due date and dry-off date. */
import { type Day, plusDays } from './day.ts'
import type { Policy } from './policy.ts'

/**
 * Days of gestation by the breed of the calf's sire.
 * Source: Norman et al. 2009, J Dairy Sci 92:2259-2269 (dairy breeds, rounded); Irish beef-on-dairy gestation study,
 * 977,037 progeny (Angus, Limousin); Hereford, Simmental, Belgian Blue and Charolais are a judgement.
 */
const byBreed: readonly {
  readonly names: readonly string[]
  readonly days: number
  readonly maiden?: number
}[] = [
  {
    names: ['holstein', 'friesian', 'holstein-friesian', 'ho', 'hol', 'hf', 'fr', 'hfr'],
    days: 280,
    maiden: 278,
  },
  { names: ['jersey', 'je', 'jer'], days: 280 },
  { names: ['ayrshire', 'ay', 'ays'], days: 282 },
  { names: ['brown swiss', 'bs', 'bsw'], days: 287 },
  { names: ['angus', 'aberdeen angus', 'aa', 'an', 'aan'], days: 282 },
  { names: ['hereford', 'he', 'her'], days: 285 },
  { names: ['simmental', 'si', 'sim'], days: 286 },
  { names: ['belgian blue', 'bb', 'bbl'], days: 285 },
  { names: ['charolais', 'ch', 'cha'], days: 288 },
  { names: ['limousin', 'li', 'lm', 'lim'], days: 287 },
]
const lookup = new Map(byBreed.flatMap((breed) => breed.names.map((name) => [name, breed] as const)))

/** Half the width of the 95 % band around a due date, days. */
export const DUE_BAND = 10

/**
 * Days of gestation of a calf.
 *
 * @param sire what is known of the sire: his own figure in days, else his breed
 * @param maidenDam the dam has not calved yet
 * @example gestationDays({ breed: 'Holstein-Friesian' }, true, standardPolicy) // 278
 */
export function gestationDays(
  sire: { readonly gestationDays?: number | undefined; readonly breed?: string | undefined },
  maidenDam: boolean,
  policy: Policy,
): number {
  if (sire.gestationDays !== undefined) return sire.gestationDays
  const breed = sire.breed === undefined ? undefined : lookup.get(sire.breed.trim().toLowerCase())
  if (breed === undefined) return policy.defaultGestation
  return maidenDam ? (breed.maiden ?? breed.days) : breed.days
}

/**
 * The day she is dried off: 60 days before due; 84 in the first lactation or when thin.
 *
 * @param thin her last score of the past 60 days was below 3
 * @returns undefined for a maiden, who is not in milk
 */
export function dryOffDay(due: Day, parity: number, thin: boolean, policy: Policy): Day | undefined {
  if (parity === 0) return undefined
  return plusDays(due, -(parity === 1 || thin ? policy.dryOffThinDays : policy.dryOffDays))
}
