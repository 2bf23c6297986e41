/** Why a straw is proposed for an animal on the list shown. */
import type { HerdBook } from '../../breeding/book.ts'
import type { Day } from '../../breeding/day.ts'
import type { Row } from '../../breeding/list.ts'
import type { Standing } from '../../breeding/standing.ts'
import { strawRanking } from '../../breeding/straws/choose.ts'
import type { StrawReason } from '../../breeding/straws/reason.ts'
import type { Desk } from '../../morning/desk.ts'

type Ranking = ReturnType<typeof strawRanking>

const rankings = new WeakMap<HerdBook, { day: Day; ranking: Ranking }>()

/** Counting the flask and the kinship takes longer than drawing, so it is kept as long as book and day are the same. */
function rankingOf(book: HerdBook, day: Day): Ranking {
  const kept = rankings.get(book)
  if (kept !== undefined && kept.day === day) return kept.ranking
  const ranking = strawRanking(book, day)
  rankings.set(book, { day, ranking })
  return ranking
}

/** Reasons of the proposed kind and of the proposed sire; undefined where no straw is proposed. */
export function strawFor(
  desk: Desk,
  standing: Standing,
  row: Row | undefined,
): { readonly reasons: readonly StrawReason[] } | undefined {
  const straw = row?.straw
  if (straw === undefined) return undefined
  const { proposal, ranked } = rankingOf(desk.book, desk.page.list.day)(standing, undefined)
  const sire = ranked.find((one) => one.sire === straw.sire && one.straw === straw.straw)
  return { reasons: [...proposal.reasons, ...(sire?.reasons.slice(1) ?? [])] }
}
