/** Section 4, Repeat-heat watch: the days on which a return, or the next heat, is likely. */
import { mayBeServed, returned, unchecked } from '../questions.ts'
import { concernsBreeding, type Rule, sinceService } from './placement.ts'

export const repeatHeatWatch: Rule = (standing, { policy }) => {
  if (!concernsBreeding(standing) || standing.phase === 'closed') return undefined
  const within = (days: number): boolean => days >= policy.watchFrom && days <= policy.watchTo
  const service = standing.lastService
  if (
    service !== undefined &&
    !standing.inCalf &&
    unchecked(standing) &&
    !returned(standing, policy.watchFrom) &&
    within(standing.today - service.day)
  ) {
    return {
      section: 'repeat-heat-watch',
      reasons: ['since-service'],
      warnings: [],
      ...sinceService(standing),
    }
  }
  const heat = standing.latestSureHeat
  if (
    (standing.phase === 'before' || standing.phase === 'ai') &&
    mayBeServed(standing, policy.chances) &&
    heat !== undefined &&
    heat.service === undefined &&
    within(standing.today - heat.day)
  ) {
    return {
      section: 'repeat-heat-watch',
      reasons: ['since-heat'],
      warnings: [],
      since: 'heat',
      days: standing.today - heat.day,
    }
  }
  return undefined
}
