/** Section 1, Take care: a decision or a danger. It concerns every animal on every day. */
import type { Day } from '../day.ts'
import { calvedAtLeast, daysCalved, daysSinceService, heatOfNow, mayBeServed, onHeat } from '../questions.ts'
import type { Standing } from '../standing.ts'
import {
  fitting,
  holding,
  type Placement,
  type Rule,
  type RuleSetting,
  sinceCalving,
  sinceHeat,
  sinceLoss,
  sinceNothing,
  sinceService,
} from './placement.ts'

/** A served-in-calf or a loss is shown for so many days. */
const SHOWN_DAYS = 7
/** A heat is still served the day after; from then on it is missed. The first that can is of the day before day 0. */
const UNSERVED_FROM = 2
/** A fixed-time service has its hour: the day after it is missed. */
const PLAN_MISSED_FROM = 1
const UNSERVED_TO = 3

export const takeCare: Rule = (standing, setting) => {
  if (!standing.inHerd) {
    return setting.contradicted(standing)
      ? { section: 'take-care', reasons: ['contradiction'], warnings: [], ...sinceNothing }
      : undefined
  }
  const reasons = fitting([
    ['in-calf-heat', standing.inCalf && onHeat(standing)],
    ['served-in-calf', (servedInCalfSince(standing) ?? Infinity) <= SHOWN_DAYS],
    ['overdue', standing.due !== undefined && standing.today > standing.due + setting.policy.overdueDays],
    ...servingDecisions(standing, setting),
    ['unserved-heat', unservedHeat(standing, setting)],
    ['no-service-fits', standing.pregnancy !== undefined && standing.pregnancy.conception === undefined],
    ['loss', lostLately(standing)],
    ['contradiction', setting.contradicted(standing)],
  ])
  return reasons === undefined
    ? undefined
    : {
        section: 'take-care',
        reasons,
        warnings: holding([['suspect', heatOfNow(standing)?.sure === false]]),
        ...sinceOf(standing, reasons[0]),
      }
}

/** Served two days or more after she conceived, and no check counts for that service yet. */
export function servedInCalf(standing: Standing): boolean {
  return servedInCalfSince(standing) !== undefined
}

/** Days since both the service and the pregnant result are known; undefined where she was not served in calf. */
function servedInCalfSince(standing: Standing): number | undefined {
  const { pregnancy, lastService: service } = standing
  const conceived = pregnancy?.conception?.day
  if (pregnancy === undefined || conceived === undefined || service === undefined) return undefined
  return service.day - conceived >= 2 && standing.countingCheck === undefined
    ? standing.today - Math.max(service.day, pregnancy.check.day)
    : undefined
}

/** A heat to be served or not: these concern animals that may be bred, in the AI weeks. */
function servingDecisions(standing: Standing, { policy }: RuleSetting) {
  const asked =
    standing.phase === 'ai' &&
    standing.female &&
    !standing.barred &&
    standing.ready &&
    (onHeat(standing) || standing.fixedTime !== undefined) &&
    mayBeServed(standing, policy.chances)
  if (!asked) return []
  const calved = daysCalved(standing)
  return [
    ['calving-unknown', !standing.maiden && calved === undefined],
    ['calved-under-30', calved !== undefined && calved < policy.calvedNever],
    ['calved-30-41', calved !== undefined && calved >= policy.calvedNever && calved < policy.calvedToServe],
    ['short-interval', isShort(daysSinceService(standing), policy)],
    ['hold', standing.onHold],
  ] as const
}

const isShort = (interval: number | undefined, policy: RuleSetting['policy']): boolean =>
  interval !== undefined && interval >= policy.shortIntervalFrom && interval < policy.watchFrom

/** A heat, or a planned fixed-time service, that could have been served and has no service. */
function unservedHeat(standing: Standing, { policy }: RuleSetting): boolean {
  const { phase, season, latestHeat: heat, plannedBefore, today } = standing
  if (phase !== 'ai' || season === undefined || standing.onHold) return false
  if (standing.barred || !standing.ready || !standing.female || !mayBeServed(standing, policy.chances))
    return false
  const missed = (day: Day, from: number): boolean => {
    const served = standing.services.findLast((service) => service.day < day)
    const interval = served === undefined ? undefined : day - served.day
    return (
      today - day >= from &&
      today - day <= UNSERVED_TO &&
      day >= season.matingStart - 1 &&
      calvedAtLeast(standing, policy.calvedToServe, day) &&
      !isShort(interval, policy)
    )
  }
  const heatMissed = heat?.sure === true && heat.service === undefined && missed(heat.day, UNSERVED_FROM)
  const planMissed =
    plannedBefore !== undefined &&
    !onHeat(standing) &&
    // Served the day before, on the heat that she had by herself, the plan is done too.
    !standing.services.some((service) => service.day >= plannedBefore - 1) &&
    missed(plannedBefore, PLAN_MISSED_FROM)
  return heatMissed || planMissed
}

const heatIsRecent = ({ latestHeat, today }: Standing): boolean =>
  latestHeat !== undefined && today - latestHeat.day <= UNSERVED_TO

function lostLately(standing: Standing): boolean {
  const lost = standing.losses.at(-1)
  return lost !== undefined && standing.today - lost <= SHOWN_DAYS
}

function sinceOf(standing: Standing, reason: Placement['reasons'][0]): Pick<Placement, 'since' | 'days'> {
  switch (reason) {
    case 'in-calf-heat':
    case 'calving-unknown':
    case 'hold':
      return sinceHeat(standing)
    case 'unserved-heat':
      return heatIsRecent(standing) ? sinceHeat(standing) : sinceNothing
    case 'served-in-calf':
    case 'short-interval':
    case 'overdue':
      return sinceService(standing)
    case 'calved-under-30':
    case 'calved-30-41':
      return sinceCalving(standing)
    case 'loss':
      return sinceLoss(standing)
    default:
      return sinceNothing
  }
}
