/** The kinds of straw planned for an animal over the season, for the forecast. */
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import type { StrawKind } from '../facts.ts'
import { seasonDay } from '../season.ts'
import type { Standing } from '../standing.ts'
import { strawCounts } from './counts.ts'
import { kindFor } from './kind.ts'
import { occasionsAhead } from './occasion.ts'

/**
 * Kinds by chances used (0 up to the last chance), then by season day from 0 to the last day of AI. Stock does not
 * matter: this is what should be used. Hours of a heat to come are taken to suit. Days that are over hold the kind of
 * today.
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
    const setting = { policy, heifersEnough: () => counts.heifers(season).enough }
    const occasion = occasionsAhead(standing)
    const first = Math.max(0, Math.min(seasonDay(season, today), season.aiEnd))
    return Array.from({ length: policy.chances }, (_, used) => {
      const ahead = Array.from({ length: season.aiEnd + 1 - first }, (_day, i) =>
        kindFor(occasion(used, first + i), setting),
      )
      return [...new Array<StrawKind>(first).fill(ahead[0] as StrawKind), ...ahead]
    })
  }
}
