/** The in-calf curve with its band. */
import type { SeasonFigures } from '../../breeding/figures/season-figures.ts'

/** From the day on so many percent are in calf; the ends hold it 95 times in 100. */
interface CurvePoint {
  readonly day: number
  readonly percent: number
  readonly low: number
  readonly high: number
}

/** Two-sided 95 % of the normal curve. */
const WIDTH = 1.96

/**
 * The steps of the curve, with 1.96 standard errors on either side.
 *
 * @example curvePoints(view.figures).at(-1)?.percent // 64.2
 */
export const curvePoints = ({ inCalf }: SeasonFigures): readonly CurvePoint[] =>
  inCalf.curve.map(({ day, percent, standardError }) => ({
    day,
    percent,
    low: Math.max(0, percent - WIDTH * standardError),
    high: Math.min(100, percent + WIDTH * standardError),
  }))
