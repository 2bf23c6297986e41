import { wilson } from '../statistics/wilson.ts'

/** A share with all that it rests on. Percent, and its ends, 0 to 100. */
export interface Figure {
  readonly numerator: number
  readonly denominator: number
  /** Those of whom it is not known, shown beside; they never count as pregnant. */
  readonly unknown: number
  /** Undefined where the denominator is 0, as are the ends of its 95 % interval (Wilson). */
  readonly percent: number | undefined
  readonly low: number | undefined
  readonly high: number | undefined
  /** What to aim for, percent, and who says so. */
  readonly target: number | undefined
  readonly source: string | undefined
}

/** What stands beside a figure. */
interface Beside {
  readonly unknown?: number
  readonly target?: number
  readonly source?: string
}

/**
 * A figure from its counts.
 *
 * @param numerator 0 to `denominator`
 * @source Wilson interval: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1
 * @example figureOf(200, 250).percent // 80
 */
export function figureOf(numerator: number, denominator: number, beside: Beside = {}): Figure {
  const known = denominator > 0
  const { low, high } = wilson(numerator, denominator)
  return {
    numerator,
    denominator,
    unknown: beside.unknown ?? 0,
    percent: known ? (100 * numerator) / denominator : undefined,
    low: known ? 100 * low : undefined,
    high: known ? 100 * high : undefined,
    target: beside.target,
    source: beside.source,
  }
}
