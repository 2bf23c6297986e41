/** Why a straw is proposed for an animal on the list shown. */
import type { Row } from '../../breeding/list.ts'
import type { Standing } from '../../breeding/standing.ts'
import type { StrawReason } from '../../breeding/straws/reason.ts'
import type { Desk } from '../../morning/desk.ts'
import { rankingOf } from '../../morning/straw-ranking.ts'

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
