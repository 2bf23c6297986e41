/** What each pregnancy check of an animal counted for. */
import type { HerdBook } from './book.ts'
import type { Check, Service } from './cycle.ts'
import { periodsOfCycle } from './figures/service-results.ts'
import { type Conception, type Pregnancy, pregnancyAfter, serviceCounted } from './pregnancy.ts'
import type { Standing } from './standing.ts'

export interface CheckCounted {
  readonly check: Check
  /** Of a pregnant result: the conception that it tells of or keeps; undefined where nothing fits. */
  readonly conception: Conception | undefined
  /** Of another result: the service that it counts for; undefined where it came too soon after every one. */
  readonly service: Service | undefined
  /** Whether she had been served in that cycle at all. */
  readonly served: boolean
}

/**
 * The checks of all her cycles with what each counted for, the newest first.
 *
 * @example checksCounted(standing, book)[0]?.service?.day // the day of the service that the last empty result ruled out
 */
export const checksCounted = (standing: Standing, book: HerdBook): readonly CheckCounted[] =>
  standing.cycles
    .flatMap((cycle) => {
      const periods = periodsOfCycle(standing, book, cycle)
      let pregnancy: Pregnancy | undefined
      return cycle.checks.map((check): CheckCounted => {
        pregnancy = pregnancyAfter(pregnancy, check, cycle, periods, book.policy)
        const pregnant = check.fact.result === 'pregnant'
        const served = cycle.services.some(({ day }) => day <= check.day)
        return {
          check,
          conception: pregnant ? pregnancy?.conception : undefined,
          service: pregnant ? undefined : serviceCounted(cycle, check, book.policy),
          served,
        }
      })
    })
    .toReversed()
