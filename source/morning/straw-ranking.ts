/** The straws in the flask ranked for an animal, kept while book and day are the same. */
import type { HerdBook } from '../breeding/book.ts'
import type { Day } from '../breeding/day.ts'
import { strawRanking } from '../breeding/straws/choose.ts'

/** Ranks the straws of a day for a standing; see breeding/straws/choose.ts. */
type Ranking = ReturnType<typeof strawRanking>

const rankings = new WeakMap<HerdBook, { day: Day; ranking: Ranking }>()

/** The ranking of a book on a day. Counting the flask and the kinship takes longer than a frame may. */
export function rankingOf(book: HerdBook, day: Day): Ranking {
  const kept = rankings.get(book)
  if (kept !== undefined && kept.day === day) return kept.ranking
  const ranking = strawRanking(book, day)
  rankings.set(book, { day, ranking })
  return ranking
}
