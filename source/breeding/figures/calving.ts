/**
 * Calving: its pattern before the season, and the days from it to the first service.
 */
import type { HerdBook } from '../book.ts'
import { type Day, plusDays, plusYears } from '../day.ts'
import { dayOfSeason, type Season } from '../season.ts'
import type { Member } from './cohort.ts'
import { type Figure, figureOf } from './figure.ts'

export interface CalvingFigures {
  /** Planned start of the calving before this season. */
  readonly plannedStart: Day
  /** Calved by day 21 and by day 42 of calving, of the cows of the cohort that calved in it or are still to. */
  readonly byDay21: Figure
  readonly byDay42: Figure
}

/** Calvings longer before the planned start belong to another time. */
const EARLIEST = 42

/**
 * Pattern of the calving that this season follows.
 *
 * @source Irish Independent, calving targets, 2011: half calved in three weeks; Teagasc, Breeding management, 2021: 90 %
 *   in six
 * @example calvingFigures(members, book, season).byDay21.percent // 57.9
 */
export function calvingFigures(members: readonly Member[], book: HerdBook, season: Season): CalvingFigures {
  const plannedStart = plusYears(plusDays(season.matingStart, book.policy.defaultGestation), -1)
  const last = dayOfSeason(season, season.bullEnd)
  const calved = members.flatMap(({ now, then }) => {
    const next = now.calvings.find(({ day }) => day >= plannedStart - EARLIEST && day <= last)?.day
    if (next !== undefined) return [next]
    return then.due === undefined ? [] : [Number.POSITIVE_INFINITY]
  })
  const by = (day: number, target: number, source: string): Figure => {
    const end = plannedStart + day - 1
    const waiting = calved.filter((one) => one === Number.POSITIVE_INFINITY).length
    return figureOf(calved.filter((one) => one <= end).length, calved.length, {
      unknown: waiting,
      target,
      source,
    })
  }
  return {
    plannedStart,
    byDay21: by(21, 50, 'Irish Independent, calving targets, 2011'),
    byDay42: by(42, 90, 'Teagasc, Breeding management, 2021'),
  }
}

export interface DaysFigure {
  readonly animals: number
  readonly mean: number | undefined
  readonly median: number | undefined
}

/**
 * Days from calving to the first AI service of the season, of the cows that had one.
 *
 * @example calvingToFirstService(members).median // 71
 */
export function calvingToFirstService(members: readonly Member[]): DaysFigure {
  const days = members
    .flatMap(({ now, services }) => {
      const first = services.find(({ service }) => service.ai)?.service
      const calved = now.calvings.findLast(({ day }) => first !== undefined && day <= first.day)?.day
      return first === undefined || calved === undefined ? [] : [first.day - calved]
    })
    .sort((a, b) => a - b)
  const middle = (days.length - 1) / 2
  const [low, high] = [days[Math.floor(middle)], days[Math.ceil(middle)]]
  return {
    animals: days.length,
    mean: days.length === 0 ? undefined : days.reduce((a, b) => a + b, 0) / days.length,
    median: low === undefined || high === undefined ? undefined : (low + high) / 2,
  }
}
