/**
 * The season ahead of a block: the animals' chances added up, over the conception rates that may be the true ones.
 */
import type { StrawKind } from '../facts.ts'
import { type CountDistribution, expectedCount } from '../statistics/poisson-binomial.ts'
import { averageOf, type Band, bandOf } from '../statistics/quantiles.ts'
import { finished, type Steps } from '../steps.ts'
import type { DueDays } from './calving-pattern.ts'
import type { HerdQuestion } from './outlook.ts'
import { type Counts, forecastPoint, type Point, weekEnds } from './point.ts'

/** A count to come: its mean, its middle, and ends that hold it at least 8 times in 10. */
export interface CountForecast extends Band {
  readonly expected: number
  readonly distribution: CountDistribution
}

export interface HerdForecast {
  readonly animals: number
  /** Conceived in the first six weeks, and in calf at the final check: what the figure of that name will be. */
  readonly inCalfSixWeeks: CountForecast
  /** Not in calf when the bull weeks begin (later: now), of those he may serve. */
  readonly openAtTurnOut: CountForecast
  /** Not in calf at the final check. */
  readonly emptyAtEnd: CountForecast
  /** Straws still to use. */
  readonly straws: Readonly<Record<StrawKind, CountForecast>>
  /** Heifer calves to be born to dairy straws. */
  readonly heiferCalves: CountForecast
  /** Expected number in calf on a morning: entry i is the morning of today + i. */
  readonly inCalf: readonly number[]
  /** By conception day: conceived by the end of each week from the mating start on, and in calf at the final check. */
  readonly conceivedBy: readonly ConceivedBy[]
  readonly due: DueDays
}

/** Conceived by the end of a season day, and in calf at the final check (later in the season: now). */
interface ConceivedBy extends CountForecast {
  readonly day: number
}

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length

function dueDays(points: readonly Point[]): DueDays {
  const days = points.flatMap(({ due }) => [...due.keys()])
  if (days.length === 0) return { first: 0, expected: [] }
  const first = days.reduce((a, b) => Math.min(a, b))
  const last = days.reduce((a, b) => Math.max(a, b))
  const expected = Array.from({ length: last - first + 1 }, (_, i) =>
    mean(points.map((p) => p.due.get(first + i) ?? 0)),
  )
  return { first, expected }
}

/**
 * The season ahead of a block. Exact given the rates; the distributions of the counts are averaged over the conception
 * rates, so that the bands hold both chance and what is not known of the rates.
 *
 * @param question animals of the block, season days, rates, conception rates (nine points of what is known), bulls
 * @throws RangeError without conception rates: a programming error
 * @example forecastHerd({ animals, season, rates, conception: conceptionPoints(own) }).inCalfSixWeeks.middle // 118
 */
export const forecastHerd = (question: HerdQuestion): HerdForecast => finished(forecastHerdInSteps(question))

/** The same in steps of a few animals each. */
export function* forecastHerdInSteps(question: HerdQuestion): Steps<HerdForecast> {
  const points: Point[] = []
  for (const conception of question.conception) points.push(yield* forecastPoint(question, conception))
  const over = (distributions: readonly CountDistribution[]): CountForecast => {
    const distribution = averageOf(distributions)
    return { expected: expectedCount(distribution), ...bandOf(distribution), distribution }
  }
  const count = (key: keyof Counts): CountForecast => over(points.map(({ counts }) => counts[key]))
  const mornings = points[0]?.inCalf.length ?? 0
  return {
    animals: question.animals.length,
    inCalfSixWeeks: count('inCalfSixWeeks'),
    openAtTurnOut: count('openAtTurnOut'),
    emptyAtEnd: count('emptyAtEnd'),
    straws: { conventional: count('conventional'), sexed: count('sexed'), beef: count('beef') },
    heiferCalves: count('heiferCalves'),
    inCalf: Array.from({ length: mornings }, (_, i) =>
      mean(points.map((point) => point.inCalf[i] as number)),
    ),
    conceivedBy: weekEnds(question.season).map((day, i) => ({
      day,
      ...over(points.map(({ conceivedBy }) => conceivedBy[i] as CountDistribution)),
    })),
    due: dueDays(points),
  }
}
