/**
 * Bulls for the weeks after AI.
 */
import type { Rates } from '../chances/rates.ts'

/**
 * Chance that a bull finds an animal in heat, when there are so many bulls to so many open animals.
 *
 * @param bulls working at a time, 0 or more, @param open animals not in calf at turn-out, expected
 * @returns `rates.bullFinds` where there are enough, less in proportion where they are short
 * @example bullFindsWith(2, 80, defaultRates) // 0.675
 */
export const bullFindsWith = (bulls: number, open: number, { bullFinds, openPerBull }: Rates): number =>
  open <= 0 ? bullFinds : bullFinds * Math.min(1, (openPerBull * bulls) / open)

interface BullNeed {
  /** Open animals at turn-out; take the high end of the forecast. */
  readonly open: number
  /** Open animals to one bull: 30, young bulls (under two years) 20, days 18-24 after synchronised services 15. */
  readonly openPerBull: number
  /** Half of the bulls rest while the others work. */
  readonly halfRest: boolean
}

/**
 * Bulls needed at turn-out: never fewer than two with a group, so that one lame bull does not cost the season.
 *
 * @returns a whole number; 0 where nothing is open
 * @source Managing your working bulls, 2019 (NZ levy body); Irish Independent, bull calculations; agriland.ie (Teagasc),
 *   young bulls
 * @example bullsNeeded({ open: 240, openPerBull: 30, halfRest: true }) // 16
 */
export function bullsNeeded({ open, openPerBull, halfRest }: BullNeed): number {
  if (open <= 0) return 0
  const working = Math.max(2, Math.ceil(open / openPerBull))
  return halfRest ? 2 * working : working
}
