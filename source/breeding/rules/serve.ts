/** Sections 2 and 3, Serve and Second service: on heat, or a fixed-time service planned for today. */
import type { Warning } from '../list.ts'
import { fixedServing, outsideHours, servingOf } from '../session.ts'
import { calvedAtLeast, mayBeServed, onHeat, type Standing, unchecked } from '../standing.ts'
import {
  concernsBreeding,
  fitting,
  type Placement,
  type Rule,
  type RuleSetting,
  sinceHeat,
  sinceNothing,
} from './placement.ts'

/** From this many days after a service a return is late: one in five such animals is in calf. */
const LATE_RETURN = 25

/** No chance used, calved 42 days or more. */
export const serve: Rule = (standing, setting) =>
  standing.chancesUsed === 0 && calvedAtLeast(standing, setting.policy.calvedToServe)
    ? placeForService(standing, setting, 'serve', [])
    : undefined

/** A chance used, and the heat is 18 days or more after the last service, or no service lies in this cycle. */
export const secondService: Rule = (standing, setting) => {
  if (standing.chancesUsed === 0) return undefined
  const service = standing.lastService
  const heatDay = onHeat(standing) ? (standing.latestHeat?.day ?? standing.today) : standing.today
  const interval = service === undefined ? undefined : heatDay - service.day
  if (interval !== undefined && interval < setting.policy.watchFrom) return undefined
  const warnings: Warning[] = []
  if (interval !== undefined && interval >= LATE_RETURN && unchecked(standing)) warnings.push('late-return')
  if (standing.lastCheck?.fact.result === 'unsure') warnings.push('unsure')
  return placeForService(standing, setting, 'second-service', warnings)
}

function placeForService(
  standing: Standing,
  { policy, milkings }: RuleSetting,
  section: 'serve' | 'second-service',
  warnings: readonly Warning[],
): Placement | undefined {
  if (!concernsBreeding(standing) || standing.phase !== 'ai' || !mayBeServed(standing, policy.chances))
    return undefined
  const heat = onHeat(standing) ? standing.latestHeat : undefined
  const plan = standing.fixedTime
  const reasons = fitting([
    ['on-heat', heat !== undefined],
    ['fixed-time', plan !== undefined],
  ])
  if (reasons === undefined) return undefined
  const lastDayOfAi = standing.s === standing.season?.aiEnd
  const serving =
    heat !== undefined
      ? servingOf(heat, policy.servingTime, milkings, standing.today, lastDayOfAi)
      : plan !== undefined
        ? fixedServing(plan)
        : undefined
  return {
    section,
    reasons,
    warnings: [
      ...(heat?.sure === false ? (['suspect'] as const) : []),
      ...warnings,
      ...(serving !== undefined && outsideHours(serving, policy.servingTime)
        ? (['outside-hours'] as const)
        : []),
    ],
    ...(heat === undefined ? sinceNothing : sinceHeat(standing)),
    ...(serving === undefined ? {} : { serving }),
  }
}
