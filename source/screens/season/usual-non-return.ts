import { conceptionOfService, returnsOf } from '../../breeding/animal-chances.ts'
import { countsForNonReturn } from '../../breeding/figures/returns.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'

/** Days of the non-return figure. */
const DAYS = 24

/**
 * The share of the services counted in the non-return at 24 days that would not be back if each held as often as the
 * herd's rates say: those that hold, and those that fail and are not seen again in time. Percent; undefined without any.
 *
 * @example usualNonReturn(view) // 69.7
 */
export function usualNonReturn({ counted, rates: { rates } }: SeasonView): number | undefined {
  const services = counted.ai.filter((result) => countsForNonReturn(result, DAYS))
  if (services.length === 0) return undefined
  const chances = services.map(({ service }) => {
    const held = conceptionOfService(service, rates)
    return held + (1 - held) * (1 - (returnsOf(service, rates).byDay[DAYS] ?? 0))
  })
  return (100 * chances.reduce((a, b) => a + b, 0)) / chances.length
}
