/** The submission pace in words, the fullest first; a narrow screen takes the first that fits. */
import type { Pace } from '../../morning/pace.ts'

const percent = (share: number): string => `${Math.round(share * 100)} %`

/** @example paceWords({ served: 84, of: 118, target: 0.9 })[0] // 'served 84 of 118 (71 %), aim by now 90 %' */
export function paceWords({ served, of, target }: Pace): readonly string[] {
  const share = of === 0 ? '' : ` (${percent(served / of)})`
  return [
    `served in three weeks ${served} of ${of}${share}, aim by now ${percent(target)}`,
    `served ${served} of ${of}${share}, aim ${percent(target)}`,
    `served ${served}/${of}, aim ${percent(target)}`,
  ]
}
