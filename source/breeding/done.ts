/** Which facts of the list's day tick a row. */
import type { FactKind } from './facts.ts'
import type { Reason, Section } from './sections.ts'
import type { Standing } from './standing.ts'

const tickedBy: Readonly<Record<Exclude<Section, 'take-care' | 'sweep-bull'>, readonly FactKind[]>> = {
  serve: ['service', 'to-bull', 'hold'],
  'second-service': ['service', 'to-bull', 'hold'],
  'repeat-heat-watch': ['looked', 'check', 'service'],
  'pregnancy-check': ['check'],
  // A service of the day is seen as its heat.
  'no-heat-seen': ['heat', 'service', 'examined', 'hold', 'check'],
  'heat-record': ['heat', 'service', 'examined', 'hold', 'check'],
}

/** What puts an animal in Take care does not tick her there: a loss of today is still to be dealt with. */
const toBeDealtWith: ReadonlySet<FactKind> = new Set(['heat', 'calving', 'loss'])
/** She is gone, or nobody means to breed her any more: no section but Take care has work with her. */
const endsWork: ReadonlySet<FactKind> = new Set(['left', 'bar'])
/** With the bull is the danger here, and no tick. */
const keptFromBull: ReadonlySet<FactKind> = new Set(['from-bull', 'hold'])

/**
 * Whether the facts of the day tick her row: take-care any fact about her that did not put her there; the sweep bull
 * when she is with a bull on the day or any service is dated on it, by AI too, or, where she is to be kept from him, when
 * that was seen to; else the kinds of the section. That she left or is not to be bred any more ticks any row.
 *
 * @param reason the one that placed her first
 */
export function doneToday(standing: Standing, section: Section, reason: Reason): boolean {
  const { todays } = standing
  if (section === 'take-care') return todays.some((fact) => !toBeDealtWith.has(fact.kind))
  if (todays.some((fact) => endsWork.has(fact.kind))) return true
  if (section === 'sweep-bull')
    return reason === 'keep-from-bull'
      ? todays.some((fact) => keptFromBull.has(fact.kind))
      : withBullToday(standing)
  return todays.some((fact) => tickedBy[section].includes(fact.kind))
}

/**
 * Whether a fact of the day, by its kind alone, ticks the rows of a section and moves none of them on the list.
 *
 * @example ticksRow('repeat-heat-watch', 'looked') // true
 * @example ticksRow('no-heat-seen', 'heat') // false: she may now stand elsewhere
 */
export const ticksRow = (section: Section, kind: FactKind): boolean =>
  section !== 'take-care' &&
  section !== 'sweep-bull' &&
  kind !== 'heat' &&
  (endsWork.has(kind) || tickedBy[section].includes(kind))

function withBullToday(standing: Standing): boolean {
  if (standing.bullPeriods.some((period) => period.to === undefined)) return true
  return standing.todays.some((fact) => fact.kind === 'with-bull' || fact.kind === 'service')
}
