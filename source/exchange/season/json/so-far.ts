/** What has happened in a season, as JSON. */

import { rateEnds } from '../../../breeding/chances/own-results.ts'
import { serviceClasses } from '../../../breeding/chances/rates.ts'
import { dayIso } from '../../../breeding/day.ts'
import { groupings } from '../../../breeding/figures/conception.ts'
import type { SeasonFigures } from '../../../breeding/figures/season-figures.ts'
import type { SeasonView } from '../../../breeding/figures/season-view.ts'
import { figureNames } from '../../../words/figures.ts'
import { curvePoints } from '../curve.ts'
import { figuresByName } from '../figures.ts'
import { figureJson, rounded } from './numbers.ts'

/** The figures of one season, this one or an earlier one. */
export function figuresJson(figures: SeasonFigures) {
  const byName = figuresByName(figures)
  return {
    cohort: figures.cohort,
    left_before_result: figures.inCalf.leftBefore,
    figures: Object.fromEntries(figureNames.map((name) => [name, figureJson(byName[name])])),
    services_per_pregnancy: {
      services: figures.servicesPerPregnancy.services,
      pregnancies: figures.servicesPerPregnancy.pregnancies,
      ratio: rounded(figures.servicesPerPregnancy.ratio),
    },
    calving_to_first_service: {
      animals: figures.calvingToFirstService.animals,
      mean: rounded(figures.calvingToFirstService.mean),
      median: rounded(figures.calvingToFirstService.median),
    },
  }
}

/** What is told of this season alone: its pace, services that held, returns, the curve. */
export const courseJson = (figures: SeasonFigures) => ({
  pace: figures.submission.pace.map(({ day, served, percent, target }) => ({
    day,
    served,
    percent: rounded(percent),
    target: rounded(target),
  })),
  conception_by: Object.fromEntries(
    groupings.map((grouping) => [
      jsonGrouping[grouping],
      figures.conceptionBy[grouping].map(({ key, figure }) => ({
        key: key ?? null,
        ...figureJson(figure),
      })),
    ]),
  ),
  return_intervals: {
    counts: figures.returnIntervals.counts,
    all: figures.returnIntervals.all,
    ratio: rounded(figures.returnIntervals.ratio),
  },
  in_calf_curve: {
    known_to: figures.inCalf.knownTo,
    steps: curvePoints(figures).map(({ day, percent, low, high }) => ({
      day,
      percent: rounded(percent),
      low: rounded(low),
      high: rounded(high),
    })),
  },
})

/** The calving before the season, by week from its planned start. */
export const calvingPatternJson = ({ calving }: SeasonFigures) => ({
  planned_start: dayIso(calving.plannedStart),
  weeks: calving.weeks.map(({ week, calved, expected, cumulative }) => ({
    week,
    calved,
    expected: rounded(expected),
    cumulative: rounded(cumulative),
  })),
})

/** The rates of the farm, each with what it was counted from. */
export function ratesJson({ own }: SeasonView['rates']) {
  return {
    conception: serviceClasses.map((name) => {
      const rate = own.conception[name]
      const { low, high } = rateEnds(rate)
      return {
        class: name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`),
        mean: rounded(rate.mean, 4),
        low: rounded(low, 4),
        high: rounded(high, 4),
        held: rate.held,
        failed: rate.failed,
        unknown: own.services[name].unknown,
      }
    }),
    heat_seen: {
      mean: rounded(own.heatSeen, 4),
      seen_again: own.heats.again,
      not_seen_again: own.heats.notAgain,
    },
  }
}

/** Groupings by the names they have in the output. */
const jsonGrouping = {
  order: 'order',
  sire: 'sire',
  straw: 'kind',
  inseminator: 'inseminator',
  parity: 'parity',
  session: 'hour',
} as const
