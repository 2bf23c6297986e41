/**
 * The season ahead of a block, straight from the herd book.
 */
import { bullsOnHand } from '../ahead/turn-out.ts'
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import type { OwnRates } from '../figures/own-rates.ts'
import { ratesOfHerd } from '../rates-of-herd.ts'
import { dayOfSeason, type Season } from '../season.ts'
import type { Standing } from '../standing.ts'
import { finished, type Steps } from '../steps.ts'
import { bullsNeeded } from './bulls.ts'
import { type CalvingWeek, calvingPattern } from './calving-pattern.ts'
import { conceptionPoints } from './conception-points.ts'
import { forecastHerdInSteps, type HerdForecast } from './herd.ts'
import { outlooksOf, seasonDaysOf } from './outlook-of.ts'
import { type Change, changedConception, changedRates, changedSeason } from './what-if.ts'

export interface BlockForecast extends HerdForecast {
  /** Last season day of AI that it was made for. */
  readonly lastAiDay: number
  /** Last season day with the bull; without bull weeks the same. */
  readonly lastBullDay: number
  /** What it rests on. */
  readonly own: OwnRates
  /** Working bulls it was made for; undefined: as many as are needed. */
  readonly bulls: number | undefined
  /** Bulls needed at turn-out for the high end of the open; 0 without bull weeks. */
  readonly bullsNeeded: number
  /** The same if they are young ones, under two years. */
  readonly youngBullsNeeded: number
  /** Expected calvings by week from the planned start of calving. */
  readonly calvings: readonly CalvingWeek[]
}

/**
 * The season ahead of a block on the morning of a day.
 *
 * @param standings of all animals on that day, those that left too (their services count for the own rates)
 * @param season a season of the block, on or to come
 * @param change what if: another number of AI weeks, watch, conception or number of bulls
 * @example forecastBlock(book, standings, season, today).inCalfSixWeeks // { expected: 117.8, low: 107, middle: 118, high: 128 }
 */
export const forecastBlock = (
  book: HerdBook,
  standings: readonly Standing[],
  season: Season,
  today: Day,
  change: Change = {},
): BlockForecast => finished(forecastBlockInSteps(book, standings, season, today, change))

/** The same in small steps. */
export function* forecastBlockInSteps(
  book: HerdBook,
  standings: readonly Standing[],
  season: Season,
  today: Day,
  change: Change,
): Steps<BlockForecast> {
  const { policy } = book
  const { own, rates: known } = ratesOfHerd(book, today, standings)
  const rates = changedRates(known, change)
  yield
  const days = changedSeason(seasonDaysOf(season, today, policy), change)
  const outlooks = outlooksOf(book, standings, { ...season, aiEnd: days.lastAiDay }, today, rates)
  const onHand = bullsOnHand(book, dayOfSeason(season, days.lastAiDay + 1)).length
  const bulls = change.bulls ?? (onHand > 0 ? onHand : undefined)
  yield
  const forecast = yield* forecastHerdInSteps({
    animals: outlooks.map(({ outlook }) => outlook),
    season: days,
    rates,
    conception: conceptionPoints(changedConception(own.conception, change)),
    ...(bulls === undefined ? {} : { bulls }),
  })
  const withBull = days.lastBullDay > days.lastAiDay
  const needed = (openPerBull: number): number =>
    withBull
      ? bullsNeeded({ open: forecast.openAtTurnOut.high, openPerBull, halfRest: policy.bullsRotate })
      : 0
  return {
    ...forecast,
    lastAiDay: days.lastAiDay,
    lastBullDay: days.lastBullDay,
    own,
    bulls,
    bullsNeeded: needed(policy.openPerBull),
    youngBullsNeeded: needed(policy.openPerYoungBull),
    calvings: calvingPattern(forecast.due, policy.defaultGestation),
  }
}
