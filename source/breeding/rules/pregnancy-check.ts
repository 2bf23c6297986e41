/** Section 5, Pregnancy check: in every phase, oldest first. */
import type { Day } from '../day.ts'
import { maybeByBull } from '../maybe-by-bull.ts'
import { checkCountsFrom } from '../pregnancy.ts'
import { calvedAtLeast, returned, unchecked } from '../questions.ts'
import { dayOfSeason, type Season } from '../season.ts'
import { oldEnoughToServe, type Standing } from '../standing.ts'
import {
  concernsBreeding,
  fitting,
  holding,
  type Rule,
  type RuleSetting,
  sinceCalving,
  sinceService,
} from './placement.ts'
import { servedInCalf } from './take-care.ts'

/** Days after a service at which the second round of returns is due. */
const SECOND_ROUND_FROM = 36
const SECOND_ROUND_TO = 48

export const pregnancyCheck: Rule = (standing, setting) => {
  if (!concernsBreeding(standing)) return undefined
  const due = dueForCheck(standing, setting)
  const reasons = fitting([
    ['due', due || dueAfterBull(standing, setting)],
    ['unsure', unsureLongEnough(standing, setting)],
    ['heat-in-calf', heatInCalf(standing)],
    ['served-in-calf', servedInCalf(standing) && oldEnough(standing, setting)],
    ['confirm', toConfirm(standing, setting)],
    ['final', finalCheck(standing, setting)],
  ])
  if (reasons === undefined) return undefined
  const k = standing.lastService === undefined ? undefined : standing.today - standing.lastService.day
  return {
    section: 'pregnancy-check',
    reasons,
    warnings: holding([
      ['second-round', due && k !== undefined && k >= SECOND_ROUND_FROM && k <= SECOND_ROUND_TO],
    ]),
    ...(standing.lastService === undefined ? sinceCalving(standing) : sinceService(standing)),
  }
}

/** The next scanning visit planned on the day or later; while one is ahead, rows stand on that day only. */
const nextVisit = (season: Season, today: Day): Day | undefined =>
  season.scanDays.find((visit) => visit >= today)

/** The next scanning visit of her block, where it is planned on a later day. */
export function visitAhead({ season, today }: Standing): Day | undefined {
  const visit = season === undefined ? undefined : nextVisit(season, today)
  return visit === today ? undefined : visit
}

function dueForCheck(standing: Standing, setting: RuleSetting): boolean {
  const { season, s } = standing
  if (standing.inCalf || !unchecked(standing) || season === undefined || s === undefined) return false
  const afterBull = s > season.bullEnd
  return (afterBull || !returned(standing, setting.policy.watchFrom)) && oldEnough(standing, setting)
}

/**
 * With a bull, by her own facts, and nothing heard of her since: she may be in calf though nobody saw her served. In
 * the bull weeks and after them the final check finds her.
 */
function dueAfterBull(standing: Standing, { policy }: RuleSetting): boolean {
  if (standing.phase === 'bull' || standing.phase === 'closing') return false
  const period = maybeByBull(standing, policy.finalCheckDays)
  return period?.to !== undefined && standing.today - period.to >= policy.finalCheckDays
}

/** Her last service is old enough for the herd's method, and she for the method. */
function oldEnough(standing: Standing, { policy }: RuleSetting): boolean {
  const service = standing.lastService
  const method = policy.checkMethod
  const from = checkCountsFrom(method, standing.maiden, policy)
  if (service === undefined || standing.today - service.day < from) return false
  if (method === 'milk' && !inMilk(standing)) return false
  if (method === 'milk' || method === 'blood') {
    const lost = standing.losses.at(-1)
    const wait = policy.milkOrBloodCalvedDays
    return calvedAtLeast(standing, wait) && (lost === undefined || standing.today - lost >= wait)
  }
  return true
}

/** A cow that has not been dried off since she calved. */
function inMilk({ maiden, calvings, driedOff }: Standing): boolean {
  if (maiden) return false
  const calved = calvings.at(-1)?.day
  return driedOff === undefined || (calved !== undefined && driedOff < calved)
}

function unsureLongEnough(standing: Standing, { policy }: RuleSetting): boolean {
  const check = standing.lastCheck
  if (check?.fact.result !== 'unsure' || standing.today - check.day < policy.unsureRecheckDays) return false
  return standing.lastService === undefined || standing.lastService.day <= check.day
}

function heatInCalf(standing: Standing): boolean {
  const checked = standing.lastCheck?.day
  return (
    standing.inCalf &&
    checked !== undefined &&
    standing.heats.some((heat) => heat.sure && heat.service === undefined && heat.day > checked)
  )
}

function toConfirm(standing: Standing, { policy }: RuleSetting): boolean {
  const conceived = standing.pregnancy?.conception?.day
  if (conceived === undefined || standing.due === undefined) return false
  const from = conceived + policy.confirmDays
  return (
    standing.today >= from &&
    standing.due - standing.today > policy.dryOffDays &&
    !standing.checks.some((check) => check.day >= from)
  )
}

function finalCheck(standing: Standing, { policy }: RuleSetting): boolean {
  const { season, s } = standing
  if (season === undefined || s === undefined || standing.inCalf) return false
  const bullOut = dayOfSeason(season, season.bullEnd)
  const from = bullOut + policy.finalCheckDays
  const tooYoungThen = standing.maiden && !oldEnoughToServe(standing.animal, bullOut)
  return (
    standing.today >= from &&
    !(tooYoungThen && standing.services.length === 0) &&
    !standing.calvings.some((calving) => calving.day > bullOut) &&
    !standing.losses.some((lost) => lost > bullOut) &&
    !standing.cycles.some((cycle) => cycle.checks.some((check) => check.day >= from))
  )
}
