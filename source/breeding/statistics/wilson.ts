/** 97.5 % point of the standard normal distribution: two-sided 95 %. */
const twoSided95 = 1.959963984540054

/**
 * Wilson's score interval, 95 %, for a share that was counted.
 *
 * @param successes 0 to `trials`
 * @param trials 0 or more; with none the interval is 0 to 1
 * @returns both ends, 0 to 1
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1
 * @example wilson(6, 32) // { low: 0.0889, high: 0.3531 }
 */
export function wilson(successes: number, trials: number): { low: number; high: number } {
  const z2 = twoSided95 * twoSided95
  const share = successes / trials
  const middle = (share + z2 / (2 * trials)) / (1 + z2 / trials)
  const half =
    (twoSided95 * Math.sqrt((share * (1 - share)) / trials + z2 / (4 * trials * trials))) / (1 + z2 / trials)
  return {
    low: successes === 0 ? 0 : middle - half,
    high: successes === trials ? 1 : middle + half,
  }
}
