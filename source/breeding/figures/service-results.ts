/**
 * How services ended: held, failed, or not known.
 */
import type { HerdBook } from '../book.ts'
import { type BullPeriod, bullWeeks } from '../bull-period.ts'
import type { Cycle, Service } from '../cycle.ts'
import type { Day } from '../day.ts'
import { gestationDays } from '../gestation.ts'
import { conceptionOf, countsFor } from '../pregnancy.ts'
import { sireOf } from '../sire.ts'
import type { Standing } from '../standing.ts'

export type ServiceEnd = 'held' | 'failed' | 'unknown'

export interface ServiceResult {
  readonly standing: Standing
  readonly cycle: Cycle
  readonly service: Service
  readonly end: ServiceEnd
}

/** A calving so many days around the due date of a service is its calving. */
const CALVING_WITHIN = 12

/** The bull periods that a cycle's checks are read against: her own, else the bull weeks of her block. */
function periodsOf(standing: Standing, book: HerdBook, cycle: Cycle): readonly BullPeriod[] {
  const own = standing.bullPeriods.filter(
    ({ to }) => cycle.opened === undefined || (to ?? standing.today) >= cycle.opened,
  )
  if (own.length > 0 || standing.block === undefined) return own
  return bullWeeks(book.seasons.get(standing.block) ?? [])
}

/** The services of a cycle that a pregnant result or a calving belongs to. */
function heldIn(
  standing: Standing,
  book: HerdBook,
  cycle: Cycle,
  calved: Day | undefined,
): ReadonlySet<Service> {
  const held = new Set<Service>()
  const checks = cycle.checks.filter(({ fact }) => fact.result === 'pregnant')
  if (checks.length === 0 && calved === undefined) return held
  const periods = checks.length === 0 ? [] : periodsOf(standing, book, cycle)
  const found = checks.map((check) => conceptionOf(cycle, check, periods, book.policy))
  for (const conception of found)
    if (conception?.service !== undefined && !conception.aiOrBull) held.add(conception.service)
  if (found.length > 0 || calved === undefined) return held
  const early = (service: Service): number =>
    service.day +
    gestationDays(service.sire === undefined ? {} : sireOf(book, service.sire), service.maiden, book.policy) -
    calved
  const [nearest] = cycle.services.toSorted((a, b) => Math.abs(early(a)) - Math.abs(early(b)))
  if (nearest !== undefined && Math.abs(early(nearest)) <= CALVING_WITHIN) held.add(nearest)
  return held
}

/** Checked empty to it, or a sure heat or a service 18 days or more later. */
function hasFailed({ cycle, service, standing }: Omit<ServiceResult, 'end'>, { policy }: HerdBook): boolean {
  for (const heat of cycle.heats) {
    if (heat.service === service) continue
    const { service: other, sureOn } = heat
    const known = other !== undefined || (sureOn !== undefined && sureOn < standing.today)
    if (known && (other?.day ?? heat.day) - service.day >= policy.watchFrom) return true
  }
  return cycle.checks.some((check) => check.fact.result === 'empty' && countsFor(check, service, policy))
}

function resultsOf(standing: Standing, book: HerdBook): ServiceResult[] {
  const { cycles, today } = standing
  const results: ServiceResult[] = []
  for (const [i, cycle] of cycles.entries()) {
    if (cycle.services.length === 0) continue
    const next = cycles[i + 1]
    const calved = next?.openedBy === 'calving' && next.opened !== today ? next.opened : undefined
    const held = heldIn(standing, book, cycle, calved)
    for (const service of cycle.services) {
      const failed = !held.has(service) && hasFailed({ standing, cycle, service }, book)
      results.push({
        standing,
        cycle,
        service,
        end: held.has(service) ? 'held' : failed ? 'failed' : 'unknown',
      })
    }
  }
  return results
}

const known = new WeakMap<Standing, readonly ServiceResult[]>()

/**
 * How each service of an animal ended, as known on the morning of the standing's day: facts of the day itself say
 * nothing yet. Held: a pregnant result belongs to it, or without any such result a calving within 12 days of its due
 * date. Where a bull may as well be the sire, it is not known. Found once for a standing and kept.
 *
 * @returns in order of day, all cycles
 * @example serviceResults(standing, book).map(({ end }) => end) // ['failed', 'held']
 */
export function serviceResults(standing: Standing, book: HerdBook): readonly ServiceResult[] {
  const found = known.get(standing)
  if (found !== undefined) return found
  const results = resultsOf(standing, book)
  known.set(standing, results)
  return results
}
