/** Why an animal stands in no section of a morning list: what a herdsperson asks who looks for her there. */
import { type Day, plusDays } from './day.ts'
import { nextReturn } from './next-return.ts'
import type { Policy } from './policy.ts'
import { checkCountsFrom } from './pregnancy.ts'
import { onHeat, returned, unchecked } from './questions.ts'
import { EXAMINED_DAYS } from './rules/no-heat-seen.ts'
import { visitAhead } from './rules/pregnancy-check.ts'
import { PRE_MATING } from './season.ts'
import { oldEnoughToServe, type Standing } from './standing.ts'

/** The reason, with the days that it rests on. */
export type NotOnList =
  | { readonly code: 'left'; readonly on: Day }
  | { readonly code: 'not-born' | 'bull' | 'no-block' | 'not-bred' | 'too-young' | 'not-ready' | 'no-season' }
  | { readonly code: 'season-over' }
  | { readonly code: 'season-ahead'; readonly from: Day }
  | { readonly code: 'in-calf'; readonly due: Day | undefined }
  /** Her check waits for a planned scanning visit. */
  | { readonly code: 'visit'; readonly on: Day }
  /** On heat, both chances used, and too soon after the last service to know that she is open. */
  | { readonly code: 'no-chance-left'; readonly days: number }
  | { readonly code: 'served'; readonly days: number; readonly watchFrom: Day }
  | { readonly code: 'not-seen-back'; readonly days: number; readonly checkFrom: Day }
  | { readonly code: 'calved'; readonly days: number; readonly ready: Day }
  | { readonly code: 'examined'; readonly on: Day }
  | { readonly code: 'next-heat'; readonly from: Day; readonly to: Day }
  | { readonly code: 'nothing-due' }

/** An animal that is never bred, whatever the day; undefined for the others. */
function neverBred(standing: Standing): NotOnList | undefined {
  const { animal, today, leftOn, season, phase, s } = standing
  if (leftOn !== undefined) return { code: 'left', on: leftOn }
  if (!standing.inHerd) return { code: 'not-born' }
  if (!standing.female) return { code: 'bull' }
  if (standing.barred) return { code: 'not-bred' }
  if (!standing.ready) return { code: oldEnoughToServe(animal, today) ? 'not-ready' : 'too-young' }
  if (standing.block === undefined) return { code: 'no-block' }
  if (standing.inCalf) return { code: 'in-calf', due: standing.due }
  if (season === undefined || s === undefined) return { code: 'no-season' }
  if (phase !== 'closed') return undefined
  return s < 0
    ? { code: 'season-ahead', from: plusDays(season.matingStart, PRE_MATING) }
    : { code: 'season-over' }
}

/** Served, and it is not known yet what came of it. */
function waitsAfterService(standing: Standing, policy: Policy): NotOnList | undefined {
  const service = standing.lastService
  if (service === undefined || !unchecked(standing) || returned(standing, policy.watchFrom)) return undefined
  const days = standing.today - service.day
  if (onHeat(standing) && standing.chancesUsed >= policy.chances) return { code: 'no-chance-left', days }
  if (days < policy.watchFrom)
    return { code: 'served', days, watchFrom: plusDays(service.day, policy.watchFrom) }
  const checkFrom = plusDays(service.day, checkCountsFrom(policy.checkMethod, standing.maiden, policy))
  return checkFrom > standing.today ? { code: 'not-seen-back', days, checkFrom } : undefined
}

/**
 * Why an animal has no row on the list of her standing's day: the first reason that holds, those that last before
 * those that pass.
 *
 * @param standing of an animal without a row, @param policy the herd's
 * @example notOnList(standing, book.policy) // { code: 'served', days: 4, watchFrom: isoDay('2026-06-11') }
 */
export function notOnList(standing: Standing, policy: Policy): NotOnList {
  const lasting = neverBred(standing) ?? waitsAfterService(standing, policy)
  if (lasting !== undefined) return lasting
  const { today, waitFrom, examinedOn } = standing
  const visit = visitAhead(standing)
  if (visit !== undefined && unchecked(standing)) return { code: 'visit', on: visit }
  if (waitFrom !== undefined && today - waitFrom < policy.calvedToServe)
    return { code: 'calved', days: today - waitFrom, ready: plusDays(waitFrom, policy.calvedToServe) }
  const next = nextReturn(standing, policy)
  if (next !== undefined) return { code: 'next-heat', from: next.from, to: next.to }
  if (examinedOn !== undefined && today - examinedOn <= EXAMINED_DAYS)
    return { code: 'examined', on: examinedOn }
  return { code: 'nothing-due' }
}
