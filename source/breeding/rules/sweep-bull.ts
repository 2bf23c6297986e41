/** Section 6, Leave to the sweep bull: no straw is proposed for these animals again this season. */
import { checkedEmpty, returned, tooYoung } from '../questions.ts'
import type { Standing } from '../standing.ts'
import {
  concernsBreeding,
  fitting,
  holding,
  type Placement,
  type Rule,
  type RuleSetting,
  seasonDayReady,
  sinceCalving,
} from './placement.ts'

export const sweepBull: Rule = (standing, setting) => {
  if (!concernsBreeding(standing) || standing.inCalf) return undefined
  const reasons =
    standing.phase === 'ai'
      ? leftInAiWeeks(standing, setting)
      : standing.phase === 'bull'
        ? inBullWeeks(standing, setting)
        : undefined
  if (reasons === undefined) return undefined
  return {
    section: 'sweep-bull',
    reasons,
    warnings: holding([['bull-return', standing.phase === 'bull' && bullReturn(standing, setting)]]),
    ...sinceServiceOfSeason(standing),
  }
}

function leftInAiWeeks(standing: Standing, { policy }: RuleSetting) {
  const ready = seasonDayReady(standing, policy.calvedToServe)
  const season = standing.season
  return fitting([
    ['chances', standing.chancesUsed >= policy.chances && knownOpen(standing, policy.watchFrom)],
    ['by-hand', standing.leftToBull],
    ['late', ready !== undefined && season !== undefined && ready > season.aiEnd && ready <= season.bullEnd],
  ])
}

/** Returned, checked empty, or not served since a loss. */
const knownOpen = (standing: Standing, watchFrom: number): boolean =>
  standing.lastService === undefined || returned(standing, watchFrom) || checkedEmpty(standing)

function inBullWeeks(standing: Standing, { policy }: RuleSetting) {
  const ready = seasonDayReady(standing, policy.calvedToServe)
  const kept =
    standing.onHold ||
    tooYoung(standing) ||
    (ready !== undefined && standing.season !== undefined && ready > standing.season.bullEnd)
  return fitting([
    ['window', !kept],
    ['keep-from-bull', kept],
  ])
}

/** A sure heat 18-24 days after a natural service: he may be failing. */
function bullReturn(standing: Standing, { policy }: RuleSetting): boolean {
  const natural = standing.services.filter((service) => !service.ai)
  return standing.heats.some(
    (heat) =>
      heat.sure &&
      natural.some(
        (service) => heat.day - service.day >= policy.watchFrom && heat.day - service.day <= policy.watchTo,
      ),
  )
}

/** Days since her service of this season, else since calving. */
function sinceServiceOfSeason(standing: Standing): Pick<Placement, 'since' | 'days'> {
  const service = standing.lastService
  const seasonStart = standing.season?.matingStart
  return service !== undefined && seasonStart !== undefined && service.day >= seasonStart - 35
    ? { since: 'service', days: standing.today - service.day }
    : sinceCalving(standing)
}
