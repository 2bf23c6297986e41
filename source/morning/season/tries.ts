/** What can be tried out in the forecast: four knobs, and changes worth a look. */
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import type { Change } from '../../breeding/forecast/what-if.ts'

export const knobs = ['aiWeeks', 'heatSeen', 'cowConception', 'bulls'] as const
export type Knob = (typeof knobs)[number]

/** A line of the forecast that can be pointed at. */
export type TryEntry =
  | { readonly is: 'knob'; readonly knob: Knob }
  | { readonly is: 'worth'; readonly change: Change }
  /** What the forecast rests on. */
  | { readonly is: 'rests' }

/** The plan's value of each knob: weeks of AI more, shares, working bulls. */
export function planned(forecast: BlockForecast): Readonly<Record<Knob, number>> {
  return {
    aiWeeks: 0,
    heatSeen: forecast.own.heatSeen,
    cowConception: forecast.own.conception.cowConventional.mean,
    bulls: forecast.bulls ?? forecast.bullsNeeded,
  }
}

/** The knobs, the changes worth a look, what it rests on. */
export const tryEntries = (view: SeasonView): readonly TryEntry[] => [
  ...knobs.map((knob) => ({ is: 'knob' as const, knob })),
  ...(view.knows({}) ? view.changes.map((change) => ({ is: 'worth' as const, change })) : []),
  { is: 'rests' },
]

const steps: Readonly<Record<Knob, number>> = { aiWeeks: 1, heatSeen: 0.05, cowConception: 0.05, bulls: 1 }
const ranges: Readonly<Record<Knob, readonly [number, number]>> = {
  aiWeeks: [-2, 2],
  heatSeen: [0.05, 0.95],
  cowConception: [0.05, 0.95],
  bulls: [0, 20],
}

/**
 * The change with a knob turned a step; back at the plan's value the knob is not changed any more.
 *
 * @param by steps, negative down
 * @example turned({}, 'aiWeeks', 1, forecast) // { aiWeeks: 1 }
 */
export function turned(change: Change, knob: Knob, by: number, forecast: BlockForecast): Change {
  const plan = planned(forecast)[knob]
  const [least, most] = ranges[knob]
  const step = steps[knob]
  // Shares move along the twentieths, wherever the plan's own lies between two of them.
  const from = (change[knob] ?? plan) / step
  const next = by > 0 ? Math.floor(from + 1e-9) + by : Math.ceil(from - 1e-9) + by
  const value = Math.min(most, Math.max(least, Math.round(next * step * 100) / 100))
  const { [knob]: _before, ...rest } = change
  return Math.abs(value - plan) < 1e-9 ? rest : { ...rest, [knob]: value }
}
