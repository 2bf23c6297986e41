/** What a pregnancy check counts for, when she conceived, to whom, and when she is due. */
import type { BullPeriod } from './bull-period.ts'
import type { Check, Cycle, Service } from './cycle.ts'
import { type Day, plusDays } from './day.ts'
import type { CheckMethod } from './facts.ts'
import type { Policy } from './policy.ts'

/** How a conception day was found. */
type ConceptionBasis =
  | 'named-service'
  | 'foetal-age'
  | 'counted-service'
  | 'older-service'
  | 'bull-period'
  | 'age-alone'

export interface Conception {
  readonly day: Day
  readonly service: Service | undefined
  /** Code of the sire or bull, where one is known. */
  readonly sire: string | undefined
  /** A bull was with her after the AI service too, and his time fits as well. */
  readonly aiOrBull: boolean
  readonly basis: ConceptionBasis
}

export interface Pregnancy {
  /** The pregnant result that it rests on. */
  readonly check: Check
  /** Undefined where no service and no bull period fits. */
  readonly conception: Conception | undefined
}

/** A service or bull period must be this old before a pregnant result can come from it. */
const YOUNGEST_PREGNANCY = 24

/**
 * Days after a service from which a check of it counts: ultrasound 30 (maidens 28), hand 42, milk or blood 30.
 * Source: Early pregnancy diagnosis by transrectal ultrasonography in dairy cattle; extension column, 2021; Sterry,
 * Timing of milk-based PAG tests.
 *
 * @example checkCountsFrom('ultrasound', true, standardPolicy) // 28
 */
export function checkCountsFrom(method: CheckMethod, maiden: boolean, policy: Policy): number {
  if (method === 'ultrasound') return maiden ? policy.ultrasoundMaidenDays : policy.ultrasoundDays
  return method === 'hand' ? policy.handDays : policy.milkOrBloodDays
}

/** Whether a check counts for a service. */
export const countsFor = (check: Check, service: Service, policy: Policy): boolean =>
  check.day - service.day >= checkCountsFrom(check.fact.method, check.maiden, policy)

/** The service that a check counts for: the last one old enough, undefined where none is. */
export const serviceCounted = (cycle: Cycle, check: Check, policy: Policy): Service | undefined =>
  cycle.services.findLast((service) => countsFor(check, service, policy))

/**
 * The pregnancy of a cycle: a pregnant result with no later empty one.
 *
 * @param periods the bull periods of the animal, her own or her block's
 */
export function pregnancyOf(
  cycle: Cycle,
  periods: readonly BullPeriod[],
  policy: Policy,
): Pregnancy | undefined {
  let pregnancy: Pregnancy | undefined
  for (const check of cycle.checks) pregnancy = pregnancyAfter(pregnancy, check, cycle, periods, policy)
  return pregnancy
}

/**
 * What is known of the pregnancy after a check, from what was known before it.
 *
 * @param earlier what the checks before it in the cycle came to
 * @returns undefined where she is not in calf by it
 * @example pregnancyAfter(undefined, check, cycle, periods, policy)?.conception?.basis // 'counted-service'
 */
export function pregnancyAfter(
  earlier: Pregnancy | undefined,
  check: Check,
  cycle: Cycle,
  periods: readonly BullPeriod[],
  policy: Policy,
): Pregnancy | undefined {
  if (check.fact.result === 'empty') return undefined
  if (check.fact.result === 'unsure') return earlier
  if (earlier !== undefined && isPlain(check) && keepsPlain(earlier, check, cycle)) return earlier
  const conception = conceptionOf(cycle, check, periods, policy)
  return earlier !== undefined && keepsByAge(earlier, check, conception) ? earlier : { check, conception }
}

/** No service named, no age. */
const isPlain = ({ fact }: Check): boolean => fact.serviceDate === undefined && fact.foetalAge === undefined

/** A plain result keeps the conception of the one before, where no service came between. */
function keepsPlain(earlier: Pregnancy, check: Check, cycle: Cycle): boolean {
  const since = earlier.check.day
  return (
    earlier.conception !== undefined &&
    !cycle.services.some((service) => service.day > since && service.day < check.day)
  )
}

/** Foetal ages of one calf, taken on different days, may differ by so many days. */
const AGES_AGREE = 15

/**
 * An age within 15 days keeps the conception of the earlier day's result, since ageing is less exact the later it is
 * done (common practice, no source). Where that one was plain and only implied a conception, the age is the first that
 * was measured, and tells better which of her services it was, and when she conceived to a bull.
 */
function keepsByAge(earlier: Pregnancy, { day, fact }: Check, anew: Conception | undefined): boolean {
  const { check, conception } = earlier
  if (conception === undefined || fact.serviceDate !== undefined || fact.foetalAge === undefined) return false
  if (check.day === day || Math.abs(day - fact.foetalAge - conception.day) > AGES_AGREE) return false
  if (!isPlain(check)) return true
  const served = anew?.service
  const fits = served !== undefined && check.day - served.day >= YOUNGEST_PREGNANCY
  return conception.service !== undefined && !fits
}

/**
 * The conception that a pregnant result tells of: the service it names; else by foetal age; else the service it
 * counts for, an older one, or a bull period.
 *
 * @returns undefined where nothing fits
 */
export function conceptionOf(
  cycle: Cycle,
  check: Check,
  periods: readonly BullPeriod[],
  policy: Policy,
): Conception | undefined {
  const services = cycle.services.filter((service) => service.day <= check.day)
  const bulls = periods
    .filter((period) => isOfCycle(period, cycle, check.day))
    .map((period) => ({ ...period, from: notBefore(cycle.opened, period.from) }))
  const { serviceDate, foetalAge } = check.fact
  if (serviceDate !== undefined) {
    const named = services.find((service) => service.facts.some((fact) => fact.date === serviceDate))
    return named === undefined ? undefined : byService(named, 'named-service', false)
  }
  if (foetalAge !== undefined) return byAge(services, bulls, check.day, foetalAge, cycle.opened)
  const begun = bulls.filter((period) => check.day - period.from >= YOUNGEST_PREGNANCY)
  const counted = services.findLast((service) => countsFor(check, service, policy))
  const service = counted ?? services.findLast((one) => check.day - one.day >= YOUNGEST_PREGNANCY)
  if (service !== undefined) {
    const bullToo = begun.some((period) => isAfter(period, service.day, check.day))
    return byService(service, counted === undefined ? 'older-service' : 'counted-service', bullToo)
  }
  const period = begun.at(-1)
  return period === undefined ? undefined : byBull(period, period.from, bulls)
}

function byAge(
  services: readonly Service[],
  bulls: readonly BullPeriod[],
  checked: Day,
  age: number,
  opened: Day | undefined,
): Conception | undefined {
  const day = plusDays(checked, -age)
  const within = age > 98 ? 15 : 7
  const holds = (period: BullPeriod): boolean => day >= period.from - 15 && day <= (period.to ?? checked) + 15
  const distanceTo = (service: Service): number => Math.abs(service.day - day)
  const close = services.filter((service) => distanceTo(service) <= within)
  const nearest = leastOf(close, distanceTo)
  if (nearest !== undefined) {
    const from = nearest.day
    return byService(
      nearest,
      'foetal-age',
      bulls.some((period) => isAfter(period, from, checked) && holds(period)),
    )
  }
  const period = leastOf(bulls.filter(holds), ({ from, to }) =>
    Math.max(from - day, day - (to ?? checked), 0),
  )
  if (period !== undefined) {
    return byBull(period, Math.min(Math.max(day, period.from), period.to ?? checked) as Day, bulls)
  }
  if (services.length > 0 || bulls.length > 0 || notBefore(opened, day) > day) return undefined
  return { day, service: undefined, sire: undefined, aiOrBull: false, basis: 'age-alone' }
}

/** The one with the least of something; of several the last. */
function leastOf<T>(all: readonly T[], of: (one: T) => number): T | undefined {
  const least = Math.min(...all.map(of))
  return all.findLast((one) => of(one) === least)
}

/** Nothing of a cycle comes before the calving or loss that opened it. */
const notBefore = (opened: Day | undefined, day: Day): Day =>
  opened === undefined || day > opened ? day : opened

const byService = (service: Service, basis: ConceptionBasis, bullToo: boolean): Conception => ({
  day: service.day,
  service,
  sire: service.sire,
  aiOrBull: bullToo && service.ai,
  basis,
})

/** Whether a bull was with her on a day after a service, whether he came after it or stayed. */
const isAfter = ({ to }: BullPeriod, service: Day, checked: Day): boolean => (to ?? checked) > service

const isThere = ({ from, to }: BullPeriod, day: Day): boolean =>
  from <= day && (to === undefined || to >= day)

/** Of several bulls that were with her on the day, none is known to be the sire. */
const byBull = (period: BullPeriod, day: Day, bulls: readonly BullPeriod[]): Conception => ({
  day,
  service: undefined,
  sire: bulls.every((other) => other.bull === period.bull || !isThere(other, day)) ? period.bull : undefined,
  aiOrBull: false,
  basis: 'bull-period',
})

/** A period that had begun by the check and did not end before the cycle opened. */
const isOfCycle = (period: BullPeriod, cycle: Cycle, checked: Day): boolean =>
  period.from <= checked &&
  (cycle.opened === undefined || period.to === undefined || period.to >= cycle.opened)
