import type { HerdBook } from '../book.ts'
import { calvedAtLeast } from '../questions.ts'
import { dayOfSeason, type Season, seasonDay } from '../season.ts'
import { standingOn } from '../standing.ts'
import type { Member } from './cohort.ts'
import { type Figure, figureOf } from './figure.ts'

const THREE_WEEKS = 21
/** Last season day of the first three weeks of AI. */
export const LAST_DAY = THREE_WEEKS - 1
/** Percent served in three weeks to aim for. */
const TARGET = 90

/** Served by the evening of a season day. */
interface PaceDay {
  readonly day: number
  readonly served: number
  /** Percent of the cohort, and what to aim for on the day. */
  readonly percent: number | undefined
  readonly target: number
}

export interface Submission {
  /** Served in three weeks, of the cohort. */
  readonly all: Figure
  /** The same, of those calved 42 days or more by season day 20; maidens among them. */
  readonly ready: Figure
  /** The days of the three weeks that are over. */
  readonly pace: readonly PaceDay[]
}

/** Percent to have served by the evening of a season day: 30, 60 and 90 after one, two and three weeks. */
export const paceTarget = (day: number): number => (TARGET * Math.min(THREE_WEEKS, day + 1)) / THREE_WEEKS

/** Season day of her first AI service from the mating start on. */
export const firstServed = ({ services }: Member, season: Season): number | undefined =>
  services.flatMap(({ service }) => (service.ai ? [seasonDay(season, service.day)] : [])).find((s) => s >= 0)

/** Whether she has calved long enough ago by the end of the three weeks; maidens have. */
export function readyInTime({ now, animal }: Member, book: HerdBook, season: Season): boolean {
  const last = dayOfSeason(season, LAST_DAY)
  const then = now.today > last ? standingOn(book, animal, last) : now
  return calvedAtLeast(then, book.policy.calvedToServe, last)
}

/**
 * Submission in the first three weeks: the share served, and its pace.
 *
 * @source M. Kinston, Irish Independent, 24 May 2011; agriland.ie, breeding season: monitoring submission rates; agriland.ie
 *   (Teagasc), achieving your breeding targets for 2021
 * @example submission(members, book, season, 30).all.percent // 84.2
 */
export function submission(
  members: readonly Member[],
  book: HerdBook,
  season: Season,
  s: number,
): Submission {
  const source = 'agriland.ie (Teagasc), achieving your breeding targets for 2021'
  const served = (group: readonly Member[], by: number): number =>
    group.filter((member) => (firstServed(member, season) ?? Number.POSITIVE_INFINITY) <= by).length
  const ready = members.filter((member) => readyInTime(member, book, season))
  const over = Math.max(0, Math.min(THREE_WEEKS, s))
  const pace = Array.from({ length: over }, (_, day): PaceDay => {
    const count = served(members, day)
    const percent = members.length === 0 ? undefined : (100 * count) / members.length
    return { day, served: count, percent, target: paceTarget(day) }
  })
  return {
    all: figureOf(served(members, LAST_DAY), members.length, { target: TARGET, source }),
    ready: figureOf(served(ready, LAST_DAY), ready.length, { target: TARGET, source }),
    pace,
  }
}
