/** Why a straw is proposed for an animal on the list shown. */
import type { Row } from '../../breeding/list.ts'
import type { Standing } from '../../breeding/standing.ts'
import type { RankedStraw } from '../../breeding/straws/rank.ts'
import type { StrawReason } from '../../breeding/straws/reason.ts'
import { strawsOnList } from '../../breeding/straws-on-list.ts'
import type { Desk } from '../../morning/desk.ts'
import { rankingOf } from '../../morning/straw-ranking.ts'

interface StrawWhy {
  /** Of the proposed kind and of the proposed sire. */
  readonly reasons: readonly StrawReason[]
  /** What is proposed, with the inbreeding of the calf; undefined where it has gone from the flask since. */
  readonly sire: RankedStraw | undefined
}

/**
 * Why the straw of her row is this one, at the milking where she is served; undefined where none is proposed, and once
 * she is served: what is ranked then is what is left.
 */
export function strawFor(desk: Desk, standing: Standing, row: Row | undefined): StrawWhy | undefined {
  const straw = row?.straw
  if (straw === undefined || row?.done === true) return undefined
  const { book, page } = desk
  const { proposal, ranked } = strawsOnList(book, page.list.rows, standing, rankingOf(book, page.list.day))
  const sire = ranked.find((one) => one.sire === straw.sire && one.straw === straw.straw)
  return { reasons: [...proposal.reasons, ...(sire?.reasons.slice(1) ?? [])], sire }
}
