/** What lies ahead of a season, as JSON. */
import type { BullPlan } from '../../../breeding/ahead/bull-plan.ts'
import type { LastChance } from '../../../breeding/ahead/last-chances.ts'
import { calvingStartFor, dayIso } from '../../../breeding/day.ts'
import type { SeasonView } from '../../../breeding/figures/season-view.ts'
import type { BlockForecast } from '../../../breeding/forecast/block.ts'
import type { CountForecast } from '../../../breeding/forecast/herd.ts'
import type { Change } from '../../../breeding/forecast/what-if.ts'
import { iso, rounded } from './numbers.ts'

/** Chances below this are left out at both ends of a distribution. */
const SHOWN = 0.00005

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
export const countsJson = (forecast: BlockForecast) => ({
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

/** The forecast as planned. */
export const forecastJson = (forecast: BlockForecast) => ({
  ...countsJson(forecast),
  conceived_by: forecast.conceivedBy.map(({ day, middle, low, high }) => ({ day, middle, low, high })),
})

/** A change of the plan; null where it leaves the plan. */
export const changeJson = ({ aiWeeks, heatSeen, cowConception, bulls }: Change) => ({
  ai_weeks: aiWeeks ?? null,
  heat_seen: rounded(heatSeen, 4),
  conception: rounded(cowConception, 4),
  bulls: bulls ?? null,
})

/** The calvings to come from this season, by week from their planned start; null where it is over. */
export function nextCalvingJson(view: SeasonView) {
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

/** The bulls needed and on hand, and their dates. */
export const bullsJson = (bulls: BullPlan) => ({
  needed: bulls.needed,
  young_needed: bulls.youngNeeded,
  on_hand: bulls.onHand,
  young_on_hand: bulls.young,
  turn_out: dayIso(bulls.turnOut),
  last: dayIso(bulls.last),
  soundness_by: dayIso(bulls.soundnessBy),
  on_farm_by: dayIso(bulls.onFarmBy),
})

/** A late calver or an empty, and what becomes of her. */
export const lastChanceJson = (chance: LastChance) => ({
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
