/**
 * What if: the same forecast with one thing changed.
 */
import type { OwnConception, OwnRate } from '../chances/own-results.ts'
import { type Rates, type ServiceClass, serviceClasses } from '../chances/rates.ts'
import type { SeasonDays } from './outlook.ts'

/** What may be changed; absent stays. */
export interface Change {
  /** Weeks of AI more (or, below 0, fewer); the bull weeks give or take them, his last day stays. */
  readonly aiWeeks?: number
  /** Chance that a heat is seen, 0 to 1. */
  readonly heatSeen?: number
  /** Conception of cows to conventional straws, 0 to 1; the other classes move in proportion. */
  readonly cowConception?: number
  /** Working bulls. */
  readonly bulls?: number
}

/**
 * The season with more or fewer weeks of AI. Never beyond the bull's last day.
 *
 * @example changedSeason({ ...season, lastAiDay: 41, lastBullDay: 62 }, { aiWeeks: 2 }).lastAiDay // 55
 */
export const changedSeason = (season: SeasonDays, { aiWeeks = 0 }: Change): SeasonDays => ({
  ...season,
  lastAiDay: Math.max(-1, Math.min(season.lastBullDay, season.lastAiDay + 7 * aiWeeks)),
})

/** The rates with another chance that a heat is seen. */
export const changedRates = (rates: Rates, { heatSeen = rates.heatSeen }: Change): Rates => ({
  ...rates,
  heatSeen,
})

/** Highest conception rate that a change may lead to. */
const highest = 0.95

/**
 * What is known of the conception rates, moved so that cows to conventional straws have the wanted mean. It stays as
 * sure as it was.
 *
 * @example changedConception(ownConception(defaultRates, {}), { cowConception: 0.5 }).natural.mean // 0.5
 */
export function changedConception(own: OwnConception, { cowConception }: Change): OwnConception {
  if (cowConception === undefined) return own
  const factor = cowConception / own.cowConventional.mean
  const moved = (rate: OwnRate): OwnRate => {
    const mean = Math.min(highest, rate.mean * factor)
    const weight = rate.known.alpha + rate.known.beta
    return { ...rate, mean, known: { alpha: mean * weight, beta: (1 - mean) * weight } }
  }
  return Object.fromEntries(serviceClasses.map((name) => [name, moved(own[name])])) as Record<
    ServiceClass,
    OwnRate
  >
}

/** What the changes are measured from. */
interface Plan {
  /** Season day of the morning, and last season days of AI and of the bull. */
  readonly s: number
  readonly aiEnd: number
  readonly bullEnd: number
  readonly heatSeen: number
  readonly cowConception: number
  /** Working bulls reckoned with. */
  readonly bulls: number
}

const bounded = (share: number): number => Math.min(0.95, Math.max(0.05, Math.round(share * 100) / 100))

/**
 * The changes worth a look beside today's plan: AI one or two weeks longer or shorter, a tenth of the heats seen more
 * or less, five in a hundred more or fewer services holding, one bull more or fewer. What is over is left out.
 *
 * @example changesWorthALook({ s: 27, aiEnd: 41, bullEnd: 62, heatSeen: 0.9, cowConception: 0.55, bulls: 2 })[0]
 *   // { aiWeeks: -1 }
 */
export function changesWorthALook(plan: Plan): readonly Change[] {
  const { s, aiEnd, bullEnd, heatSeen, cowConception, bulls } = plan
  const weeks = [-2, -1, 1, 2].filter((aiWeeks) => {
    const end = aiEnd + 7 * aiWeeks
    return s <= aiEnd && end >= s - 1 && end <= bullEnd && end >= 0
  })
  const beforeAiEnds = s <= aiEnd
  return [
    ...weeks.map((aiWeeks) => ({ aiWeeks })),
    ...(beforeAiEnds ? [-0.1, 0.1].map((more) => ({ heatSeen: bounded(heatSeen + more) })) : []),
    ...(s <= bullEnd ? [-0.05, 0.05].map((more) => ({ cowConception: bounded(cowConception + more) })) : []),
    ...(s <= bullEnd && bullEnd > aiEnd
      ? [-1, 1].flatMap((more) => (bulls + more < 0 ? [] : [{ bulls: bulls + more }]))
      : []),
  ]
}
