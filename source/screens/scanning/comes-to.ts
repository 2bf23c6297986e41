import type { Day } from '../../breeding/day.ts'
import type { Pregnancy } from '../../breeding/pregnancy.ts'
import { dayAndMonth } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { scanningWords } from '../words/scanning.ts'

/**
 * What a result in calf comes to: to which service, and when she is due.
 *
 * @example comesTo(pregnancy, due) // 'AI of 28 May, S17, due 6 Mar'
 */
export function comesTo(pregnancy: Pregnancy | undefined, due: Day | undefined): string {
  const conception = pregnancy?.conception
  if (conception === undefined) return ''
  const when = dayAndMonth(conception.day)
  const to =
    conception.basis === 'age-alone'
      ? scanningWords.byAge(when)
      : conception.service === undefined || !conception.service.ai
        ? scanningWords.toBull(when)
        : conception.aiOrBull
          ? scanningWords.toAiOrBull(when)
          : scanningWords.toAi(when, safeText(conception.sire ?? ''))
  return due === undefined ? to : `${to}, ${scanningWords.due(dayAndMonth(due))}`
}
