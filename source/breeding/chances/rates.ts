/**
 * The rates that every chance and forecast rests on. Each is a default that the herd's policy or its own results may
 * replace; the rules take them as a parameter and never reach for the defaults by themselves.
 */
import type { StrawKind } from '../facts.ts'

/** Services that share one conception rate. Beef straws are conventional. */
export type ServiceClass = 'cowConventional' | 'cowSexed' | 'maidenConventional' | 'maidenSexed' | 'natural'

export const serviceClasses: readonly ServiceClass[] = [
  'cowConventional',
  'cowSexed',
  'maidenConventional',
  'maidenSexed',
  'natural',
]

/** A normal curve cut to whole days from..to. All in days. */
interface DayCurve {
  readonly mean: number
  readonly sd: number
  readonly from: number
  readonly to: number
}

/** A share of the pregnancies alive on day `from` is lost by day `to`, evenly by the day. */
export interface LossPeriod {
  readonly from: number
  readonly to: number
  /** 0 to 1. */
  readonly lost: number
}

export interface Rates {
  /** Days between heats of an open animal; first-calvers and maidens have a mean of their own. */
  readonly cycle: DayCurve & { readonly meanYoung: number }
  /** Failed services whose embryo died late, and when the animal then comes again. `share` 0 to 1. */
  readonly lateReturn: DayCurve & { readonly share: number }
  /** Chance that a heat of an open animal is seen on a watched day, 0 to 1. */
  readonly heatSeen: number
  /** Chance that a service holds, 0 to 1. */
  readonly conception: Readonly<Record<ServiceClass, number>>
  /** Weight of these guesses against own results, and the greatest weight of both together; in services. */
  readonly priorWeight: number
  readonly weightCap: number
  /** Losses in order, without gaps. */
  readonly losses: readonly LossPeriod[]
  /** Days from calving to the first heat: most cows and the slow ones. `share` of the curve, 0 to 1. */
  readonly firstHeat: readonly (DayCurve & { readonly share: number })[]
  /** Chance that the bull finds an animal in heat, 0 to 1, and the number of open animals one bull can manage. */
  readonly bullFinds: number
  readonly openPerBull: number
  /** Share of heifers among the calves born to sexed and to other straws, 0 to 1. */
  readonly femaleSexed: number
  readonly femaleOther: number
}

/**
 * The defaults. Cycle: Remnant et al., Variation in the inter-service intervals of UK dairy cows, J Dairy Sci 98,
 * 2015 (mode 22 days, first-calvers 21), with 70 % of true cycles within 18-24 days (Survey of reproductive performance
 * in dairy herds: patterns of progesterone in milk, Animal Science). Heats seen: Nation et al., Aust Vet J 81, 2003.
 * Sexed: Maicas et al., J Dairy Sci 102, 2019. Losses: JDS Communications 4, 2023; Lopez-Gatius et al., Reprod Dom
 * Anim 39, 2004. First heats, conception by cows, maidens and bulls: common practice, no source.
 */
export const defaultRates: Rates = {
  cycle: { mean: 22, meanYoung: 21, sd: 3.2, from: 8, to: 40 },
  lateReturn: { share: 0.05, mean: 34, sd: 5, from: 22, to: 48 },
  heatSeen: 0.9,
  conception: {
    cowConventional: 0.55,
    cowSexed: 0.85 * 0.55,
    maidenConventional: 0.65,
    maidenSexed: 0.87 * 0.65,
    natural: 0.55,
  },
  priorWeight: 50,
  weightCap: 100,
  losses: [
    { from: 30, to: 60, lost: 0.1 },
    { from: 60, to: 90, lost: 0.02 },
    { from: 90, to: 280, lost: 0.03 },
  ],
  firstHeat: [
    { share: 0.9, mean: 38, sd: 12, from: 14, to: 80 },
    { share: 0.1, mean: 95, sd: 20, from: 45, to: 150 },
  ],
  bullFinds: 0.9,
  openPerBull: 30,
  femaleSexed: 0.9,
  femaleOther: 0.485,
}

/**
 * The class of a service.
 *
 * @param maiden has not calved yet
 * @param by the kind of straw, or a bull
 * @example serviceClass(true, 'sexed') // 'maidenSexed'
 */
export function serviceClass(maiden: boolean, by: StrawKind | 'natural'): ServiceClass {
  if (by === 'natural') return 'natural'
  if (by === 'sexed') return maiden ? 'maidenSexed' : 'cowSexed'
  return maiden ? 'maidenConventional' : 'cowConventional'
}
