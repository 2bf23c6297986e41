/**
 * The season ahead of a block: the animals' chances added up, over the conception rates that may be the true ones.
 */
import { survivalByAge } from '../chances/losses.ts'
import type { Rates } from '../chances/rates.ts'
import type { StrawKind } from '../facts.ts'
import { SIX_WEEKS } from '../season.ts'
import {
  type CountDistribution,
  expectedCount,
  howMany,
  sumOfCounts,
} from '../statistics/poisson-binomial.ts'
import { averageOf, type Band, bandOf } from '../statistics/quantiles.ts'
import { finished, mapInSteps, type Steps } from '../steps.ts'
import { type AnimalForecast, endAi, finish, forecastAnimal, runTo } from './animal.ts'
import { bullFindsWith } from './bulls.ts'
import { conceivedChances } from './conceived.ts'
import type { ConceptionRates } from './conception-points.ts'
import { begin } from './course.ts'
import type { AnimalOutlook, Conception, SeasonDays } from './outlook.ts'

/** A count to come: its mean, its middle, and ends that hold it at least 8 times in 10. */
export interface CountForecast extends Band {
  readonly expected: number
  readonly distribution: CountDistribution
}

/** Expected calvings by season day of the due date: entry i is `first` + i. */
export interface DueDays {
  readonly first: number
  readonly expected: readonly number[]
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

interface HerdQuestion {
  readonly animals: readonly AnimalOutlook[]
  readonly season: SeasonDays
  readonly rates: Rates
  /** Conception rates, equally likely to be the true ones; at least one. */
  readonly conception: readonly ConceptionRates[]
  /** Working bulls in the bull weeks; absent: as many as are needed. */
  readonly bulls?: number
}

type Counts = Record<
  'inCalfSixWeeks' | 'openAtTurnOut' | 'emptyAtEnd' | 'heiferCalves' | StrawKind,
  CountDistribution
>

interface Point {
  readonly counts: Counts
  readonly conceivedBy: readonly CountDistribution[]
  readonly inCalf: readonly number[]
  readonly due: ReadonlyMap<number, number>
}

/** Entry of the morning after the last day of AI, or of today where that is past. */
const turnOut = ({ today, lastAiDay }: SeasonDays): number => Math.max(0, lastAiDay + 1 - today)

const at = (values: readonly number[], i: number): number => values[Math.min(i, values.length - 1)] ?? 0

/** The last day of each week of a season, and its last day. */
const weekEnds = ({ lastBullDay }: SeasonDays): number[] => {
  const days = Array.from({ length: Math.floor((lastBullDay + 1) / 7) }, (_, week) => 7 * week + 6)
  return days.at(-1) === lastBullDay ? days : [...days, lastBullDay]
}

/** Chance that a calf of these conceptions is born, a heifer, and of a dairy straw. */
function heiferChance(conceptions: readonly Conception[], rates: Rates): number {
  const survival = survivalByAge(rates.losses)
  let chance = 0
  for (const { by, share, gestation } of conceptions) {
    if (by !== 'sexed' && by !== 'conventional') continue
    const female = by === 'sexed' ? rates.femaleSexed : rates.femaleOther
    chance += share * female * at(survival, gestation)
  }
  return chance
}

/** Those that the bull may serve. */
const mayBeServed = (animal: AnimalOutlook, season: SeasonDays): boolean =>
  animal.earliestDay <= season.lastBullDay

const openChances = (
  animals: readonly AnimalOutlook[],
  each: readonly AnimalForecast[],
  season: SeasonDays,
): number[] =>
  each
    .filter((_, i) => mayBeServed(animals[i] as AnimalOutlook, season))
    .map(({ inCalf }) => 1 - at(inCalf, turnOut(season)))

const total = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0)

/** The forecasts of each animal. Where bulls are short, those open at turn-out decide what they find. */
function* forecastEach(
  { animals, season, bulls }: HerdQuestion,
  rates: Rates,
): Steps<readonly AnimalForecast[]> {
  if (bulls !== undefined && season.today <= season.lastAiDay) {
    const courses = yield* mapInSteps(animals, (animal) => {
      const course = begin(animal, season, rates)
      runTo(course, season.lastAiDay + 1, rates.bullFinds)
      endAi(course, season.lastAiDay + 1)
      return course
    })
    const open = courses.map(({ animal, tracks }) =>
      mayBeServed(animal, season) ? 1 - total(tracks.map(({ inCalf }) => inCalf)) : 0,
    )
    const finds = bullFindsWith(bulls, total(open), rates)
    return yield* mapInSteps(courses, (course) => finish(course, finds))
  }
  const each = yield* mapInSteps(animals, (animal) => forecastAnimal(animal, season, rates))
  if (bulls === undefined) return each
  const finds = bullFindsWith(bulls, total(openChances(animals, each, season)), rates)
  if (finds === rates.bullFinds) return each
  return yield* mapInSteps(animals, (animal) => forecastAnimal(animal, season, rates, finds))
}

function* forecastPoint(question: HerdQuestion, conception: ConceptionRates): Steps<Point> {
  const { animals, season } = question
  const rates = { ...question.rates, conception }
  const each = yield* forecastEach(question, rates)
  const strawCounts = (kind: StrawKind) =>
    sumOfCounts(each.map(({ straws }) => ({ first: 0, chances: straws[kind] })))
  const survival = survivalByAge(rates.losses)
  const inCalf: number[] = []
  const due = new Map<number, number>()
  for (const animal of each) {
    for (const [i, chance] of animal.inCalf.entries()) inCalf[i] = (inCalf[i] ?? 0) + chance
    for (const { day, share, gestation } of animal.conceptions) {
      due.set(day + gestation, (due.get(day + gestation) ?? 0) + share * at(survival, gestation))
    }
  }
  const weeks = weekEnds(season)
  const days = [...weeks, SIX_WEEKS, season.lastBullDay]
  const shownOn = Math.max(season.today - 1, season.finalCheckDay)
  const conceived = yield* mapInSteps(each, ({ conceptions }) =>
    conceivedChances(conceptions, days, shownOn, rates.losses),
  )
  yield
  const conceivedBy = yield* mapInSteps(
    weeks.keys(),
    (i) => howMany(conceived.map((chances) => chances[i] as number)),
    4,
  )
  yield
  return {
    conceivedBy,
    counts: {
      inCalfSixWeeks: howMany(conceived.map((chances) => chances.at(-2) as number)),
      openAtTurnOut: howMany(openChances(animals, each, season)),
      emptyAtEnd: howMany(conceived.map((chances) => 1 - (chances.at(-1) as number))),
      heiferCalves: howMany(each.map((animal) => heiferChance(animal.conceptions, rates))),
      conventional: strawCounts('conventional'),
      sexed: strawCounts('sexed'),
      beef: strawCounts('beef'),
    },
    inCalf,
    due,
  }
}

const mean = (values: readonly number[]): number => total(values) / values.length

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
    inCalf: Array.from({ length: mornings }, (_, i) => mean(points.map((point) => point.inCalf[i] ?? 0))),
    conceivedBy: weekEnds(question.season).map((day, i) => ({
      day,
      ...over(points.map(({ conceivedBy }) => conceivedBy[i] as CountDistribution)),
    })),
    due: dueDays(points),
  }
}
