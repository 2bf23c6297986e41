/** A season as JSON, version 1: what happened so far, and what lies ahead. The version rises only when a key goes or changes its meaning. */
import type { BullPlan } from '../../breeding/ahead/bull-plan.ts'
import { isOut } from '../../breeding/ahead/decided.ts'
import type { LastChance } from '../../breeding/ahead/last-chances.ts'
import { rateEnds } from '../../breeding/chances/own-results.ts'
import { serviceClasses } from '../../breeding/chances/rates.ts'
import { calvingStartFor, type Day, dayIso } from '../../breeding/day.ts'
import { groupings } from '../../breeding/figures/conception.ts'
import type { Figure } from '../../breeding/figures/figure.ts'
import type { SeasonFigures } from '../../breeding/figures/season-figures.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import type { CountForecast } from '../../breeding/forecast/herd.ts'
import type { Change } from '../../breeding/forecast/what-if.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import { figureNames } from '../../words/season.ts'
import { curvePoints } from './curve.ts'
import { figuresByName } from './figures.ts'

export const SEASON_VERSION = 1

const iso = (day: Day | undefined): string | null => (day === undefined ? null : dayIso(day))

/** A number with so many decimals; null where there is none. */
const rounded = (value: number | undefined, decimals = 2): number | null =>
  value === undefined ? null : Math.round(value * 10 ** decimals) / 10 ** decimals

/** Chances below this are left out at both ends of a distribution. */
const SHOWN = 0.00005

const figureJson = (figure: Figure) => ({
  numerator: figure.numerator,
  denominator: figure.denominator,
  unknown: figure.unknown,
  percent: rounded(figure.percent),
  low: rounded(figure.low),
  high: rounded(figure.high),
  target: figure.target ?? null,
  source: figure.source ?? null,
})

function countJson({ middle, low, high, distribution }: CountForecast) {
  const { first, chances } = distribution
  const from = chances.findIndex((chance) => chance >= SHOWN)
  const to = chances.findLastIndex((chance) => chance >= SHOWN)
  return {
    middle,
    low,
    high,
    distribution: { first: first + from, chances: chances.slice(from, to + 1).map((one) => rounded(one, 4)) },
  }
}

/** What a forecast says of the counts. */
const countsJson = (forecast: BlockForecast) => ({
  animals: forecast.animals,
  in_calf_six_weeks: countJson(forecast.inCalfSixWeeks),
  open_at_turn_out: countJson(forecast.openAtTurnOut),
  empty_at_end: countJson(forecast.emptyAtEnd),
  straws: {
    conventional: countJson(forecast.straws.conventional),
    sexed: countJson(forecast.straws.sexed),
    beef: countJson(forecast.straws.beef),
  },
  heifer_calves: countJson(forecast.heiferCalves),
  bulls_needed: forecast.bullsNeeded,
})

const forecastJson = (forecast: BlockForecast) => ({
  ...countsJson(forecast),
  conceived_by: forecast.conceivedBy.map(({ day, middle, low, high }) => ({ day, middle, low, high })),
})

const changeJson = ({ aiWeeks, heatSeen, cowConception, bulls }: Change) => ({
  ai_weeks: aiWeeks ?? null,
  heat_seen: rounded(heatSeen, 4),
  conception: rounded(cowConception, 4),
  bulls: bulls ?? null,
})

/** The figures of one season, this one or an earlier one. */
function figuresJson(figures: SeasonFigures) {
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

const calvingPatternJson = ({ calving }: SeasonFigures) => ({
  planned_start: dayIso(calving.plannedStart),
  weeks: calving.weeks.map(({ week, calved, expected, cumulative }) => ({
    week,
    calved,
    expected: rounded(expected),
    cumulative: rounded(cumulative),
  })),
})

function nextCalvingJson(view: SeasonView) {
  const { forecast, season, book } = view
  if (forecast === undefined) return null
  return {
    planned_start: dayIso(calvingStartFor(season.matingStart, book.policy.defaultGestation)),
    weeks: forecast.calvings.map(({ week, expected, cumulative }) => ({
      week,
      expected: rounded(expected),
      cumulative: rounded(cumulative),
    })),
  }
}

const bullsJson = (bulls: BullPlan) => ({
  needed: bulls.needed,
  young_needed: bulls.youngNeeded,
  on_hand: bulls.onHand,
  young_on_hand: bulls.young,
  turn_out: dayIso(bulls.turnOut),
  last: dayIso(bulls.last),
  soundness_by: dayIso(bulls.soundnessBy),
  on_farm_by: dayIso(bulls.onFarmBy),
})

const lastChanceJson = (chance: LastChance) => ({
  animal: chance.standing.animal.number,
  reason: chance.reason,
  calves: iso(chance.calves),
  ready_from: iso(chance.readyFrom),
  last_ai: iso(chance.lastAi),
  last: iso(chance.last),
  becomes: chance.becomes,
  other_block:
    chance.otherBlock === undefined
      ? null
      : { block: chance.otherBlock.block, mating_start: dayIso(chance.otherBlock.matingStart) },
})

function ratesJson({ own }: SeasonView['rates']) {
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

/**
 * The season as a JSON value: every key is always there, null where there is nothing.
 *
 * @param changes what-if changes to reckon; without them those worth a look
 * @example seasonJson(view).figures.in_calf_six_weeks.numerator // 84
 */
export function seasonJson(view: SeasonView, changes: readonly Change[] = view.changes) {
  const { figures, forecast, bulls, season, archive } = view
  return {
    version: SEASON_VERSION,
    date: dayIso(view.today),
    block: season.block,
    phase: view.phase,
    day: view.s,
    mating_start: dayIso(season.matingStart),
    ai_ends: dayIso(dayOfSeason(season, season.aiEnd)),
    bull_out: season.bullEnd > season.aiEnd ? dayIso(dayOfSeason(season, season.bullEnd)) : null,
    ...figuresJson(figures),
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
    calving_pattern: calvingPatternJson(figures),
    next_calving_pattern: nextCalvingJson(view),
    rates: ratesJson(view.rates),
    forecast: forecast === undefined ? null : forecastJson(forecast),
    bulls: bulls === undefined ? null : bullsJson(bulls),
    assumptions: view.assumptions.map(({ code, values }) => ({
      code,
      values: Object.fromEntries(Object.entries(values).map(([name, value]) => [name, rounded(value, 4)])),
    })),
    what_if: changes.flatMap((change) => {
      const changed = view.whatIf(change)
      return changed === undefined ? [] : [{ change: changeJson(change), ...countsJson(changed) }]
    }),
    last_chances: view.lastChances.filter(({ decided }) => !isOut(decided)).map(lastChanceJson),
    earlier: view.earlier.map((one) => ({
      mating_start: dayIso(one.season.matingStart),
      ...figuresJson(one),
    })),
    archive: archive === undefined ? null : { before: archive.before, file: archive.file },
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
