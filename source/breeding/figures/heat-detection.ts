import type { HerdBook } from '../book.ts'
import { calvedAtLeast } from '../questions.ts'
import { type Season, seasonDay } from '../season.ts'
import type { Member } from './cohort.ts'
import { type Figure, figureOf } from './figure.ts'

/** A little more than one cycle. */
const TEST_DAYS = 24

/** Not in calf, and calved long enough ago, at the mating start. */
export const inHeatTest = ({ then }: Member, book: HerdBook): boolean =>
  !then.inCalf && calvedAtLeast(then, book.policy.calvedToServe)

/** Seen on heat or served in the days of the test. */
export const seenInHeatTest = ({ now }: Member, season: Season): boolean =>
  now.cycles.some(({ heats }) =>
    heats.some((heat) => {
      const s = seasonDay(season, heat.day)
      return heat.sure && s >= 0 && s < TEST_DAYS
    }),
  )

/**
 * The 24-day test of heat detection: of the animals that were not in calf and calved long enough at the mating start,
 * those seen on heat or served in the 24 days from it.
 *
 * @source G. Selk, Oklahoma State University, 2009
 * @example heatDetection(members, book, season).percent // 80
 */
export function heatDetection(members: readonly Member[], book: HerdBook, season: Season): Figure {
  const eligible = members.filter((member) => inHeatTest(member, book))
  const seen = eligible.filter((member) => seenInHeatTest(member, season))
  return figureOf(seen.length, eligible.length, { source: 'G. Selk, Oklahoma State University, 2009' })
}
