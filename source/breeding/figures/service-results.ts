/**
 * How services ended: held, failed, or not known.
 */
import type { HerdBook } from '../book.ts'
import { type BullPeriod, bullWeeks } from '../bull-period.ts'
import type { Check, Cycle, Service } from '../cycle.ts'
import type { Day } from '../day.ts'
import { gestationDays } from '../gestation.ts'
import { countsFor, type Pregnancy, pregnancyAfter } from '../pregnancy.ts'
import { sireOf } from '../sire.ts'
import type { Standing } from '../standing.ts'

export type ServiceEnd = 'held' | 'failed' | 'unknown'

export interface ServiceResult {
  readonly standing: Standing
  readonly cycle: Cycle
  readonly service: Service
  readonly end: ServiceEnd
  /** A check that counts for it, or a calving, has spoken, whatever it said. */
  readonly checked: boolean
}

/** A calving so many days around the due date of a service is its calving. */
const CALVING_WITHIN = 12

/** The bull periods that a cycle's checks are read against: her own, else the bull weeks of her block. */
export function periodsOfCycle(standing: Standing, book: HerdBook, cycle: Cycle): readonly BullPeriod[] {
  const own = standing.bullPeriods.filter(
    ({ to }) => cycle.opened === undefined || (to ?? standing.today) >= cycle.opened,
  )
  if (own.length > 0 || standing.block === undefined) return own
  return bullWeeks(book.seasons.get(standing.block) ?? [])
}

/** What the pregnant results and the calving of a cycle say of its services. */
interface Found {
  /** Those that one of them belongs to. */
  readonly held: readonly Service[]
  /** The last day on which she conceived by a pregnant result. */
  readonly conceived: Day | undefined
}

const nothing: Found = { held: [], conceived: undefined }

/** A foetal age within so many days of a service tells it from a bull that came after it. */
const AGE_WITHIN = 7

const agrees = ({ day, fact }: Check, service: Service): boolean =>
  fact.foetalAge !== undefined && Math.abs(day - fact.foetalAge - service.day) <= AGE_WITHIN

function foundIn(standing: Standing, book: HerdBook, cycle: Cycle, calved: Day | undefined): Found {
  const found = cycle.checks.some(({ fact }) => fact.result === 'pregnant')
  if (!found && calved === undefined) return nothing
  const held: Service[] = []
  const periods = found ? periodsOfCycle(standing, book, cycle) : []
  let conceived: Day | undefined
  let pregnancy: Pregnancy | undefined
  for (const check of cycle.checks) {
    pregnancy = pregnancyAfter(pregnancy, check, cycle, periods, book.policy)
    if (check.fact.result !== 'pregnant' || pregnancy?.conception === undefined) continue
    const { day, service, aiOrBull } = pregnancy.conception
    if (conceived === undefined || day > conceived) conceived = day
    if (service !== undefined && (!aiOrBull || agrees(check, service))) held.push(service)
  }
  if (found || calved === undefined) return { held, conceived }
  const early = (service: Service): number =>
    service.day +
    gestationDays(service.sire === undefined ? {} : sireOf(book, service.sire), service.maiden, book.policy) -
    calved
  const [nearest] = cycle.services.toSorted((a, b) => Math.abs(early(a)) - Math.abs(early(b)))
  if (nearest !== undefined && Math.abs(early(nearest)) <= CALVING_WITHIN) held.push(nearest)
  return { held, conceived }
}

/** Checked empty to it, or a sure heat, a service or a conception 18 days or more later. */
function hasFailed(
  { cycle, service, standing }: Omit<ServiceResult, 'end'>,
  conceived: Day | undefined,
  { policy }: HerdBook,
): boolean {
  if (conceived !== undefined && conceived - service.day >= policy.watchFrom) return true
  for (const heat of cycle.heats) {
    if (heat.service === service) continue
    const { service: other, sureOn } = heat
    const known = other !== undefined || (sureOn !== undefined && sureOn < standing.today)
    if (known && (other?.day ?? heat.day) - service.day >= policy.watchFrom) return true
  }
  return cycle.checks.some((check) => check.fact.result === 'empty' && countsFor(check, service, policy))
}

/** How each service of the cycle at a place among her cycles ended. */
function resultsIn(standing: Standing, book: HerdBook, place: number): readonly ServiceResult[] {
  const { cycles, today } = standing
  const cycle = cycles[place]
  if (cycle === undefined || cycle.services.length === 0) return []
  const next = cycles[place + 1]
  const calved = next?.openedBy === 'calving' && next.opened !== today ? next.opened : undefined
  const { held, conceived } = foundIn(standing, book, cycle, calved)
  return cycle.services.map((service) => {
    const checked = calved !== undefined || cycle.checks.some((one) => countsFor(one, service, book.policy))
    const asked = { standing, cycle, service, checked }
    if (held.includes(service)) return { ...asked, end: 'held' }
    return { ...asked, end: hasFailed(asked, conceived, book) ? 'failed' : 'unknown' }
  })
}

/**
 * How the services of her cycles that were served on a day or later ended; see serviceResults.
 *
 * @param since cycles whose last service is older are passed over
 * @example resultsSince(standing, book, plusDays(today, -730)).length // 4
 */
export function resultsSince(standing: Standing, book: HerdBook, since: number): readonly ServiceResult[] {
  const results: ServiceResult[] = []
  for (const [place, { services }] of standing.cycles.entries()) {
    const last = services[services.length - 1]
    if (last !== undefined && last.day >= since) results.push(...resultsIn(standing, book, place))
  }
  return results
}

const known = new WeakMap<Standing, readonly ServiceResult[]>()

/**
 * How each service of an animal ended, as known on the morning of the standing's day: facts of the day itself say
 * nothing yet. Held: a pregnant result belongs to it, or without any such result a calving within 12 days of its due
 * date. Where a bull may as well be the sire and no foetal age tells, it is not known. Found once for a standing and kept.
 *
 * @returns in order of day, all cycles
 * @example serviceResults(standing, book).map(({ end }) => end) // ['failed', 'held']
 */
export function serviceResults(standing: Standing, book: HerdBook): readonly ServiceResult[] {
  const found = known.get(standing)
  if (found !== undefined) return found
  const results = resultsSince(standing, book, Number.NEGATIVE_INFINITY)
  known.set(standing, results)
  return results
}
