import type { CountDistribution } from './poisson-binomial.ts'

/** What rounding can take away from a sum of some hundred chances. */
const rounding = 1e-12

/**
 * The least count n such that at most n happen with chance q or more. Counts are whole, so a band made of two of them
 * holds somewhat more than it says.
 *
 * @param q above 0, at most 1
 * @example countAt({ first: 0, chances: [0.25, 0.5, 0.25] }, 0.5) // 1
 */
export function countAt({ first, chances }: CountDistribution, q: number): number {
  let below = 0
  for (const [i, chance] of chances.entries()) {
    below += chance
    if (below >= q - rounding) return first + i
  }
  return first + chances.length - 1
}

/** The middle (half the chance) and the ends of the 80 % band (a tenth on either side) of a count. */
export interface Band {
  readonly low: number
  readonly middle: number
  readonly high: number
}

/**
 * Middle and 80 % band of a count.
 *
 * @example bandOf({ first: 3, chances: [1] }) // { low: 3, middle: 3, high: 3 }
 */
export const bandOf = (distribution: CountDistribution): Band => ({
  low: countAt(distribution, 0.1),
  middle: countAt(distribution, 0.5),
  high: countAt(distribution, 0.9),
})

/**
 * Average of distributions that are equally likely to be the true one.
 *
 * @param distributions at least one
 * @throws RangeError where there is none: a programming error
 * @example averageOf([{ first: 0, chances: [1] }, { first: 2, chances: [1] }]) // first 0, chances .5 0 .5
 */
export function averageOf(distributions: readonly CountDistribution[]): CountDistribution {
  if (distributions.length === 0) throw new RangeError('no distribution to average')
  const first = Math.min(...distributions.map((d) => d.first))
  const end = Math.max(...distributions.map((d) => d.first + d.chances.length))
  const chances = new Array<number>(end - first).fill(0)
  for (const d of distributions) {
    for (const [i, chance] of d.chances.entries()) {
      const at = d.first - first + i
      chances[at] = (chances[at] as number) + chance / distributions.length
    }
  }
  return { first, chances }
}
