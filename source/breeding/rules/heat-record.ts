/** Section 8, Heat record: before the mating start, who has not been seen in heat. Aim: 85 % seen by day 0. */
import { cyclingSeen } from './no-heat-seen.ts'
import { concernsBreeding, type Rule, sinceCalving } from './placement.ts'

export const heatRecord: Rule = (standing) =>
  concernsBreeding(standing) && standing.phase === 'before' && !standing.inCalf && !cyclingSeen(standing)
    ? { section: 'heat-record', reasons: ['none-seen'], warnings: [], ...sinceCalving(standing) }
    : undefined
