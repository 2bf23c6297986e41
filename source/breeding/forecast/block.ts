/**
 * The season ahead of a block, straight from the herd book.
 */
import { bullsOnHand } from '../ahead/turn-out.ts'
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import { type OwnRates, ownRates } from '../figures/own-rates.ts'
import { ratesOfPolicy } from '../rates-of-policy.ts'
import { dayOfSeason, type Season } from '../season.ts'
import type { Standing } from '../standing.ts'
import { bullsNeeded } from './bulls.ts'
import { type CalvingWeek, calvingPattern } from './calving-pattern.ts'
import { conceptionPoints } from './conception-points.ts'
import { forecastHerd, type HerdForecast } from './herd.ts'
import { outlooksOf, seasonDaysOf } from './outlook-of.ts'
import { type Change, changedConception, changedRates, changedSeason } from './what-if.ts'

export interface BlockForecast extends HerdForecast {
  /** Last season day of AI that it was made for. */
  readonly lastAiDay: number
  /** What it rests on. */
  readonly own: OwnRates
  /** Working bulls it was made for; undefined: as many as are needed. */
  readonly bulls: number | undefined
  /** Bulls needed at turn-out for the high end of the open; 0 without bull weeks. */
  readonly bullsNeeded: number
  /** Expected calvings by week from the planned start of calving. */
  readonly calvings: readonly CalvingWeek[]
}

/**
 * The season ahead of a block on the morning of a day.
 *
 * @param standings of all animals on that day, those that left too (their services count for the own rates)
 * @param season a season of the block, on or to come
 * @param change what if: another number of AI weeks, watch, conception or number of bulls
 * @example forecastBlock(book, standings, season, today).inCalfByAi // { expected: 117.8, low: 107, middle: 118, high: 128 }
 */
export function forecastBlock(
  book: HerdBook,
  standings: readonly Standing[],
  season: Season,
  today: Day,
  change: Change = {},
): BlockForecast {
  const { policy } = book
  const own = ownRates(standings, book, today, ratesOfPolicy(policy))
  const rates = changedRates({ ...ratesOfPolicy(policy), heatSeen: own.heatSeen }, change)
  const days = changedSeason(seasonDaysOf(season, today, policy.chances), change)
  const outlooks = outlooksOf(book, standings, { ...season, aiEnd: days.lastAiDay }, today, rates)
  const onHand = bullsOnHand(book, dayOfSeason(season, days.lastAiDay + 1)).length
  const bulls = change.bulls ?? (onHand > 0 ? onHand : undefined)
  const forecast = forecastHerd({
    animals: outlooks.map(({ outlook }) => outlook),
    season: days,
    rates,
    conception: conceptionPoints(changedConception(own.conception, change)),
    ...(bulls === undefined ? {} : { bulls }),
  })
  const withBull = days.lastBullDay > days.lastAiDay
  const need = {
    open: forecast.openAtTurnOut.high,
    openPerBull: policy.openPerBull,
    halfRest: policy.bullsRotate,
  }
  return {
    ...forecast,
    lastAiDay: days.lastAiDay,
    own,
    bulls,
    bullsNeeded: withBull ? bullsNeeded(need) : 0,
    calvings: calvingPattern(forecast.due, policy.defaultGestation),
  }
}
