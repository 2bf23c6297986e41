/**
 * How many of a herd, when each animal has a chance of her own: exact, by adding one animal at a time.
 */

/** Chances of the counts `first`, `first + 1`, ... All other counts have none. */
export interface CountDistribution {
  readonly first: number
  readonly chances: readonly number[]
}

/** Chances below this are dropped from both ends: of 1,000 animals they add up to less than 1e-14. */
const negligible = 1e-18

/** For certain none. */
const none: CountDistribution = { first: 0, chances: [1] }

function trimmed(first: number, chances: Float64Array): { first: number; chances: Float64Array } {
  let from = 0
  let to = chances.length
  while (to - from > 1 && (chances[from] as number) < negligible) from += 1
  while (to - from > 1 && (chances[to - 1] as number) < negligible) to -= 1
  return { first: first + from, chances: chances.subarray(from, to) }
}

/**
 * Distribution of the sum of independent counts, such as the straws that each animal still takes.
 *
 * @param parts one distribution each, chances summing to 1
 * @returns the chances of the sum, ends below 1e-18 cut off
 * @example sumOfCounts([{ first: 0, chances: [0.5, 0.5] }, { first: 1, chances: [1] }]) // first 1, chances .5 .5
 */
export function sumOfCounts(parts: readonly CountDistribution[]): CountDistribution {
  let first = none.first
  let chances: Float64Array = Float64Array.from(none.chances)
  for (const part of parts) {
    const sum = new Float64Array(chances.length + part.chances.length - 1)
    for (let j = 0; j < part.chances.length; j += 1) {
      const chance = part.chances[j] as number
      if (chance === 0) continue
      for (let i = 0; i < chances.length; i += 1)
        sum[i + j] = (sum[i + j] as number) + (chances[i] as number) * chance
    }
    ;({ first, chances } = trimmed(first + part.first, sum))
  }
  return { first, chances: Array.from(chances) }
}

/**
 * Distribution of how many of independent events happen (Poisson-binomial).
 *
 * @param chances one each, 0 to 1
 * @source Hong, On computing the distribution function for the Poisson binomial distribution, Computational Statistics
 *   and Data Analysis 59, 2013
 * @example howMany([0.5, 0.5]) // first 0, chances .25 .5 .25
 */
export const howMany = (chances: readonly number[]): CountDistribution =>
  sumOfCounts(chances.map((chance) => ({ first: 0, chances: [1 - chance, chance] })))

/** Expected count. */
export const expectedCount = ({ first, chances }: CountDistribution): number =>
  chances.reduce((sum, chance, i) => sum + chance * (first + i), 0)
