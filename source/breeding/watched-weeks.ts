import type { Day } from './day.ts'
import type { Season } from './season.ts'
import type { Standing } from './standing.ts'

/**
 * Which days of a season were watched: from the mating start on all; before it the weeks with a heat or a looked
 * fact in the block, and the week that the list's day lies in.
 *
 * @param standings of the animals of the block
 * @returns whether a day was watched
 */
export function watchedDays(
  season: Season,
  standings: readonly Standing[],
  today: Day,
): (day: Day) => boolean {
  const weekOf = (day: Day): number => Math.floor((day - season.matingStart) / 7)
  const watched = new Set<number>([weekOf(today)])
  for (const standing of standings) {
    for (const { fact, day } of standing.animal.happenings) {
      if (day >= season.matingStart || day >= today) break
      if (fact.kind === 'heat' || fact.kind === 'looked') watched.add(weekOf(day))
    }
  }
  return (day) => day >= season.matingStart || watched.has(weekOf(day))
}

/** Days from the first to the last, both included and counted from the first, on which nobody watched. */
export const unwatchedSince = (from: Day, to: Day, watched: (day: Day) => boolean): ReadonlySet<number> => {
  const days = new Set<number>()
  for (let day = from; day <= to; day = (day + 1) as Day) if (!watched(day)) days.add(day - from)
  return days
}
