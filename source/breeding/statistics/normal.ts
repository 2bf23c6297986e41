/**
 * The normal distribution.
 */

const density = (x: number): number => Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI)

/** Middle: the density times x + x^3/3 + x^5/(3*5) + ... */
function fromTheMiddle(x: number): number {
  let term = x
  let sum = x
  for (let odd = 3; Math.abs(term) > 1e-18; odd += 2) {
    term *= (x * x) / odd
    sum += term
  }
  return 0.5 + density(x) * sum
}

/** Upper tail beyond x > 0: the density over x + 1/(x + 2/(x + 3/(x + ...))). */
function tail(x: number): number {
  let below = x
  for (let n = 200; n >= 1; n -= 1) below = x + n / below
  return density(x) / below
}

/**
 * Chance that a standard normal value is at most x. Absolute error below 1e-15, relative error in the lower tail
 * below 1e-12 (down to where the number itself vanishes).
 *
 * @param x any number, also infinite
 * @returns 0 to 1
 * @source Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, 26.2.11 (series) and 26.2.14 (fraction)
 * @example normalBelow(1.96) // 0.9750021048517795
 */
export function normalBelow(x: number): number {
  if (x > 3) return 1 - tail(x)
  if (x < -3) return tail(-x)
  return fromTheMiddle(x)
}

/**
 * Chances of the whole numbers `from`..`to` under a normal curve cut at the half numbers, scaled to sum 1.
 *
 * @param mean same unit as `from` and `to` (here days)
 * @param sd above 0
 * @param from first whole number, @param to last one, not below `from`
 * @returns one chance a whole number, the first for `from`
 * @example normalDays(22, 3.2, 8, 40)[14] // 0.1242 (day 22)
 */
export function normalDays(mean: number, sd: number, from: number, to: number): number[] {
  const below = Array.from({ length: to - from + 2 }, (_, i) => normalBelow((from + i - 0.5 - mean) / sd))
  const shares = below.slice(1).map((end, i) => end - (below[i] as number))
  const sum = shares.reduce((a, b) => a + b, 0)
  return shares.map((x) => x / sum)
}
