/**
 * The forecasts of a block's animals. Where bulls are short, those open when the bull weeks begin decide what they find.
 */
import type { Rates } from '../chances/rates.ts'
import { mapInSteps, type Steps } from '../steps.ts'
import { type AnimalForecast, endAi, finish, forecastAnimal, runTo } from './animal.ts'
import { bullFindsWith } from './bulls.ts'
import { begin } from './course.ts'
import type { AnimalOutlook, HerdQuestion, SeasonDays } from './outlook.ts'

/** Those that the bull may serve. */
const mayBeServed = (animal: AnimalOutlook, season: SeasonDays): boolean =>
  animal.earliestDay <= season.lastBullDay

/** Entry of the morning after the last day of AI, or of today where that is past. */
const turnOut = ({ today, lastAiDay }: SeasonDays): number => Math.max(0, lastAiDay + 1 - today)

/**
 * The chance of each animal that the bull may serve to be open when the bull weeks begin, or now where they have.
 *
 * @param each the forecasts of the animals, in the same order
 * @example openAtTurnOut([cow], [forecastAnimal(cow, season, rates)], season) // [0.33]
 */
export const openAtTurnOut = (
  animals: readonly AnimalOutlook[],
  each: readonly AnimalForecast[],
  season: SeasonDays,
): number[] =>
  each
    .filter((_, i) => mayBeServed(animals[i] as AnimalOutlook, season))
    .map(({ inCalf }) => 1 - (inCalf[turnOut(season)] as number))

const total = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0)

/**
 * The forecast of each animal of a block, in their order.
 *
 * @param rates with conception rates that are taken for the true ones
 * @example finished(forecastEach({ animals: [cow], season, ... }, rates))[0]?.inCalf.at(-1) // 0.83
 */
export function* forecastEach(
  { animals, season, bulls }: Pick<HerdQuestion, 'animals' | 'season' | 'bulls'>,
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
  const finds = bullFindsWith(bulls, total(openAtTurnOut(animals, each, season)), rates)
  if (finds === rates.bullFinds) return each
  return yield* mapInSteps(animals, (animal) => forecastAnimal(animal, season, rates, finds))
}
