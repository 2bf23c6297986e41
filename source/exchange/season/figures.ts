/** The shares of a season by the names they have in the JSON output. */
import type { Figure } from '../../breeding/figures/figure.ts'
import type { SeasonFigures } from '../../breeding/figures/season-figures.ts'
import type { FigureName } from '../../words/figures.ts'

/**
 * Every share of a season by name.
 *
 * @example figuresByName(view.figures).in_calf_six_weeks.percent // 57.4
 */
export const figuresByName = (figures: SeasonFigures): Readonly<Record<FigureName, Figure>> => ({
  submission_21_days: figures.submission.all,
  submission_21_days_ready: figures.submission.ready,
  heats_seen_24_days: figures.heatDetection,
  conception: figures.conception,
  non_return_24_days: figures.nonReturn24,
  non_return_56_days: figures.nonReturn56,
  returns_18_24_days: figures.returnIntervals.regular,
  in_calf_six_weeks: figures.inCalf.sixWeeks,
  in_calf: figures.inCalf.all,
  not_in_calf: figures.inCalf.empty,
  calved_by_day_21: figures.calving.byDay21,
  calved_by_day_42: figures.calving.byDay42,
})
