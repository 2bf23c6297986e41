/**
 * In calf by six weeks, empty at the end, and the curve between.
 */

import { type Season, SIX_WEEKS } from '../season.ts'
import { kaplanMeier, type SurvivalStep } from '../statistics/kaplan-meier.ts'
import { type Figure, figureOf } from './figure.ts'
import type { Outcome } from './outcome.ts'

export interface InCalf {
  /** Conceived in the first six weeks and still in calf, of the cohort. */
  readonly sixWeeks: Figure
  /** Found empty after the season, of the cohort. */
  readonly empty: Figure
  /** In calf at all, of the cohort. */
  readonly all: Figure
  /** Left before a result; never counted as pregnant, and not as unknown. */
  readonly leftBefore: number
  /**
   * Share in calf after each season day on which one conceived: the rest of a Kaplan-Meier curve; leaving censors. Only
   * as far as it is known of nearly all: pregnancies are found before empties, and a longer curve would flatter.
   */
  readonly curve: readonly {
    readonly day: number
    readonly percent: number
    readonly standardError: number
  }[]
  /** Last season day of the curve; it is known of nearly all whether they conceived by then. Below 0: of too few. */
  readonly knownTo: number
}

/** A curve goes on while no more than this share of the cohort is unknown. */
const UNKNOWN_AT_MOST = 0.05

/** The last season day up to which it is known of nearly all whether they conceived. */
function knownTo(outcomes: readonly Outcome[], season: Season): number {
  const days = outcomes.flatMap((one) => (one.kind === 'unknown' ? [one.day] : [])).sort((a, b) => a - b)
  const first = days[Math.floor(UNKNOWN_AT_MOST * outcomes.length)]
  return first === undefined ? season.bullEnd : Math.min(first - 1, season.bullEnd)
}

/** An outcome that says nothing yet on conceptions up to a day. */
export const openAfter = (outcome: Outcome, day: number): boolean =>
  outcome.kind === 'unknown' && outcome.day <= day

function curveOf(outcomes: readonly Outcome[], season: Season): readonly SurvivalStep[] {
  return kaplanMeier(
    outcomes.map((outcome) => ({
      time: Math.max(0, outcome.kind === 'empty' ? season.bullEnd : outcome.day),
      happened: outcome.kind === 'in-calf',
    })),
  )
}

/**
 * In calf, empty and not known, of a cohort.
 *
 * @param outcomes one an animal
 * @source six weeks: Farming Connect (Welsh Government), block-calving project, 78 %; the same project's 10 % empty is of
 *   twelve weeks (nine weeks at 90 % served and 50-60 % conceiving leave 10-17 %, our arithmetic)
 * @example inCalfFigures(outcomes, season).sixWeeks.percent // 71.3
 */
export function inCalfFigures(outcomes: readonly Outcome[], season: Season): InCalf {
  const source = 'Farming Connect (Welsh Government), block-calving project'
  const count = (test: (outcome: Outcome) => boolean): number => outcomes.filter(test).length
  const last = knownTo(outcomes, season)
  const unknown = count(({ kind }) => kind === 'unknown')
  const inCalfBy = (last: number): number => count((one) => one.kind === 'in-calf' && one.day <= last)
  return {
    sixWeeks: figureOf(inCalfBy(SIX_WEEKS), outcomes.length, {
      unknown: count((one) => openAfter(one, SIX_WEEKS)),
      target: 78,
      source,
    }),
    empty: figureOf(
      count(({ kind }) => kind === 'empty'),
      outcomes.length,
      { unknown, target: 10, source },
    ),
    all: figureOf(inCalfBy(season.bullEnd), outcomes.length, { unknown }),
    leftBefore: count(({ kind }) => kind === 'left'),
    curve: curveOf(outcomes, season)
      .filter(({ time }) => time <= last)
      .map(({ time, survival, standardError }) => ({
        day: time,
        percent: 100 * (1 - survival),
        standardError: 100 * standardError,
      })),
    knownTo: last,
  }
}
