/**
 * The season ahead of a block with conception rates that are taken for the true ones: the animals' chances added up.
 */
import { survivalByAge } from '../chances/losses.ts'
import type { Rates } from '../chances/rates.ts'
import type { StrawKind } from '../facts.ts'
import { SIX_WEEKS } from '../season.ts'
import { type CountDistribution, howMany, sumOfCounts } from '../statistics/poisson-binomial.ts'
import { mapInSteps, type Steps } from '../steps.ts'
import { conceivedChances } from './conceived.ts'
import type { ConceptionRates } from './conception-points.ts'
import { forecastEach, openAtTurnOut } from './each-animal.ts'
import type { Conception, HerdQuestion, SeasonDays } from './outlook.ts'

export type Counts = Record<
  'inCalfSixWeeks' | 'openAtTurnOut' | 'emptyAtEnd' | 'heiferCalves' | StrawKind,
  CountDistribution
>

export interface Point {
  readonly counts: Counts
  /** Conceived by the end of each week and in calf at the final check; one a day of `weekEnds`. */
  readonly conceivedBy: readonly CountDistribution[]
  /** Expected number in calf: entry i is the morning of today + i. */
  readonly inCalf: readonly number[]
  /** Expected calvings by season day of the due date. */
  readonly due: ReadonlyMap<number, number>
}

/**
 * The last day of each week of a season.
 *
 * @example weekEnds({ ...season, lastBullDay: 20 }) // [6, 13, 20]
 */
export const weekEnds = ({ lastBullDay }: SeasonDays): number[] =>
  Array.from({ length: (lastBullDay + 1) / 7 }, (_, week) => 7 * week + 6)

/** Share of pregnancies that come to their term. */
function toTerm({ losses }: Rates): (gestation: number) => number {
  const survival = survivalByAge(losses)
  return (gestation) => survival[Math.min(gestation, survival.length - 1)] as number
}

/** Chance that a calf of these conceptions is born, a heifer, and of a dairy straw. */
function heiferChance(conceptions: readonly Conception[], rates: Rates): number {
  const born = toTerm(rates)
  let chance = 0
  for (const { by, share, gestation } of conceptions) {
    if (by !== 'sexed' && by !== 'conventional') continue
    chance += share * (by === 'sexed' ? rates.femaleSexed : rates.femaleOther) * born(gestation)
  }
  return chance
}

/**
 * The season ahead of a block with one set of conception rates.
 *
 * @example finished(forecastPoint(question, rates.conception)).inCalf.at(-1) // 121.4
 */
export function* forecastPoint(question: HerdQuestion, conception: ConceptionRates): Steps<Point> {
  const { animals, season } = question
  const rates = { ...question.rates, conception }
  const each = yield* forecastEach(question, rates)
  const strawCounts = (kind: StrawKind) =>
    sumOfCounts(each.map(({ straws }) => ({ first: 0, chances: straws[kind] })))
  const born = toTerm(rates)
  const inCalf: number[] = []
  const due = new Map<number, number>()
  for (const animal of each) {
    for (const [i, chance] of animal.inCalf.entries()) inCalf[i] = (inCalf[i] ?? 0) + chance
    for (const { day, share, gestation } of animal.conceptions)
      due.set(day + gestation, (due.get(day + gestation) ?? 0) + share * born(gestation))
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
      openAtTurnOut: howMany(openAtTurnOut(animals, each, season)),
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
