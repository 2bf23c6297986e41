/** One invented season, forecast on three mornings, and what came of it. */
import { type Random, randomFrom } from '../../sample-herd/growing/random.ts'
import { chanceInCalf } from '../../source/breeding/animal-chances.ts'
import { type HerdBook, openBook } from '../../source/breeding/book.ts'
import { defaultRates, type Rates, serviceClass } from '../../source/breeding/chances/rates.ts'
import { plusDays } from '../../source/breeding/day.ts'
import { forecastBlock } from '../../source/breeding/forecast/block.ts'
import { forecastHerd, type HerdForecast } from '../../source/breeding/forecast/herd.ts'
import { outlooksOf, seasonDaysOf } from '../../source/breeding/forecast/outlook-of.ts'
import { checkedEmpty, returned, unchecked } from '../../source/breeding/questions.ts'
import { ratesOfHerd } from '../../source/breeding/rates-of-herd.ts'
import type { Season } from '../../source/breeding/season.ts'
import { type Standing, standingOn } from '../../source/breeding/standing.ts'
import { type Count, came, counts } from './counts.ts'
import { factsOf, matingStart } from './herd.ts'
import { inCalfOn, type Life, oneSeason, type Truth } from './season.ts'
import { type Morning, mornings, type Tables, type Way } from './tables.ts'

export const ANIMALS = 150

/** Rates of a farm in three of its seasons: three points of difference from year to year. */
function truthsOf(random: Random, falseHeats: boolean): readonly [Truth, Truth, Truth] {
  const cow = random.normal(0.53, 0.04)
  const maiden = random.normal(0.63, 0.04)
  const natural = random.normal(0.54, 0.03)
  const season = (): Truth => {
    const year = random.normal(0, 0.03)
    return {
      heatSeen: 0.9,
      cowConception: cow + year,
      maidenConception: maiden + year,
      naturalConception: natural + year,
      heatInCalf: falseHeats ? 0.057 : 0,
    }
  }
  return [season(), season(), season()]
}

/** The true rates, for a program that knows them. */
const ratesIn = (truth: Truth): Rates => ({
  ...defaultRates,
  heatSeen: truth.heatSeen,
  conception: {
    cowConventional: truth.cowConception,
    cowSexed: truth.cowConception * 0.85,
    maidenConventional: truth.maidenConception,
    maidenSexed: truth.maidenConception * 0.87,
    natural: truth.naturalConception,
  },
})

function hold(
  tables: Tables,
  way: Way,
  morning: Morning,
  ahead: HerdForecast,
  truth: Readonly<Record<Count, number>>,
): void {
  const forecasts = {
    'in calf in six weeks': ahead.inCalfSixWeeks,
    'open at turn-out': ahead.openAtTurnOut,
    'empty at the final check': ahead.emptyAtEnd,
    'conventional straws': ahead.straws.conventional,
  }
  for (const count of counts) {
    const { low, middle, high } = forecasts[count]
    tables.bandsOf(morning, count, way).add({ low, middle, high, came: truth[count] })
  }
}

/** Served, without a return and without a result: what the morning list would show a chance for. */
const isWaiting = (standing: Standing, watchFrom: number): boolean =>
  standing.lastService !== undefined &&
  !standing.inCalf &&
  unchecked(standing) &&
  !checkedEmpty(standing) &&
  !returned(standing, watchFrom)

interface Scoring {
  readonly book: HerdBook
  readonly standings: readonly Standing[]
  readonly lives: readonly Life[]
  readonly morning: Morning
  readonly known: Rates
  readonly learned: Rates
}

function score(tables: Tables, { book, standings, lives, morning, known, learned }: Scoring): void {
  for (const [i, life] of lives.entries()) {
    const standing = standings[i]
    const service = standing?.lastService
    if (standing === undefined || service === undefined || !isWaiting(standing, book.policy.watchFrom))
      continue
    const days = morning - 1 - (service.day - matingStart)
    for (const [way, rates] of [
      ['known', known],
      ['learned', learned],
    ] as const) {
      const flat = rates.conception[serviceClass(service.maiden, 'conventional')]
      const said = {
        program: chanceInCalf(standing, book, rates) ?? 0,
        flat,
        'day 24': days >= 24 ? 1 : flat,
      }
      tables.addChances(morning, way, said, inCalfOn(life, morning - 1))
    }
  }
}

/**
 * Grows a season with two before it, and holds the forecasts of its mornings against what came.
 *
 * @param seed a whole number: the same seed gives the same season
 * @param falseHeats some of the pregnant come in heat
 */
export function trySeason(seed: number, falseHeats: boolean, tables: Tables): void {
  const random = randomFrom(seed)
  const [first, second, now] = truthsOf(random, falseHeats)
  const lives = oneSeason(random, ANIMALS, now)
  const book = openBook(
    factsOf([
      { lives, yearsBefore: 0 },
      { lives: oneSeason(random, ANIMALS, first), yearsBefore: 2 },
      { lives: oneSeason(random, ANIMALS, second), yearsBefore: 1 },
    ]),
  )
  const season = book.allSeasons.at(-1) as Season
  const known = ratesIn(now)
  for (const morning of mornings) {
    const today = plusDays(matingStart, morning)
    const standings = Array.from(book.animals.values(), (animal) => standingOn(book, animal, today))
    const truth = came(lives, morning)
    const animals = outlooksOf(book, standings, season, today, known).map(({ outlook }) => outlook)
    const days = seasonDaysOf(season, today, book.policy)
    const sure = forecastHerd({ animals, season: days, rates: known, conception: [known.conception] })
    hold(tables, 'known', morning, sure, truth)
    hold(tables, 'learned', morning, forecastBlock(book, standings, season, today), truth)
    const learned = ratesOfHerd(book, today, standings).rates
    score(tables, { book, standings, lives, morning, known, learned })
  }
}
