/** What the days ahead will ask for, as far as today's facts tell. */
import { returnsExpected } from '../animal-chances.ts'
import type { AnimalRecord, HerdBook } from '../book.ts'
import { type Day, plusDays } from '../day.ts'
import { type Placed, placesOf } from '../places.ts'
import { ratesOfHerd } from '../rates-of-herd.ts'
import type { Section } from '../sections.ts'
import { standingOn } from '../standing.ts'
import { mapInSteps, type Steps } from '../steps.ts'

export interface DayAhead {
  readonly day: Day
  /** Rows of the day's list by section; a section without rows is not among them. */
  readonly counts: ReadonlyMap<Section, number>
  /** Returns expected to be seen on the day, the sum of the chances as known today. */
  readonly returns: number
}

/**
 * What the lists of the days after today will hold, made as if nothing else happened, in small steps.
 *
 * @param days how many, 1-60
 * @example finished(daysAheadInSteps(book, today, 14))[6]?.counts.get('repeat-heat-watch') // 19
 */
export function* daysAheadInSteps(book: HerdBook, today: Day, days: number): Steps<readonly DayAhead[]> {
  const each = yield* placesInSteps(book, book.animals.values(), today)
  const { rates } = ratesOfHerd(
    book,
    today,
    each.map(({ standing }) => standing),
  )
  yield
  const placed = each.filter(mayComeUp)
  const animals = placed.map(({ standing }) => standing.animal)
  const ahead: DayAhead[] = []
  for (let day = plusDays(today, 1); day <= today + days; day = plusDays(day, 1)) {
    const counts = new Map<Section, number>()
    for (const { takeCare, further } of yield* placesInSteps(book, animals, day)) {
      const section = (takeCare ?? further)?.section
      if (section !== undefined) counts.set(section, (counts.get(section) ?? 0) + 1)
    }
    const returns = placed.reduce(
      (sum, { standing }) => sum + returnsExpected(standing, book.policy, rates, day),
      0,
    )
    ahead.push({ day, counts, returns })
  }
  return ahead
}

const placesInSteps = (book: HerdBook, animals: Iterable<AnimalRecord>, day: Day) =>
  mapInSteps(animals, (animal) => placesOf(book, [standingOn(book, animal, day)])[0] as Placed)

/** Who has left stands on no list to come, unless her facts contradict each other: then she does today already. */
const mayComeUp = ({ standing, takeCare }: Placed): boolean =>
  standing.leftOn === undefined || takeCare !== undefined
