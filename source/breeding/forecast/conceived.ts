/** Who conceives by a day and is still in calf on a later one. */
import { survivalByAge } from '../chances/losses.ts'
import type { LossPeriod } from '../chances/rates.ts'
import type { Conception } from './outlook.ts'

/**
 * Chances that an animal conceives by the end of each of some season days, and is still in calf at the end of a later
 * one.
 *
 * @param conceptions of her forecast, @param by season days in order, @param on the later season day
 * @returns one chance a day, 0 to 1
 * @example conceivedChances(forecast.conceptions, [41, 62], 104, rates.losses) // [0.58, 0.74]
 */
export function conceivedChances(
  conceptions: readonly Conception[],
  by: readonly number[],
  on: number,
  losses: readonly LossPeriod[],
): number[] {
  const survival = survivalByAge(losses)
  const chances = by.map(() => 0)
  for (const { day, share } of conceptions) {
    const held = share * (survival[Math.min(Math.max(0, on - day), survival.length - 1)] as number)
    for (const [i, end] of by.entries()) if (day <= end) chances[i] = (chances[i] as number) + held
  }
  return chances.map((chance) => Math.min(1, chance))
}
