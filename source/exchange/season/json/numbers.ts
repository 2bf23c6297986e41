/** Numbers, days and shares as they stand in the JSON output: null where there is none. */
import { type Day, dayIso } from '../../../breeding/day.ts'
import type { Figure } from '../../../breeding/figures/figure.ts'

/** A day as YYYY-MM-DD. */
export const iso = (day: Day | undefined): string | null => (day === undefined ? null : dayIso(day))

/** A number with so many decimals; null where there is none. */
export const rounded = (value: number | undefined, decimals = 2): number | null =>
  value === undefined ? null : Math.round(value * 10 ** decimals) / 10 ** decimals

/** A share with its interval, its aim, and where the aim is from. */
export const figureJson = (figure: Figure) => ({
  numerator: figure.numerator,
  denominator: figure.denominator,
  unknown: figure.unknown,
  percent: rounded(figure.percent),
  low: rounded(figure.low),
  high: rounded(figure.high),
  target: figure.target ?? null,
  source: figure.source ?? null,
})
