/** The rates that the chances of a day rest on: the policy's, updated by what the herd itself has shown. */

import type { HerdBook } from './book.ts'
import { withOwnResults } from './chances/own-results.ts'
import type { Rates } from './chances/rates.ts'
import type { Day } from './day.ts'
import { type OwnRates, ownRates } from './figures/own-rates.ts'
import { keeping } from './kept.ts'
import { ratesOfPolicy } from './rates-of-policy.ts'
import { type Standing, standingOn } from './standing.ts'

export interface HerdRates {
  /** To reckon with. */
  readonly rates: Rates
  /** What they rest on. */
  readonly own: OwnRates
}

const known = new WeakMap<HerdBook, (day: Day, make: () => HerdRates) => HerdRates>()

/** So many days of one book are kept: a screen looks at today and the days around it. */
const DAYS_KEPT = 32

/**
 * The rates of a herd on the morning of a day. They rest on facts dated before the day, so that nothing recorded on it
 * or later moves them. Counted once for a book and day, and kept.
 *
 * @param standings of all animals on the day, those that left too; worked out where they are not at hand
 * @example ratesOfHerd(book, today).rates.conception.cowConventional // 0.567
 */
export function ratesOfHerd(book: HerdBook, today: Day, standings?: readonly Standing[]): HerdRates {
  const keep = known.get(book) ?? keeping<Day, HerdRates>(DAYS_KEPT)
  known.set(book, keep)
  return keep(today, () => {
    const guessed = ratesOfPolicy(book.policy)
    const all = standings ?? Array.from(book.animals.values(), (animal) => standingOn(book, animal, today))
    const own = ownRates(all, book, today, guessed)
    return { rates: withOwnResults(guessed, own.conception, own.heatSeen), own }
  })
}
