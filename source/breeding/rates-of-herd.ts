/** The rates that the chances of a day rest on: the policy's, updated by what the herd itself has shown. */

import type { HerdBook } from './book.ts'
import { withOwnResults } from './chances/own-results.ts'
import type { Rates } from './chances/rates.ts'
import type { Day } from './day.ts'
import { type OwnRates, ownRates } from './figures/own-rates.ts'
import { ratesOfPolicy } from './rates-of-policy.ts'
import { type Standing, standingOn } from './standing.ts'

export interface HerdRates {
  /** To reckon with. */
  readonly rates: Rates
  /** What they rest on. */
  readonly own: OwnRates
}

const known = new WeakMap<HerdBook, Map<Day, HerdRates>>()

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
  const days = known.get(book) ?? new Map<Day, HerdRates>()
  known.set(book, days)
  const found = days.get(today)
  if (found !== undefined) return found
  const guessed = ratesOfPolicy(book.policy)
  const all = standings ?? Array.from(book.animals.values(), (animal) => standingOn(book, animal, today))
  const own = ownRates(all, book, today, guessed)
  const made = { rates: withOwnResults(guessed, own.conception, own.heatSeen), own }
  if (days.size >= DAYS_KEPT) days.clear()
  days.set(today, made)
  return made
}
