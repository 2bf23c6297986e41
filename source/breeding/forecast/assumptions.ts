/** What a forecast rests on, as codes with the numbers that matter; the words are made at the edge. */
import type { Rates } from '../chances/rates.ts'
import type { Policy } from '../policy.ts'
import type { BlockForecast } from './block.ts'

const assumptionCodes = [
  'conception-own',
  'conception-guessed',
  'heat-seen-own',
  'heat-seen-guessed',
  'cycle',
  'late-returns',
  'losses',
  'first-heats',
  'heats-served',
  'straws-last',
  'bulls-on-hand',
  'bulls-as-needed',
  'no-bull',
  'nobody-comes-or-goes',
  'band',
] as const
export type AssumptionCode = (typeof assumptionCodes)[number]

export interface Assumption {
  readonly code: AssumptionCode
  /** Shares 0 to 1, days and counts, by name. */
  readonly values: Readonly<Record<string, number>>
}

/**
 * The assumptions of a forecast, in the order that they are told.
 *
 * @param rates that it was made with, @param policy how often and how soon an animal is served again
 * @example assumptionsOf(forecast, rates, book.policy)[0] // { code: 'conception-own', values: { rate: 0.567, services: 302 } }
 */
export function assumptionsOf(
  forecast: Pick<BlockForecast, 'own' | 'bulls' | 'animals' | 'lastAiDay' | 'lastBullDay'>,
  rates: Rates,
  policy: Pick<Policy, 'chances' | 'watchFrom'>,
): readonly Assumption[] {
  const { chances, watchFrom } = policy
  const { own, bulls, animals } = forecast
  const { held, failed, mean } = own.conception.cowConventional
  const services = held + failed
  const heats = own.heats.again + own.heats.notAgain
  const { cycle, lateReturn, bullFinds, openPerBull } = rates
  const [early] = rates.losses
  return [
    services > 0
      ? { code: 'conception-own', values: { rate: mean, services } }
      : { code: 'conception-guessed', values: { rate: mean } },
    heats > 0
      ? { code: 'heat-seen-own', values: { rate: own.heatSeen, heats } }
      : { code: 'heat-seen-guessed', values: { rate: own.heatSeen } },
    { code: 'cycle', values: { days: cycle.mean, young: cycle.meanYoung } },
    { code: 'late-returns', values: { share: lateReturn.share } },
    { code: 'losses', values: { share: early?.lost ?? 0, by: early?.to ?? 0 } },
    { code: 'first-heats', values: {} },
    { code: 'heats-served', values: { chances, from: watchFrom } },
    { code: 'straws-last', values: {} },
    ...withBull(forecast.lastBullDay > forecast.lastAiDay, bulls, { finds: bullFinds, openPerBull }),
    { code: 'nobody-comes-or-goes', values: { animals } },
    { code: 'band', values: { holds: 8, of: 10 } },
  ]
}

function withBull(
  has: boolean,
  bulls: number | undefined,
  values: { readonly finds: number; readonly openPerBull: number },
): Assumption[] {
  if (!has) return [{ code: 'no-bull', values: {} }]
  return bulls === undefined
    ? [{ code: 'bulls-as-needed', values }]
    : [{ code: 'bulls-on-hand', values: { ...values, bulls } }]
}
