/** The mating seasons of the invented farm, 2023 to 2026: the weeks with the bull are cut from six to three. */
import { type Day, isoDay, plusDays } from '../../source/breeding/day.ts'

export type Block = 'spring' | 'autumn'

export interface Plan {
  readonly block: Block
  readonly year: number
  /** Mating start. */
  readonly start: Day
  readonly aiWeeks: number
  readonly bullWeeks: number
  /** Last season day of AI, and of the bull. */
  readonly aiEnd: number
  readonly bullEnd: number
  /** Scanning visits; the last one is the final check. */
  readonly visits: readonly Day[]
  /** Maidens wanted, and cows to be kept. */
  readonly maidens: number
  readonly cows: number
}

/** Season day on which a season is written into the book. */
export const PLANNED_AHEAD = -190
/** Visits of the vet to look at cows: hard calvings first, then those not seen in heat. */
export const VET_DAYS = { hardCalvings: -28, notSeen: -10, stillNotSeen: 17 } as const
/** Days from the vet's treatment to the fixed-time service. */
export const FIXED_TIME_AFTER = 10

const plan = (block: Block, start: string, bullWeeks: number, visits: readonly number[]): Plan => {
  const day = isoDay(start)
  const aiWeeks = 6
  const aiEnd = 7 * aiWeeks - 1
  return {
    block,
    year: Number(start.slice(0, 4)),
    start: day,
    aiWeeks,
    bullWeeks,
    aiEnd,
    bullEnd: aiEnd + 7 * bullWeeks,
    visits: visits.map((s) => plusDays(day, s)),
    maidens: block === 'spring' ? 29 : 20,
    cows: block === 'spring' ? 145 : 84,
  }
}

/** In order of mating start. The last one is planned and has not come yet. */
export const plans: readonly Plan[] = [
  plan('spring', '2023-05-01', 6, [40, 82, 147]),
  plan('autumn', '2023-11-20', 6, [40, 82, 147]),
  plan('spring', '2024-05-01', 6, [40, 82, 147]),
  plan('autumn', '2024-11-20', 6, [40, 82, 147]),
  plan('spring', '2025-05-01', 6, [40, 82, 147]),
  plan('autumn', '2025-11-20', 5, [40, 82, 136]),
  plan('spring', '2026-05-01', 3, [40, 82, 124]),
  plan('autumn', '2026-11-20', 3, [40, 82, 124]),
]

/** The season that the work of a block belongs to on a day: from 150 days before its mating start. */
export const planOn = (block: string, day: Day): Plan | undefined =>
  plans.findLast((one) => one.block === block && day - one.start >= -150)
