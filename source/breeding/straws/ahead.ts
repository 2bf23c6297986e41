/** The kinds of straw planned for an animal over the season, for the forecast. */
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import type { StrawKind } from '../facts.ts'
import type { Standing } from '../standing.ts'
import { strawCounts } from './counts.ts'
import { proposeKind } from './kind.ts'
import { occasionsAhead } from './occasion.ts'

/**
 * Kinds by chances used (0 up to the last chance), then by season day from 0 to the last day of AI. Stock does not
 * matter: this is what should be used. Hours of a heat to come are taken to suit.
 *
 * @param book the herd book, @param today the day of the standings
 * @returns for a standing with a season; without one a single list with one conventional straw
 * @example plannedKinds(book, today)(maiden)[0]?.[20] // 'sexed'
 */
export function plannedKinds(book: HerdBook, today: Day): (standing: Standing) => StrawKind[][] {
  const counts = strawCounts(book, today)
  const { policy } = book
  return (standing) => {
    const { season } = standing
    if (season === undefined) return [['conventional']]
    const heifersEnough = () => counts.heifers(season).enough
    const occasion = occasionsAhead(standing)
    return Array.from({ length: policy.chances }, (_, used) =>
      Array.from(
        { length: season.aiEnd + 1 },
        (_day, s) => proposeKind(occasion(used, s), { policy, heifersEnough }).kind,
      ),
    )
  }
}
