/**
 * The beta distribution: what is known of a rate after some successes and failures.
 */

/** A beta distribution. Both parameters above 0; their sum is its weight in trials. */
export interface Beta {
  readonly alpha: number
  readonly beta: number
}

/** Stirling's series, coefficients B(2n) / (2n (2n-1)). */
const stirling = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156]

/**
 * Natural logarithm of the gamma function.
 *
 * @param x above 0
 * @returns relative error about 1e-14
 * @source Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, 6.1.40, after 6.1.15 has brought x to 12 or more
 * @example logGamma(5) // 3.178053830347946 (ln 24)
 */
export function logGamma(x: number): number {
  let shift = 1
  let y = x
  for (; y < 12; y += 1) shift *= y
  let series = 0
  let power = 1 / y
  for (const coefficient of stirling) {
    series += coefficient * power
    power /= y * y
  }
  return (y - 0.5) * Math.log(y) - y + 0.5 * Math.log(2 * Math.PI) + series - Math.log(shift)
}

/** The continued fraction of the incomplete beta function, by Lentz's method. Converges fast for x < (a+1)/(a+b+2). */
function fraction(x: number, a: number, b: number): number {
  const away = (value: number): number => (Math.abs(value) < 1e-300 ? 1e-300 : value)
  let c = 1
  let d = 1 / away(1 - ((a + b) * x) / (a + 1))
  let result = d
  for (let m = 1; m <= 10_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / away(1 + even * d)
    c = away(1 + even / c)
    result *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / away(1 + odd * d)
    c = away(1 + odd / c)
    result *= d * c
    if (Math.abs(d * c - 1) < 1e-16) break
  }
  return result
}

/**
 * Chance that a rate is at most x (the regularised incomplete beta function).
 *
 * @param x 0 to 1; below counts as 0, above as 1
 * @returns 0 to 1, relative error about 1e-13 for weights up to some thousands
 * @source Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, 26.5.8
 * @example betaBelow(0.5, { alpha: 2, beta: 3 }) // 0.6875
 */
export function betaBelow(x: number, { alpha, beta }: Beta): number {
  if (x <= 0) return 0
  if (x >= 1) return 1
  const scale = logGamma(alpha + beta) - logGamma(alpha) - logGamma(beta)
  const front = Math.exp(scale + alpha * Math.log(x) + beta * Math.log1p(-x))
  if (x < (alpha + 1) / (alpha + beta + 2)) return (front * fraction(x, alpha, beta)) / alpha
  return 1 - (front * fraction(1 - x, beta, alpha)) / beta
}

/**
 * The rate that the distribution stays below with chance q: Newton's steps, halved where one would leave the bracket.
 *
 * @param q 0 to 1
 * @returns 0 to 1
 * @example betaQuantile(0.025, { alpha: 438, beta: 544 }) // 0.41506549
 */
export function betaQuantile(q: number, distribution: Beta): number {
  if (q <= 0) return 0
  if (q >= 1) return 1
  const { alpha, beta } = distribution
  const scale = logGamma(alpha + beta) - logGamma(alpha) - logGamma(beta)
  let low = 0
  let high = 1
  let x = betaMean(distribution)
  for (;;) {
    const below = betaBelow(x, distribution) - q
    if (below < 0) low = x
    else high = x
    const density = Math.exp(scale + (alpha - 1) * Math.log(x) + (beta - 1) * Math.log1p(-x))
    const step = x - below / density
    const next = step > low && step < high ? step : (low + high) / 2
    if (Math.abs(next - x) <= 1e-15 * x || next <= low || next >= high) return next
    x = next
  }
}

/** Mean of a beta distribution, 0 to 1. */
export const betaMean = ({ alpha, beta }: Beta): number => alpha / (alpha + beta)

/**
 * A rate guessed beforehand and updated by what was counted.
 *
 * @param prior mean (0 to 1, both excluded) and weight (in trials, above 0) of the guess
 * @param counted successes and failures, 0 or more, whole or not
 * @param cap greatest weight of the result; beyond it the mean is kept and the weight cut
 * @example posterior({ mean: 0.55, weight: 50 }, { successes: 30, failures: 20 }) // alpha 57.5, beta 42.5
 */
export function posterior(
  prior: { readonly mean: number; readonly weight: number },
  counted: { readonly successes: number; readonly failures: number },
  cap = Number.POSITIVE_INFINITY,
): Beta {
  const alpha = prior.mean * prior.weight + counted.successes
  const beta = (1 - prior.mean) * prior.weight + counted.failures
  const scale = Math.min(1, cap / (alpha + beta))
  return { alpha: alpha * scale, beta: beta * scale }
}
