/** When a bull was with an animal. */
import type { AnimalRecord } from './book.ts'
import type { Day } from './day.ts'
import { dayOfSeason, type Season } from './season.ts'

export interface BullPeriod {
  readonly from: Day
  /** Last day with the bull; undefined while he is still with her. */
  readonly to: Day | undefined
  readonly bull: string | undefined
}

/**
 * The periods recorded for an animal by facts that count, oldest first. `from-bull` without a bull ends all open
 * periods, with one his.
 *
 * @param counts whether a fact of that day counts (facts of the list's day do not)
 */
export function bullPeriods(animal: AnimalRecord, counts: (day: Day) => boolean): readonly BullPeriod[] {
  const periods: { from: Day; to: Day | undefined; bull: string | undefined }[] = []
  for (const { fact, day } of animal.happenings) {
    if (!counts(day)) continue
    if (fact.kind === 'with-bull') periods.push({ from: day, to: undefined, bull: fact.bull })
    else if (fact.kind === 'from-bull') {
      for (const period of periods) {
        if (
          period.to === undefined &&
          (fact.bull === undefined || period.bull === undefined || period.bull === fact.bull)
        )
          period.to = day
      }
    }
  }
  return periods
}

/** The bull weeks of the seasons of a block, for animals that have no period of their own. */
export const bullWeeks = (seasons: readonly Season[]): readonly BullPeriod[] =>
  seasons
    .filter((season) => season.bullEnd > season.aiEnd)
    .map((season) => ({
      from: dayOfSeason(season, season.aiEnd + 1),
      to: dayOfSeason(season, season.bullEnd),
      bull: undefined,
    }))

/**
 * The last day up to today on which a bull was with an animal.
 *
 * @param periods her own, or her block's
 * @param services days of a bull's services, which tell of him where no period does
 */
export function lastDayWithBull(
  periods: readonly BullPeriod[],
  services: readonly Day[],
  today: Day,
): Day | undefined {
  const days = periods
    .filter((period) => period.from <= today)
    .map((period) => Math.min(period.to ?? today, today))
    .concat(services)
  return days.length === 0 ? undefined : (Math.max(...days) as Day)
}
