/** Whether the straws will last, over all blocks whose AI is on or begins soon. */
import { type Day, plusDays } from '../breeding/day.ts'
import type { BlockForecast } from '../breeding/forecast/block.ts'
import { dayOfSeason, type Season } from '../breeding/season.ts'
import { type Supply, supplyOf } from '../breeding/straws/supply.ts'
import type { Desk } from './desk.ts'
import { flaskOn } from './flask.ts'
import { knownView, seasonsOfStraws } from './reckoning.ts'

export interface KindAhead extends Supply {
  /** Straws still to be used: the middle, and the ends that hold it at least 8 times in 10; blocks added up. */
  readonly likely: number
  readonly low: number
  readonly high: number
  /** The day on which the straws run out at the expected pace; undefined where they last. */
  readonly outOn: Day | undefined
}

export type SupplyAhead =
  /** Being reckoned; what is left is known. */
  | { readonly state: 'reckoning'; readonly kinds: readonly Supply[] }
  /** No AI is on or begins soon. */
  | { readonly state: 'no-ai'; readonly kinds: readonly Supply[] }
  | {
      readonly state: 'known'
      readonly kinds: readonly KindAhead[]
      /** Last day of AI of the blocks. */
      readonly until: Day
      /** Something was recorded since. */
      readonly stale: boolean
    }

/**
 * What is left of each kind and what will be needed.
 *
 * @example supplyAhead(desk).kinds[0]?.missing // 0
 */
export function supplyAhead(desk: Desk): SupplyAhead {
  const { day } = desk.page.list
  const { stock } = flaskOn(desk.book, day)
  const seasons = seasonsOfStraws(desk)
  if (seasons.length === 0) return { state: 'no-ai', kinds: supplyOf(stock, () => undefined) }
  const known = seasons.map((season) => knownView(desk, season, {}))
  const forecasts = known.flatMap((one) => one?.view.forecast ?? [])
  if (forecasts.length < seasons.length)
    return { state: 'reckoning', kinds: supplyOf(stock, () => undefined) }
  const sum = (of: (forecast: BlockForecast) => number): number =>
    forecasts.reduce((all, forecast) => all + of(forecast), 0)
  const until = lastAiDay(seasons)
  const from = Math.max(day, Math.min(...seasons.map(({ matingStart }) => matingStart))) as Day
  const kinds = supplyOf(stock, (straw) => sum(({ straws }) => straws[straw].high)).map(
    (supply): KindAhead => {
      const expected = sum(({ straws }) => straws[supply.straw].expected)
      return {
        ...supply,
        likely: sum(({ straws }) => straws[supply.straw].middle),
        low: sum(({ straws }) => straws[supply.straw].low),
        high: sum(({ straws }) => straws[supply.straw].high),
        outOn: outOn(supply.left, expected, from, until),
      }
    },
  )
  return { state: 'known', kinds, until, stale: known.some((one) => one?.stale === true) }
}

const lastAiDay = (seasons: readonly Season[]): Day =>
  Math.max(...seasons.map((season) => dayOfSeason(season, season.aiEnd))) as Day

/** At so many straws a day, evenly from a day to the last of AI. */
function outOn(left: number, expected: number, day: Day, until: Day): Day | undefined {
  const days = until - day + 1
  if (expected <= left) return undefined
  return plusDays(day, Math.floor((left * days) / expected))
}
