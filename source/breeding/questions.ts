/** What the rules ask about a standing. */
import type { Heat } from './cycle.ts'
import type { Day } from './day.ts'
import { oldEnoughToServe, type Standing } from './standing.ts'

/** Days since the calving or late loss that she waits from; undefined where that is not known. */
export const daysCalved = (standing: Standing, day: Day = standing.today): number | undefined =>
  standing.waitFrom === undefined ? undefined : day - standing.waitFrom

/** Whether she has calved at least so many days; maidens pass but after a late loss, a cow without a date does not. */
export function calvedAtLeast(standing: Standing, days: number, day: Day = standing.today): boolean {
  const calved = daysCalved(standing, day)
  return calved === undefined ? standing.maiden : calved >= days
}

/** Her latest heat where it has no service and is dated today or yesterday. */
export const heatOfNow = ({ latestHeat, today }: Standing): Heat | undefined =>
  latestHeat !== undefined && latestHeat.service === undefined && today - latestHeat.day <= 1
    ? latestHeat
    : undefined

/** On heat: she has a heat of today or yesterday without a service. */
export const onHeat = (standing: Standing): boolean => heatOfNow(standing) !== undefined

/** Days from the last service to the heat of now, or to today without one; undefined where she was not served. */
export function daysSinceService(standing: Standing): number | undefined {
  const day = heatOfNow(standing)?.day ?? standing.today
  return standing.lastService === undefined ? undefined : day - standing.lastService.day
}

/** A maiden under age, on the lists only because she was served: she may be in calf, and is not to be served again. */
export const tooYoung = ({ maiden, animal, today }: Standing): boolean =>
  maiden && !oldEnoughToServe(animal, today)

/** May be served: not in calf, of an age for it, a chance left, and not left to the bull by hand this season. */
export const mayBeServed = (standing: Standing, chances: number): boolean =>
  !standing.inCalf && !tooYoung(standing) && standing.chancesUsed < chances && !standing.leftToBull

/** Served, and no check counts for the last service. */
export const unchecked = (standing: Standing): boolean =>
  standing.lastService !== undefined && standing.countingCheck === undefined

/** The last check that counts for the last service said empty. */
export const checkedEmpty = (standing: Standing): boolean => standing.countingCheck?.fact.result === 'empty'

/** A sure heat without a service so many days (18) or more after the last service. */
export function returned(standing: Standing, watchFrom: number): boolean {
  const service = standing.lastService
  return (
    service !== undefined &&
    standing.heats.some(
      (heat) => heat.sure && heat.service === undefined && heat.day - service.day >= watchFrom,
    )
  )
}
