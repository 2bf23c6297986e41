/** How much each sire has been used by AI in a season. */
import type { HerdBook } from '../book.ts'
import { type Day, isoDay } from '../day.ts'
import type { ServiceFact } from '../facts.ts'
import { dayOfSeason, PRE_MATING, type Season } from '../season.ts'

export interface SireUse {
  /** AI services of the season that name a sire. */
  readonly total: number
  /** Of them by this sire, with straws of any kind. */
  readonly by: (sire: string) => number
}

/**
 * The AI services of the whole herd from season day -35 to a day, that day included: straws are shared by the blocks.
 *
 * @param season undefined: no service counts
 * @example servicesOfSeason(book, spring, today).length // 212
 */
export function servicesOfSeason(
  book: HerdBook,
  season: Season | undefined,
  today: Day,
): readonly ServiceFact[] {
  if (season === undefined) return []
  const from = dayOfSeason(season, PRE_MATING)
  return book.services.filter((fact) => {
    if (fact.natural === true) return false
    const day = isoDay(fact.date)
    return day >= from && day <= today
  })
}

/** How often each sire was used in such services. */
export function sireUse(services: readonly ServiceFact[]): SireUse {
  const uses = new Map<string, number>()
  let total = 0
  for (const { sire } of services) {
    if (sire === undefined) continue
    uses.set(sire, (uses.get(sire) ?? 0) + 1)
    total += 1
  }
  return { total, by: (sire) => uses.get(sire) ?? 0 }
}

/**
 * Whether one more service would put a sire above his share of the services. While there are few services each sire
 * may have one.
 * Source: Teagasc, Plan to use teams of bulls equally, 2022: a team, none above 15 % of the services.
 *
 * @param share 0-1; 1 sets no limit
 * @example aboveShare(8, 50, 0.15) // true: 9 of 51 is more than 15 %, rounded up to 8
 */
export const aboveShare = (used: number, total: number, share: number): boolean =>
  used + 1 > Math.ceil(share * (total + 1))
