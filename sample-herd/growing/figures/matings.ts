/** Services and conceptions of a season, read from the facts. */
import { type Day, isoDay } from '../../../source/breeding/day.ts'
import type { SeasonFact } from '../../../source/breeding/facts.ts'
import type { Life } from './ledger.ts'

export const aiDays = (season: SeasonFact): number => 7 * season.aiWeeks
export const endOf = (season: SeasonFact): number => 7 * (season.aiWeeks + season.bullWeeks)

/** AI of one life in a season, one a heat. */
export function servicesIn(life: Life, season: SeasonFact): Day[] {
  const start = isoDay(season.matingStart)
  const days = life.services
    .filter(({ day, fact }) => fact.natural !== true && day >= start && day < start + aiDays(season))
    .map(({ day }) => day)
  return days.filter((day, index) => index === 0 || day - (days[index - 1] as Day) > 1)
}

/** The day she conceived in the season, told by the calf she had, or by the last scan where she left or is still to calve. */
export function conceived(life: Life, season: SeasonFact): Day | undefined {
  const start = isoDay(season.matingStart)
  const end = start + endOf(season) + 90
  const calved = life.calvings.find((day) => day > start + 240 && day < start + endOf(season) + 305)
  if (calved !== undefined) return (calved - 281) as Day
  const last = life.checks.findLast(({ day }) => day > start && day < end + 60)
  if (last?.fact.result !== 'pregnant' || last.fact.foetalAge === undefined) return undefined
  return (last.day - last.fact.foetalAge) as Day
}

/** The service, if any, that a conception day belongs to. */
export const serviceOf = (services: readonly Day[], day: Day | undefined): Day | undefined =>
  day === undefined ? undefined : services.findLast((service) => Math.abs(service - day) <= 10)

/** Whether a scan found her in calf to a service, whatever became of it. */
export const heldAtScan = (life: Life, service: Day): boolean =>
  life.checks.some(
    ({ day, fact }) =>
      fact.result === 'pregnant' &&
      fact.foetalAge !== undefined &&
      Math.abs(day - fact.foetalAge - service) <= 8,
  )
