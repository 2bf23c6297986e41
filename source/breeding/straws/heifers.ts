/** How far the straws used this season go towards the replacements wanted. */
import type { HerdBook } from '../book.ts'
import type { Rates } from '../chances/rates.ts'
import { isoDay } from '../day.ts'
import type { ServiceFact } from '../facts.ts'
import { howMany } from '../statistics/poisson-binomial.ts'
import { type Band, bandOf } from '../statistics/quantiles.ts'
import { farmChain, replacementsPerStraw, strawsFor } from './plan.ts'

export interface HeiferProgress {
  /** Replacements wanted of the season; 0 where no target is set. */
  readonly wanted: number
  /** Dairy straws used in the season, sexed and conventional. */
  readonly straws: { readonly sexed: number; readonly conventional: number }
  /** Replacements expected of them. */
  readonly expected: number
  /** Their 80 % band: what chance alone leaves open, the rates being right. */
  readonly band: Band
  /** A target is set, and the straws used should meet it. */
  readonly enough: boolean
  /** Sexed straws for cows that would still be needed for the rest. */
  readonly sexedStillNeeded: number
}

/**
 * Progress towards the replacements that the policy asks for. Each straw counts for what it brings on average, whether
 * its service has a result or not: so a season of failed services is found in the figures, not here.
 *
 * @param services the AI services of the season (see use.ts)
 * @param rates conception and share of heifers
 * @example heiferProgress(book, services, rates).enough // false
 */
export function heiferProgress(
  book: HerdBook,
  services: readonly ServiceFact[],
  rates: Rates,
): HeiferProgress {
  const wanted = book.policy.replacementsWanted
  const straws = { sexed: 0, conventional: 0 }
  const chances: number[] = []
  for (const service of services) {
    if (service.straw === undefined || service.straw === 'beef') continue
    straws[service.straw] += 1
    chances.push(replacementsPerStraw(farmChain(servedAsMaiden(book, service), service.straw, rates)))
  }
  const expected = chances.reduce((sum, chance) => sum + chance, 0)
  const perSexed = replacementsPerStraw(farmChain(false, 'sexed', rates))
  return {
    wanted,
    straws,
    expected,
    band: bandOf(howMany(chances)),
    enough: wanted > 0 && expected >= wanted,
    sexedStillNeeded: strawsFor(Math.max(0, wanted - expected), perSexed),
  }
}

function servedAsMaiden(book: HerdBook, service: ServiceFact): boolean {
  const animal = book.animals.get(service.about)
  if (animal === undefined || (animal.record.lactation ?? 0) > 0) return false
  const served = isoDay(service.date)
  return !animal.happenings.some(({ fact, day }) => fact.kind === 'calving' && day <= served)
}
