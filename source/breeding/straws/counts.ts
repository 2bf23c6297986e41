/** What is counted once for the straws of a day, each part when it is first asked for. */
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import type { ServiceFact } from '../facts.ts'
import { keeping } from '../kept.ts'
import { ratesOfPolicy } from '../rates-of-policy.ts'
import type { Season } from '../season.ts'
import { type HeiferProgress, heiferProgress } from './heifers.ts'
import { type Stock, stockOn } from './stock.ts'
import { type SireUse, servicesOfSeason, sireUse } from './use.ts'

export interface StrawCounts {
  readonly stock: () => Stock
  readonly use: (season: Season | undefined) => SireUse
  readonly heifers: (season: Season | undefined) => HeiferProgress
}

/**
 * The counts of a day, its own facts included.
 *
 * @example strawCounts(book, today).stock().left('S17', 'sexed') // 12
 */
export function strawCounts(book: HerdBook, today: Day): StrawCounts {
  let stock: Stock | undefined
  const services = bySeason((season: Season | undefined): readonly ServiceFact[] =>
    servicesOfSeason(book, season, today),
  )
  return {
    stock: () => {
      stock ??= stockOn(book, today)
      return stock
    },
    use: bySeason((season) => sireUse(services(season))),
    heifers: bySeason((season) => heiferProgress(book, services(season), ratesOfPolicy(book.policy))),
  }
}

/** A function that counts once for each season. */
function bySeason<T>(count: (season: Season | undefined) => T): (season: Season | undefined) => T {
  const keep = keeping<Season | undefined, T>(Infinity)
  return (season) => keep(season, () => count(season))
}
