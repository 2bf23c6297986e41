import type { Day } from '../day.ts'
import type { ServiceFact, SessionName } from '../facts.ts'
import { type Figure, figureOf } from './figure.ts'
import type { ServiceEnd, ServiceResult } from './service-results.ts'

/** An AI service with its place among those of its animal in the season, 1 the first. */
export interface OrderedService extends ServiceResult {
  readonly order: number
}

const WEEK = 7

/**
 * The day to which services were checked: the last of a week of services of which at least half were, those back in heat
 * left out. Of later ones only failures are known. Undefined before any check.
 */
function checkedTo(services: readonly ServiceResult[]): Day | undefined {
  const awaited = services.filter(({ service, checked, end }) => service.ai && (checked || end === 'unknown'))
  const isChecked = (to: Day): boolean => {
    const week = awaited.filter(({ service: { day } }) => day <= to && day > to - WEEK)
    return 2 * week.filter(({ checked }) => checked).length >= week.length
  }
  const days = awaited.filter(({ checked }) => checked).map(({ service }) => service.day)
  return days.toSorted((one, other) => other - one).find(isChecked)
}

/**
 * The AI services of animals, each with its order. The end of those made after the services that were checked counts as
 * unknown: their failures are known, their pregnancies are not yet.
 */
export function aiServices(animals: readonly (readonly ServiceResult[])[]): OrderedService[] {
  const to = checkedTo(animals.flat())
  return animals.flatMap((services) =>
    services
      .filter(({ service }) => service.ai)
      .map((result, i) => {
        const isFair = to !== undefined && result.service.day <= to
        return { ...result, order: i + 1, end: isFair ? result.end : 'unknown' }
      }),
  )
}

/** Younger services count as unknown: failures are known weeks before pregnancies, and would make any herd look bad. */
const DAYS_OLD = 42

/** How a service counts: its end, not known before it is 42 days old. */
export const countedEnd = ({ service, standing, end }: ServiceResult): ServiceEnd =>
  standing.today - service.day >= DAYS_OLD ? end : 'unknown'

/**
 * Held, of the services with a result that are 42 days old or more; the others are unknown.
 *
 * @example heldOf(services).percent // 53.9
 */
export function heldOf(services: readonly ServiceResult[]): Figure {
  const held = services.filter((one) => countedEnd(one) === 'held').length
  const failed = services.filter((one) => countedEnd(one) === 'failed').length
  return figureOf(held, held + failed, { unknown: services.length - held - failed })
}

/** What services can be told apart by. */
export const groupings = ['order', 'sire', 'straw', 'inseminator', 'parity', 'session'] as const
export type Grouping = (typeof groupings)[number]

/** Calvings from here on are one group. */
const MANY_CALVINGS = 4

/** The milking of a service: the one recorded, else that of its time. */
function sessionOf({ session, time }: ServiceFact): SessionName | undefined {
  if (session !== undefined || time === undefined) return session
  if (time === 'morning' || time === 'evening') return time
  return time < '12:00' ? 'morning' : 'evening'
}

/** The group that a service belongs to. */
export const keyOf: Readonly<Record<Grouping, (one: OrderedService) => string | undefined>> = {
  order: ({ order }) => String(order),
  sire: ({ service }) => service.sire,
  straw: ({ service }) => service.straw,
  inseminator: ({ service }) => service.facts.findLast((fact) => fact.inseminator !== undefined)?.inseminator,
  parity: ({ service }) => String(Math.min(MANY_CALVINGS, service.parity)),
  session: ({ service }) => service.facts.map(sessionOf).findLast((session) => session !== undefined),
}

/** One group; the key is undefined where it was not recorded. Parity 4 is four and more. */
export interface ConceptionGroup {
  readonly key: string | undefined
  readonly figure: Figure
}

/**
 * Conception of AI services by group, those with most services first; by order and parity in their own order.
 *
 * @example conceptionBy(services, 'straw')[0] // { key: 'conventional', figure: { numerator: 41, denominator: 76, ... } }
 */
export function conceptionBy(services: readonly OrderedService[], grouping: Grouping): ConceptionGroup[] {
  const groups = [...Map.groupBy(services, keyOf[grouping])]
  const inOrder = grouping === 'order' || grouping === 'parity'
  groups.sort(([a, one], [b, other]) => (inOrder ? Number(a) - Number(b) : other.length - one.length))
  return groups.map(([key, group]) => ({ key, figure: heldOf(group) }))
}

/** AI services for each pregnancy by AI, of services with a result. */
export function servicesPerPregnancy(services: readonly ServiceResult[]): {
  readonly services: number
  readonly pregnancies: number
  readonly ratio: number | undefined
} {
  const { numerator, denominator } = heldOf(services)
  return {
    services: denominator,
    pregnancies: numerator,
    ratio: numerator === 0 ? undefined : denominator / numerator,
  }
}
