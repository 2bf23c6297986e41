/** A season as JSON, version 1: what happened so far, and what lies ahead. The version rises only when a key goes or changes its meaning. */
import { isOut } from '../../breeding/ahead/decided.ts'
import { dayIso } from '../../breeding/day.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { Change } from '../../breeding/forecast/what-if.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import {
  bullsJson,
  changeJson,
  countsJson,
  forecastJson,
  lastChanceJson,
  nextCalvingJson,
} from './json/ahead.ts'
import { rounded } from './json/numbers.ts'
import { calvingPatternJson, courseJson, figuresJson, ratesJson } from './json/so-far.ts'

export const SEASON_VERSION = 1

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
    ...courseJson(figures),
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
