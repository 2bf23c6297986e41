import { normalDays } from '../statistics/normal.ts'

/** Expected calvings by season day of the due date: entry i is `first` + i. */
export interface DueDays {
  readonly first: number
  readonly expected: readonly number[]
}

/** Expected calvings of a week, counted from the planned start: week 1 begins on it, week 0 and below come before. */
export interface CalvingWeek {
  readonly week: number
  readonly expected: number
  /** All of this week and the weeks before. */
  readonly cumulative: number
}

/** Calving comes so many days before or after the due date; beyond four deviations it is left out. */
const spreadDays = 5

/**
 * Calvings to come by week. A due date is an expectation: calving comes around it with a deviation of five days.
 *
 * @param due expected calvings by season day of the due date
 * @param plannedStart season day of the planned start of calving (mating start + days of gestation: 282)
 * @returns the weeks from the first to the last that hold a hundredth of a calving, without gaps
 * @source deviation: Norman et al., J Dairy Sci 92, 2009
 * @example calvingPattern({ first: 282, expected: [1] }, 282).map((w) => w.week) // [-1, 0, 1, 2]
 */
export function calvingPattern(due: DueDays, plannedStart: number): CalvingWeek[] {
  const reach = 4 * spreadDays
  const around = normalDays(0, spreadDays, -reach, reach)
  const weeks = new Map<number, number>()
  for (const [i, expected] of due.expected.entries()) {
    for (const [j, share] of around.entries()) {
      const week = Math.floor((due.first + i + j - reach - plannedStart) / 7) + 1
      weeks.set(week, (weeks.get(week) ?? 0) + expected * share)
    }
  }
  const shown = [...weeks].filter(([, expected]) => expected >= 0.01).map(([week]) => week)
  if (shown.length === 0) return []
  const [first, last] = [Math.min(...shown), Math.max(...shown)]
  let cumulative = [...weeks].reduce((sum, [week, expected]) => (week < first ? sum + expected : sum), 0)
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const expected = weeks.get(first + i) ?? 0
    cumulative += expected
    return { week: first + i, expected, cumulative }
  })
}
