/**
 * The herd's own rates: the guess beforehand, updated by what the herd has shown.
 */
import { type Beta, betaMean, betaQuantile, posterior } from '../statistics/beta.ts'
import { type Rates, type ServiceClass, serviceClasses } from './rates.ts'

/**
 * Services of one class with a known end, of the last 24 months and 42 days old or more. Held: confirmed pregnant to it.
 * Failed: checked empty to it, or a sure heat or a service 18 days or more later.
 */
export interface ServiceResults {
  readonly held: number
  readonly failed: number
}

/** What is known of one rate. */
export interface OwnRate extends ServiceResults {
  readonly known: Beta
  /** The rate to use, 0 to 1. */
  readonly mean: number
}

/**
 * The ends to show with a rate: 2.5 and 97.5 % quantiles of what is known of it.
 *
 * @example rateEnds(own.cowConventional) // { low: 0.47, high: 0.66 }
 */
export const rateEnds = ({ known }: OwnRate): { readonly low: number; readonly high: number } => ({
  low: betaQuantile(0.025, known),
  high: betaQuantile(0.975, known),
})

export type OwnConception = Readonly<Record<ServiceClass, OwnRate>>

/**
 * Conception rates by class of service. Seasons differ, so that the weight of all that is known is capped: many
 * services move the mean, but never make it surer than the cap.
 *
 * @param results counts by class; a class that is missing has none
 * @returns for each class what is known and its mean
 * @example ownConception(defaultRates, { cowConventional: { held: 30, failed: 20 } }).cowConventional.mean // 0.575
 */
export function ownConception(
  rates: Rates,
  results: Readonly<Partial<Record<ServiceClass, ServiceResults>>>,
): OwnConception {
  const entries = serviceClasses.map((name): [ServiceClass, OwnRate] => {
    const { held, failed } = results[name] ?? { held: 0, failed: 0 }
    const prior = { mean: rates.conception[name], weight: rates.priorWeight }
    const known = posterior(prior, { successes: held, failures: failed }, rates.weightCap)
    return [name, { held, failed, known, mean: betaMean(known) }]
  })
  return Object.fromEntries(entries) as Record<ServiceClass, OwnRate>
}

/** Share of plain cycles that end on days 15-29. */
const seenWithinWindow = 0.98

/**
 * Chance that a heat is seen, from heats that were seen and not served: seen again on days 15-29 or not. Returns after
 * a service say nothing here, for those that held never come.
 *
 * @param again heats seen again on days 15-29, @param notAgain heats that were not
 * @returns 0 to 1, the mean of what is known
 * @example ownHeatSeen(defaultRates, { again: 0, notAgain: 0 }) // 0.9
 */
export function ownHeatSeen(
  rates: Rates,
  counted: { readonly again: number; readonly notAgain: number },
): number {
  const heats = counted.again + counted.notAgain
  const seen = Math.min(heats, counted.again / seenWithinWindow)
  const prior = { mean: rates.heatSeen, weight: rates.priorWeight }
  return betaMean(posterior(prior, { successes: seen, failures: heats - seen }))
}

/**
 * The rates with the herd's own results in them.
 *
 * @example withOwnResults(defaultRates, ownConception(defaultRates, {}), 0.85).heatSeen // 0.85
 */
export const withOwnResults = (rates: Rates, own: OwnConception, heatSeen: number): Rates => ({
  ...rates,
  heatSeen,
  conception: Object.fromEntries(serviceClasses.map((name) => [name, own[name].mean])) as Record<
    ServiceClass,
    number
  >,
})
