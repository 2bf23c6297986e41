import type { OwnConception } from '../chances/own-results.ts'
import { type ServiceClass, serviceClasses } from '../chances/rates.ts'
import { betaQuantile } from '../statistics/beta.ts'

export type ConceptionRates = Readonly<Record<ServiceClass, number>>

/**
 * Conception rates that are equally likely to be the true ones: every class at the middle of the same slice of what is
 * known of it. With nine each end of the band lies within one animal of what 200 would give.
 *
 * @param points number of slices, 1 or more
 * @example conceptionPoints(ownConception(defaultRates, {}))[4].cowConventional // 0.5507 (the median)
 */
export const conceptionPoints = (own: OwnConception, points = 9): ConceptionRates[] =>
  Array.from({ length: points }, (_, i) => {
    const q = (i + 0.5) / points
    return Object.fromEntries(
      serviceClasses.map((name) => [name, betaQuantile(q, own[name].known)]),
    ) as ConceptionRates
  })
