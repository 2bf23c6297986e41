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

const tables = new WeakMap<readonly LossPeriod[], readonly number[]>()

/**
 * The same by whole days: entry n is the share still there at age n, for every age up to the end of the last period.
 * Computed once for the same list of periods and kept.
 *
 * @example survivalByAge(defaultRates.losses)[60] // 0.9
 */
export function survivalByAge(losses: readonly LossPeriod[]): readonly number[] {
  const found = tables.get(losses)
  if (found) return found
  const last = losses.at(-1)?.to ?? 0
  const table = Array.from({ length: last + 1 }, (_, age) => survivalToAge(age, losses))
  tables.set(losses, table)
  return table
}
