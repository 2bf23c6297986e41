/** Blocks of hand-made animals, and their figures on a season day. */
import type { HerdBook } from '../../../source/breeding/book.ts'
import {
  type Counted,
  countedIn,
  figuresOf,
  type SeasonFigures,
} from '../../../source/breeding/figures/season-figures.ts'
import type { Season } from '../../../source/breeding/season.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import {
  type Animal,
  bar,
  block,
  bookOf,
  calving,
  cow,
  dayAt,
  empty,
  fromBull,
  type Herd,
  heat,
  left,
  maiden,
  on,
  pregnant,
  service,
  withBull,
} from '../support.ts'

const calved = calving(-70)
const sexed = { straw: 'sexed', sire: 'S2', inseminator: 'OB', session: 'evening' }

/** Nine of the cohort and four that are not of it. */
export const thirteen: readonly Animal[] = [
  cow(calved, service(2), pregnant(40)),
  cow(calved, service(5, sexed), service(26), pregnant(70, { foetalAge: 44 })),
  cow(calved, service(9), service(30), withBull(42), fromBull(63), pregnant(110, { foetalAge: 60 })),
  cow(calved, service(12), heat(33), withBull(42), fromBull(63), empty(110)),
  cow(calved, service(19), left(25)),
  cow(calving(-10), service(34), pregnant(75, { serviceDate: on(34) })),
  maiden({ born: on(-450) }, service(1, sexed), pregnant(40)),
  cow(calved, bar(10)),
  cow(calving(-400), service(-270), pregnant(-230), calving(12)),
  cow(calved, bar(-3)),
  cow(calved, left(-2)),
  maiden({ born: on(-200) }),
  cow(calved, block(-30, 'autumn')),
]

/** The first season of a herd on a season day, with what is counted in it; animals are numbered from 1. */
export function seasonAt(
  s: number,
  animals: readonly Animal[],
  herd?: Herd,
): { book: HerdBook; season: Season; counted: Counted; figures: SeasonFigures } {
  const numbered = animals.map((one, i) => ({ ...one, record: { ...one.record, number: String(i + 1) } }))
  const book = bookOf(numbered, herd)
  const season = book.allSeasons[0]
  if (season === undefined) throw new Error('no season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  const counted = countedIn(book, standings, season, dayAt(s))
  return { book, season, counted, figures: figuresOf(counted, book, season, dayAt(s)) }
}

export const figuresAt = (s: number, animals: readonly Animal[], herd?: Herd): SeasonFigures =>
  seasonAt(s, animals, herd).figures

/** `numerator/denominator ?unknown`. */
export const told = ({
  numerator,
  denominator,
  unknown,
}: {
  numerator: number
  denominator: number
  unknown: number
}): string => `${numerator}/${denominator}${unknown === 0 ? '' : ` ?${unknown}`}`
