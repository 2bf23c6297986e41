/** Section 7, No heat seen: for the vet. Not a diagnosis; in housed herds most are missed heats. */
import { hardCalving } from '../cycle.ts'
import { maybeByBull } from '../maybe-by-bull.ts'
import type { Policy } from '../policy.ts'
import { calvedAtLeast, checkedEmpty, daysCalved, mayBeServed, returned } from '../questions.ts'
import type { Standing } from '../standing.ts'
import { concernsBreeding, fitting, type Rule, sinceCalving, sureHeatSince } from './placement.ts'

/** An examination answers for so many days. */
export const EXAMINED_DAYS = 21
/** A heat of the pre-mating weeks counts from here for maidens and cows calved long ago. */
const CYCLING_FROM = -42
const CALVED_LONG = 150
/** A cow that is cycling was seen within so many days. */
const HEAT_DAYS = 24

export const noHeatSeen: Rule = (standing, { policy }) => {
  const { phase, s, today } = standing
  if (!concernsBreeding(standing) || standing.inCalf || s === undefined) return undefined
  if (phase !== 'before' && phase !== 'ai') return undefined
  if (standing.examinedOn !== undefined && today - standing.examinedOn <= EXAMINED_DAYS) return undefined
  if (maybeInCalf(standing, policy)) return undefined
  const reasons = fitting([
    [
      'cycling-not-seen',
      standing.chancesUsed === 0 &&
        !cyclingSeen(standing) &&
        (phase === 'before' ? s >= -14 && calvedAtLeast(standing, 30) : calvedAtLeast(standing, 60)),
    ],
    [
      'no-heat-24-days',
      phase === 'ai' &&
        s >= 21 &&
        (standing.chancesUsed === 0 || secondIsAwaited(standing, policy)) &&
        calvedAtLeast(standing, policy.calvedToServe) &&
        !sureHeatSince(standing, today - HEAT_DAYS),
    ],
    ['empty', phase === 'ai' && mayBeServed(standing, policy.chances) && emptyWithoutHeat(standing)],
    ['at-risk', phase === 'before' && s >= -28 && calvedAtLeast(standing, 21) && atRisk(standing)],
  ])
  return reasons === undefined
    ? undefined
    : { section: 'no-heat-seen', reasons, warnings: [], ...sinceCalving(standing) }
}

/**
 * A sure heat since calving; for maidens, cows calved more than 150 days and those whose calving is not known, one
 * since season day -42.
 */
export function cyclingSeen(standing: Standing): boolean {
  const calved = daysCalved(standing)
  const long = standing.maiden || calved === undefined || calved > CALVED_LONG
  const from = long && standing.season !== undefined ? standing.season.matingStart + CYCLING_FROM : 0
  return sureHeatSince(standing, from)
}

/**
 * Served and neither back nor checked empty, checked unsure and not seen since, or with a bull and neither: she may be
 * in calf, and the vet's treatment would end it.
 */
function maybeInCalf(standing: Standing, policy: Policy): boolean {
  const served = standing.lastService !== undefined && !returned(standing, policy.watchFrom)
  const check = standing.lastCheck
  const unsure = check?.fact.result === 'unsure' && !sureHeatSince(standing, check.day + 1)
  const byBull = maybeByBull(standing, policy.finalCheckDays) !== undefined
  return unsure || byBull || (served && !checkedEmpty(standing))
}

/** A chance is left to a cow that came back or lost her calf, and her next heat does not come. */
function secondIsAwaited(standing: Standing, policy: Policy): boolean {
  if (!mayBeServed(standing, policy.chances)) return false
  if (standing.lastService !== undefined) return returned(standing, policy.watchFrom)
  return standing.cycle.opened === undefined || standing.today - standing.cycle.opened > HEAT_DAYS
}

function emptyWithoutHeat(standing: Standing): boolean {
  const check = standing.countingCheck
  return check !== undefined && checkedEmpty(standing) && !sureHeatSince(standing, check.day + 1)
}

/** After a hard calving, twins, a dead calf or a loss, and not examined since. */
function atRisk(standing: Standing): boolean {
  const calving = standing.calvings.at(-1)
  const lost = standing.losses.at(-1)
  const lostSince = lost !== undefined && (calving === undefined || lost > calving.day) ? lost : undefined
  const hard = calving !== undefined && hardCalving(calving)
  const since = Math.max(hard ? calving.day : -Infinity, lostSince ?? -Infinity)
  if (since === -Infinity) return false
  return standing.examinedOn === undefined || standing.examinedOn < since
}
