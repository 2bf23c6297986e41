/**
 * Returns: who did not come again, and after how many days the others did.
 */
import { type IntervalClass, intervalClass } from '../cycle.ts'
import type { Policy } from '../policy.ts'
import { type Figure, figureOf } from './figure.ts'
import type { ServiceResult } from './service-results.ts'

/** Days to the first sure heat or service that counts as a return (18 days or more); undefined where there is none. */
export function returnAfter({ cycle, service }: ServiceResult, policy: Policy): number | undefined {
  const days = cycle.heats
    .filter((heat) => heat.sure && heat.service !== service)
    .map((heat) => (heat.service?.day ?? heat.day) - service.day)
    .filter((after) => after >= policy.watchFrom)
  return days.length === 0 ? undefined : Math.min(...days)
}

/** Old enough to tell, and not followed by culling within the time. */
export function countsForNonReturn({ service, standing }: ServiceResult, days: number): boolean {
  const { leftOn, today } = standing
  const culled = leftOn !== undefined && leftOn - service.day <= days
  return service.ai && today - service.day > days && !culled
}

/** Whether a service was followed by a return within so many days. */
export const cameBackBy = (result: ServiceResult, days: number, policy: Policy): boolean =>
  (returnAfter(result, policy) ?? Number.POSITIVE_INFINITY) <= days

/**
 * Non-return: AI services without a return so many days later. Only services that are so old, and not followed by
 * culling within that time.
 *
 * @param days 24 or 56
 * @example nonReturn(services, 24, policy).percent // 58.1
 */
export function nonReturn(services: readonly ServiceResult[], days: number, policy: Policy): Figure {
  const counted = services.filter((result) => countsForNonReturn(result, days))
  const returned = counted.filter((result) => cameBackBy(result, days, policy))
  return figureOf(counted.length - returned.length, counted.length)
}

export const intervalClasses: readonly IntervalClass[] = [
  'short-irregular',
  'short-regular',
  'long-irregular',
  'long-regular',
  'extended',
]

export interface ReturnIntervals {
  readonly counts: Readonly<Record<IntervalClass, number>>
  readonly all: number
  /** 18-24 days, of all. Few of them, or many short ones: heats are mistaken. */
  readonly regular: Figure
  /** 18-24 days to one of 36-48: low where first returns are missed; undefined without any of 36-48. */
  readonly ratio: number | undefined
}

/**
 * Classes of the days between services.
 *
 * @param days between services one after the other in a cycle, 2 or more each
 * @source Remnant 2019, Measuring dairy herd heat detection (University of Nottingham)
 * @example returnIntervals([21, 22, 43]).ratio // 2
 */
export function returnIntervals(days: readonly number[]): ReturnIntervals {
  const counts: Record<IntervalClass, number> = {
    'short-irregular': 0,
    'short-regular': 0,
    'long-irregular': 0,
    'long-regular': 0,
    extended: 0,
  }
  for (const one of days) counts[intervalClass(one)] += 1
  const longRegular = counts['long-regular']
  return {
    counts,
    all: days.length,
    regular: figureOf(counts['short-regular'], days.length),
    ratio: longRegular === 0 ? undefined : counts['short-regular'] / longRegular,
  }
}

/** Days between services one after the other of the same cycle, for each animal's services. */
export const intervalsBetween = (animals: readonly (readonly ServiceResult[])[]): number[] =>
  animals.flatMap((services) =>
    services.flatMap((result, i) => {
      const before = services[i - 1]
      return before === undefined || before.cycle !== result.cycle
        ? []
        : [result.service.day - before.service.day]
    }),
  )
