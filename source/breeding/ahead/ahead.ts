/** What the days ahead will ask for, as far as today's facts tell. */
import { returnsExpected } from '../animal-chances.ts'
import type { HerdBook } from '../book.ts'
import { type Day, plusDays } from '../day.ts'
import type { Section } from '../list.ts'
import { type Placed, placesOn } from '../places.ts'
import { ratesOfHerd } from '../rates-of-herd.ts'

export interface DayAhead {
  readonly day: Day
  /** Rows of the day's list by section; a section without rows is not among them. */
  readonly counts: ReadonlyMap<Section, number>
  /** Returns expected to be seen on the day, the sum of the chances as known today. */
  readonly returns: number
}

/**
 * What the lists of the days after today will hold, made as if nothing else happened.
 *
 * @param days how many, 1-60
 * @example daysAhead(book, today, 14)[6]?.counts.get('repeat-heat-watch') // 19
 */
export function daysAhead(book: HerdBook, today: Day, days: number): readonly DayAhead[] {
  const each = placesOn(book, today).each
  const { rates } = ratesOfHerd(
    book,
    today,
    each.map(({ standing }) => standing),
  )
  const placed = each.filter(mayComeUp)
  const here = { ...book, animals: new Map(placed.map(({ standing: { animal } }) => [animal.id, animal])) }
  return Array.from({ length: days }, (_, index) => {
    const day = plusDays(today, index + 1)
    const counts = new Map<Section, number>()
    for (const { takeCare, further } of placesOn(here, day).each) {
      const section = (takeCare ?? further)?.section
      if (section !== undefined) counts.set(section, (counts.get(section) ?? 0) + 1)
    }
    const returns = placed.reduce(
      (sum, { standing }) => sum + returnsExpected(standing, book.policy, rates, day),
      0,
    )
    return { day, counts, returns }
  })
}

/** Who has left stands on no list to come, unless her facts contradict each other: then she does today already. */
const mayComeUp = ({ standing, takeCare }: Placed): boolean =>
  standing.leftOn === undefined || takeCare !== undefined
