/**
 * Where the forecast of an animal starts: pregnant since a day, or her next heat on one of some days.
 */
import { type DaysToHeat, daysToHeat, servedAfter } from '../chances/cycle.ts'
import { survivalToAge } from '../chances/losses.ts'
import { type Rates, serviceClass } from '../chances/rates.ts'
import { normalDays } from '../statistics/normal.ts'
import { type AnimalOutlook, type Conception, type SeasonDays, tooSoon } from './outlook.ts'

export interface Start {
  /** First day that can bring a heat or a loss. */
  readonly day: number
  /** The next heat of an animal that is open: entry d is its chance on day `heatsFrom` + d. */
  readonly heatsFrom: number
  readonly heats: DaysToHeat
  /** Pregnancy: the share conceived on that day, and the share in calf now (more than `share` is lost before). */
  readonly conceived?: Conception & { readonly now: number }
  /** The heat of the first day is seen and served for certain. */
  readonly servedForCertain?: boolean
}

const firstHeats = new WeakMap<Rates['firstHeat'], DaysToHeat>()

/**
 * Days from calving to the first heat: most cows are cycling by about 40 days, one in ten is late.
 *
 * @returns entry d is the chance of day d; entries sum to 1
 * @source Irish and UK advice, common practice
 * @example firstHeatAfterCalving(defaultRates)[38] // 0.0305
 */
function firstHeatAfterCalving({ firstHeat }: Rates): DaysToHeat {
  const found = firstHeats.get(firstHeat)
  if (found) return found
  const days = new Array<number>(Math.max(...firstHeat.map((curve) => curve.to)) + 1).fill(0)
  for (const { share, mean, sd, from, to } of firstHeat) {
    for (const [i, chance] of normalDays(mean, sd, from, to).entries())
      days[from + i] = (days[from + i] as number) + share * chance
  }
  firstHeats.set(firstHeat, days)
  return days
}

/**
 * Days to the next heat of an animal that may be anywhere in her cycle: a long cycle is likelier to be met.
 *
 * @returns entry d is the chance of day d, 0 being the day itself; entries sum to 1
 * @example anywhereInCycle(22, defaultRates)[0] // 0.0455 (1 in 22)
 */
function anywhereInCycle(mean: number, rates: Rates): DaysToHeat {
  let longer = 1
  const days = daysToHeat('heat', mean, rates).map((share) => {
    longer -= share
    return Math.max(0, longer)
  })
  const sum = days.reduce((a, b) => a + b, 0)
  return days.map((share) => share / sum)
}

const nothing: DaysToHeat = []

/**
 * The start of an animal's forecast from the last fact that fixes her cycle.
 *
 * @example startOf({ ...cow, anchor: { kind: 'heat', day: 3 } }, season, defaultRates).day // 4
 */
export function startOf(
  { anchor, cycleMean, maiden }: AnimalOutlook,
  season: SeasonDays,
  rates: Rates,
): Start {
  switch (anchor.kind) {
    case 'in-calf': {
      const { conceived: day, confirmed, by, gestation } = anchor
      const share = 1 / survivalToAge(confirmed - day, rates.losses)
      const conceived = { day, by, share, gestation, now: 1 }
      return { day: confirmed + 1, heatsFrom: confirmed + 1, heats: nothing, conceived }
    }
    case 'served': {
      const { day, by, gestation } = anchor
      const share = rates.conception[serviceClass(maiden, by)]
      const past = Math.max(0, season.today - day)
      const until = by === 'natural' ? 0 : tooSoon(season, day)
      const cycle = daysToHeat('heat', cycleMean, rates)
      const heats = servedAfter(daysToHeat('service', cycleMean, rates), cycle, past, until)
      return { day: day + 1, heatsFrom: day, heats, conceived: { day, by, share, gestation, now: share } }
    }
    case 'heat':
      // In the bull weeks he serves the heat that was seen, so that the day itself belongs to the loop.
      if (anchor.day > season.lastAiDay) return { day: anchor.day, heatsFrom: anchor.day, heats: [1] }
      return { day: anchor.day + 1, heatsFrom: anchor.day, heats: daysToHeat('heat', cycleMean, rates) }
    case 'calved':
      return { day: anchor.day + 1, heatsFrom: anchor.day, heats: firstHeatAfterCalving(rates) }
    case 'anywhere':
      return { day: anchor.day, heatsFrom: anchor.day, heats: anywhereInCycle(cycleMean, rates) }
    case 'evenly': {
      const heats = new Array<number>(anchor.days).fill(1 / anchor.days)
      return { day: anchor.day, heatsFrom: anchor.day, heats }
    }
    case 'serve-today':
      return { day: season.today, heatsFrom: season.today, heats: [1], servedForCertain: true }
  }
}
