/** Which facts of the list's day tick a row. */
import type { FactKind } from './facts.ts'
import type { Section } from './list.ts'
import type { Standing } from './standing.ts'

const tickedBy: Readonly<Record<Exclude<Section, 'take-care' | 'sweep-bull'>, readonly FactKind[]>> = {
  serve: ['service', 'to-bull', 'hold', 'bar'],
  'second-service': ['service', 'to-bull', 'hold', 'bar'],
  'repeat-heat-watch': ['looked', 'check', 'service'],
  'pregnancy-check': ['check'],
  'no-heat-seen': ['heat', 'examined', 'hold', 'check'],
  'heat-record': ['heat', 'examined', 'hold', 'check'],
}

/**
 * Whether the facts of the day tick her row in a section: take-care any fact about her other than a heat; the sweep
 * bull when she is with a bull on the day or a natural service is dated on it; else the kinds of the section.
 */
export function doneToday(standing: Standing, section: Section): boolean {
  const { todays } = standing
  if (section === 'take-care') return todays.some((fact) => fact.kind !== 'heat')
  if (section === 'sweep-bull') return withBullToday(standing)
  return todays.some((fact) => tickedBy[section].includes(fact.kind))
}

function withBullToday(standing: Standing): boolean {
  if (standing.bullPeriods.some((period) => period.to === undefined)) return true
  return standing.todays.some(
    (fact) => fact.kind === 'with-bull' || (fact.kind === 'service' && fact.natural === true),
  )
}
