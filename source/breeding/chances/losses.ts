import type { LossPeriod } from './rates.ts'

/**
 * Share of pregnancies alive at the start of the first period that are still there at an age.
 *
 * @param age days since conception
 * @param losses periods in order; before the first nothing is lost, after the last nothing more
 * @returns 0 to 1
 * @source the default periods: JDS Communications 4, 2023; Lopez-Gatius et al., Reprod Dom Anim 39, 2004
 * @example survivalToAge(280, defaultRates.losses) // 0.8555
 */
export function survivalToAge(age: number, losses: readonly LossPeriod[]): number {
  let survival = 1
  for (const { from, to, lost } of losses) {
    if (age <= from) break
    survival *= (1 - lost) ** Math.min(1, (age - from) / (to - from))
  }
  return survival
}
