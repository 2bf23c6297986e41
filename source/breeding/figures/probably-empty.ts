/**
 * Who of a season is more likely empty than in calf, and why.
 */
import { asUndecided, type Decided, decidedOf } from '../ahead/decided.ts'
import { chanceInCalf } from '../animal-chances.ts'
import type { HerdBook } from '../book.ts'
import type { Rates } from '../chances/rates.ts'
import { checkedEmpty, daysCalved } from '../questions.ts'
import { PRE_MATING, type Season, seasonDay } from '../season.ts'
import type { Standing } from '../standing.ts'
import type { Member } from './cohort.ts'

export const emptyReasons = ['checked-empty', 'came-back', 'doubtful', 'not-served', 'with-bull'] as const
/** `doubtful`: unsure at the last check, or by her days. `with-bull`: not in calf by AI, and a bull was with her since. */
export type EmptyReason = (typeof emptyReasons)[number]

export interface ProbablyEmpty {
  readonly standing: Standing
  readonly reason: EmptyReason
  /** Chance that she is in calf this morning; undefined where she was not served, or a bull was with her. */
  readonly chance: number | undefined
  /** Days since her last service of the season; where there is none, since she calved. */
  readonly days: number | undefined
  /** What was decided of her; out of the season by it she stays a week. */
  readonly decided: Decided | undefined
}

/** Days that she stays once it was decided that she goes. */
const STAYS = 7

/** Less likely in calf than not. */
const HALF = 0.5

function reasonOf(
  standing: Standing,
  season: Season,
  chance: number | undefined,
  watchFrom: number,
): EmptyReason | undefined {
  const service = standing.lastService
  const inSeason = service !== undefined && seasonDay(season, service.day) >= PRE_MATING
  const bull = standing.lastWithBull
  const withBull = bull !== undefined && seasonDay(season, bull) > season.aiEnd
  if (!inSeason) return withBull ? 'with-bull' : 'not-served'
  if (chance === undefined) return 'with-bull'
  if (chance === 0) return checkedEmpty(standing) ? 'checked-empty' : 'came-back'
  if (standing.lastCheck?.fact.result === 'unsure') return 'doubtful'
  // Sooner nobody can know: a low chance is only that of her straw.
  return chance < HALF && standing.today - service.day >= watchFrom ? 'doubtful' : undefined
}

/**
 * Members of the cohort that are here, may be bred, and are less likely in calf than not; those of whom nothing is
 * known but that a bull was with them are named apart.
 *
 * @param rates of the herd on the day
 * @returns by reason, within it those that wait longest first
 * @example probablyEmpty(members, book, rates, season)[0]?.reason // 'checked-empty'
 */
export function probablyEmpty(
  members: readonly Member[],
  book: HerdBook,
  rates: Rates,
  season: Season,
): readonly ProbablyEmpty[] {
  return members
    .map(({ now }) => {
      const decided = decidedOf(now.animal, season, now.today)
      const lately = decided !== undefined && now.today - decided.day < STAYS
      return { decided, standing: lately ? asUndecided(now, decided, book, season) : now }
    })
    .filter(({ standing: now }) => now.inHerd && !now.barred && !now.inCalf && now.block === season.block)
    .flatMap(({ standing, decided }): ProbablyEmpty[] => {
      const chance = chanceInCalf(standing, book, rates)
      const reason = reasonOf(standing, season, chance, book.policy.watchFrom)
      if (reason === undefined) return []
      const alone = reason === 'not-served' || reason === 'with-bull'
      const since = standing.lastService?.day
      const days = alone || since === undefined ? daysCalved(standing) : standing.today - since
      return [{ standing, reason, chance: alone ? undefined : chance, days, decided }]
    })
    .sort(
      (a, b) =>
        emptyReasons.indexOf(a.reason) - emptyReasons.indexOf(b.reason) || (b.days ?? 0) - (a.days ?? 0),
    )
}
