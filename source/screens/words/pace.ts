/** The submission pace in words, the fullest first; a narrow screen takes the first that fits. */
import type { Pace } from '../../morning/pace.ts'

/**
 * @example paceWords({ served: 84, of: 118, target: 90, over: false })[0] // 'served in three weeks 84 of 118 (71 %), aim by now 90 %'
 */
export function paceWords({ served, of, target, over }: Pace): readonly string[] {
  const share = of === 0 ? '' : ` (${Math.round((100 * served) / of)} %)`
  const aim = `${Math.round(target)} %`
  const full = `served in three weeks ${served} of ${of}${share}, aim by now ${aim}`
  // Once the three weeks are over, the shorter words still say that only they count.
  return over
    ? [
        full,
        `in 3 weeks ${served} of ${of}${share}, aim ${aim}`,
        `in 3 weeks ${served}/${of}, aim ${aim}`,
        `3 weeks ${served}/${of}`,
      ]
    : [full, `served ${served} of ${of}${share}, aim ${aim}`, `served ${served}/${of}, aim ${aim}`]
}
