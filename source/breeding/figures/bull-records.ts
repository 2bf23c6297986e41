/**
 * What a bull's services of a season tell of him.
 */
import { conceptionOfService, returnsOf } from '../animal-chances.ts'
import type { Rates } from '../chances/rates.ts'
import type { Policy } from '../policy.ts'
import { howMany } from '../statistics/poisson-binomial.ts'
import { returnAfter } from './returns.ts'
import type { ServiceResult } from './service-results.ts'

export interface BullRecord {
  /** As his services name him; undefined where they do not. */
  readonly bull: string | undefined
  /** His services that were seen, in order of day. */
  readonly services: readonly ServiceResult[]
  /** Of them followed by a sure heat or a service 18 days or more later; confirmed pregnant; not known. */
  readonly returned: number
  readonly held: number
  readonly unknown: number
  /** Chance of so many returns or more by today, if each service held as often as the rates say, 0 to 1. */
  readonly chanceIfSound: number
  /** So many returns would be rare: at least two, and a chance below one in twenty. */
  readonly doubtful: boolean
}

/** A sound bull would show so many returns less often than this. */
const RARE = 0.05
/** One return says nothing of a bull. */
const FEWEST = 2

/**
 * The bulls of a season by the services that were seen, those with most first. How likely so many returns are is
 * reckoned from the age of each service, so that young ones count for little.
 *
 * @param services of every animal of the block in the season, an animal a list; those by AI are left out
 * @param rates of the herd on the day
 * @source the arithmetic is our own: a sum of independent chances (Hong 2013, Computational Statistics and Data
 *   Analysis 59); that a bull whose cows come back is to be checked: Irish Farmers Journal, keeping stock bulls in
 *   working order
 * @example bullRecords(services, rates, policy)[0] // { bull: 'B9', returned: 4, doubtful: true, ... }
 */
export function bullRecords(
  services: readonly (readonly ServiceResult[])[],
  rates: Rates,
  policy: Policy,
): BullRecord[] {
  const natural = services.flat().filter(({ service }) => !service.ai)
  const records = [...Map.groupBy(natural, ({ service }) => service.sire)].map(([bull, all]): BullRecord => {
    const his = all.toSorted((a, b) => a.service.day - b.service.day)
    const returned = his.filter((one) => returnAfter(one, policy) !== undefined).length
    const chanceIfSound = atLeast(
      returned,
      his.map((one) => chanceOfReturn(one, rates)),
    )
    return {
      bull,
      services: his,
      returned,
      held: his.filter(({ end }) => end === 'held').length,
      unknown: his.filter(({ end }) => end === 'unknown').length,
      chanceIfSound,
      doubtful: returned >= FEWEST && chanceIfSound < RARE,
    }
  })
  return records.sort((a, b) => b.services.length - a.services.length)
}

/** Chance that a service has been followed by a return by the morning of the day. */
function chanceOfReturn({ service, standing }: ServiceResult, rates: Rates): number {
  const { byDay } = returnsOf(service, rates)
  const days = Math.min(standing.today - service.day - 1, byDay.length - 1)
  return (1 - conceptionOfService(service, rates)) * (byDay[days] as number)
}

function atLeast(count: number, chances: readonly number[]): number {
  const { first, chances: each } = howMany(chances)
  return each.reduce((sum, chance, i) => (first + i >= count ? sum + chance : sum), 0)
}
