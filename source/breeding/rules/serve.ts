/** Sections 2 and 3, Serve and Second service: on heat, or a fixed-time service planned for today. */
import { maybeByBull } from '../maybe-by-bull.ts'
import type { Policy } from '../policy.ts'
import { calvedAtLeast, daysSinceService, heatOfNow, mayBeServed, onHeat, unchecked } from '../questions.ts'
import { fixedServing, outsideHours, type Serving, servingOf } from '../session.ts'
import type { Standing } from '../standing.ts'
import {
  concernsBreeding,
  fitting,
  holding,
  type Placement,
  type Rule,
  type RuleSetting,
  sinceHeat,
  sinceNothing,
} from './placement.ts'

/** From this many days after a service a return is late: one in five such animals is in calf. */
const LATE_RETURN = 25

/** No chance used, calved 42 days or more. A bull's service, or one of before the season, may lie behind her. */
export const serve: Rule = (standing, setting) =>
  standing.chancesUsed === 0 && calvedAtLeast(standing, setting.policy.calvedToServe)
    ? placeForService(standing, setting, 'serve')
    : undefined

/** A chance used, and the heat is 18 days or more after the last service, or no service lies in this cycle. */
export const secondService: Rule = (standing, setting) =>
  standing.chancesUsed > 0 && (daysSinceService(standing) ?? Infinity) >= setting.policy.watchFrom
    ? placeForService(standing, setting, 'second-service')
    : undefined

/** Back so late, and unchecked, that she may be in calf all the same: a scan first if it can be had. */
function lateReturn(standing: Standing, policy: Policy): boolean {
  // A planned service is no return: she may be in calf whenever she was served before and nobody has looked.
  const open = onHeat(standing) ? LATE_RETURN : 1
  const days = daysSinceService(standing)
  const served = days !== undefined && days >= open && unchecked(standing)
  const withBull = maybeByBull(standing, policy.finalCheckDays)?.from
  return served || (withBull !== undefined && (heatOfNow(standing)?.day ?? standing.today) - withBull >= open)
}

function placeForService(
  standing: Standing,
  { policy, milkings }: RuleSetting,
  section: 'serve' | 'second-service',
): Placement | undefined {
  if (!concernsBreeding(standing) || standing.phase !== 'ai' || !mayBeServed(standing, policy.chances))
    return undefined
  const plan = standing.fixedTime
  const heat = plan !== undefined && seenByService(standing) ? undefined : heatOfNow(standing)
  const reasons = fitting([
    ['on-heat', heat !== undefined],
    ['fixed-time', plan !== undefined],
  ])
  const lastDayOfAi = standing.s === standing.season?.aiEnd
  const serving =
    heat !== undefined
      ? (servedAt(standing) ?? servingOf(heat, policy.servingTime, milkings, standing.today, lastDayOfAi))
      : plan && fixedServing(plan)
  if (reasons === undefined || serving === undefined) return undefined
  return {
    section,
    reasons,
    warnings: holding([
      ['suspect', heat?.sure === false],
      ['late-return', lateReturn(standing, policy)],
      ['unsure', standing.lastCheck?.fact.result === 'unsure'],
      ['outside-hours', outsideHours(serving, policy.servingTime)],
    ]),
    ...(heat === undefined ? sinceNothing : sinceHeat(standing)),
    serving,
  }
}

/** Her heat is known by nothing but a service of today: a tick, which must not move a planned service. */
const seenByService = ({ latestHeat, today }: Standing): boolean =>
  latestHeat?.day === today && latestHeat.how === undefined

/** The milking of a service of today that nobody had put her on the list for. */
function servedAt(standing: Standing): Serving | undefined {
  if (!seenByService(standing)) return undefined
  const service = standing.todays.find((fact) => fact.kind === 'service')
  return service?.kind === 'service' && service.session !== undefined
    ? { session: service.session, hours: undefined, fromOnset: false }
    : undefined
}
