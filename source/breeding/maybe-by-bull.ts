/** Whether she may be in calf to a bull that nobody saw serve her. */
import type { BullPeriod } from './bull-period.ts'
import { heatOfNow } from './questions.ts'
import type { Standing } from './standing.ts'

/** A calf of a time with him longer ago than this is born. */
const BORN_AFTER = 300

/**
 * Her times with a bull, by her own facts, since she calved or lost her calf. One left open over a calving is taken
 * for forgotten.
 */
const periodsSince = ({ bullPeriods, cycle: { opened } }: Standing): readonly BullPeriod[] =>
  bullPeriods.filter(({ from, to }) => opened === undefined || from >= opened || (to ?? -Infinity) >= opened)

/**
 * The last day, up to today, of a time with a bull from which she may be in calf: no sure heat has been seen after it,
 * and no check long enough after it found her empty. The heat she is on does not count: it is what is asked about.
 *
 * @param checkDays days after his last day at which a check finds his calf (42)
 * @returns undefined where no such time is known
 * @example maybeByBull(standing, 42) // the day he was taken out
 */
export function maybeByBull(standing: Standing, checkDays: number): BullPeriod | undefined {
  const { today, checks } = standing
  if (standing.inCalf) return undefined
  const before = standing.heats.filter((heat) => heat.sure && heat !== heatOfNow(standing))
  return periodsSince(standing).findLast(({ to }) => {
    const last = to ?? today
    return (
      today - last <= BORN_AFTER &&
      !before.some((heat) => heat.day > last) &&
      !checks.some((check) => check.fact.result === 'empty' && check.day - last >= checkDays)
    )
  })
}
