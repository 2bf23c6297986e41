/** Bulls for the bull weeks: how many, how many there are, and by when they must be sound and on the farm. */
import type { HerdBook } from '../book.ts'
import { type Day, plusDays } from '../day.ts'
import type { BlockForecast } from '../forecast/block.ts'
import { dayOfSeason, type Season } from '../season.ts'
import { ON_FARM_BEFORE, SOUNDNESS_BEFORE } from './key-dates.ts'
import { bullsOnHand } from './turn-out.ts'

export interface BullPlan {
  /** First day with the bull, and his last. */
  readonly turnOut: Day
  readonly last: Day
  /** For the high end of the animals open at turn-out; of young bulls (under two years) more are needed. */
  readonly needed: number
  readonly youngNeeded: number
  readonly onHand: number
  /** Of those on hand. */
  readonly young: number
  readonly soundnessBy: Day
  readonly onFarmBy: Day
}

/**
 * The bulls of a season.
 *
 * @returns undefined without bull weeks
 * @example bullPlan(book, season, forecast)?.needed // 3
 */
export function bullPlan(
  book: HerdBook,
  season: Season,
  forecast: Pick<BlockForecast, 'bullsNeeded' | 'youngBullsNeeded'>,
): BullPlan | undefined {
  if (season.bullEnd <= season.aiEnd) return undefined
  const turnOut = dayOfSeason(season, season.aiEnd + 1)
  const bulls = bullsOnHand(book, turnOut)
  return {
    turnOut,
    last: dayOfSeason(season, season.bullEnd),
    needed: forecast.bullsNeeded,
    youngNeeded: forecast.youngBullsNeeded,
    onHand: bulls.length,
    young: bulls.filter(({ young }) => young).length,
    soundnessBy: plusDays(turnOut, -SOUNDNESS_BEFORE),
    onFarmBy: plusDays(turnOut, -ON_FARM_BEFORE),
  }
}
