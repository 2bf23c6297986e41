/** What was decided of an animal that a block has little time left for. */
import type { AnimalRecord, HerdBook } from '../book.ts'
import { type Day, plusDays } from '../day.ts'
import type { BarFact, BlockFact, LeftFact, ToBullFact } from '../facts.ts'
import { dayOfSeason, PRE_MATING, type Season } from '../season.ts'
import { type Standing, standingOn } from '../standing.ts'

/** She goes to another block, is not to be bred any more, is left to the bull, or has left the herd. */
export interface Decided {
  readonly fact: BlockFact | BarFact | ToBullFact | LeftFact
  readonly day: Day
}

/**
 * The last thing decided of her from season day -35 on that still stands: a bar that was lifted and a move that was
 * gone back on do not, nor, once the bull is out, that she was left to him.
 *
 * @param until the last day whose facts count, that day included
 * @example decidedOf(cow, spring, today)?.fact.kind // 'block'
 */
export function decidedOf({ happenings }: AnimalRecord, season: Season, until: Day): Decided | undefined {
  const from = dayOfSeason(season, PRE_MATING)
  let standing: Decided[] = []
  const drop = (kind: Decided['fact']['kind']): void => {
    standing = standing.filter(({ fact }) => fact.kind !== kind)
  }
  for (const { fact, day } of happenings) {
    if (day < from || day > until) continue
    if (fact.kind === 'unbar') drop('bar')
    else if (fact.kind === 'block' && fact.block === season.block) drop('block')
    else if (fact.kind === 'block' || fact.kind === 'bar' || fact.kind === 'to-bull' || fact.kind === 'left')
      standing.push({ fact, day })
  }
  // Once the bull is out, that she was left to him decides nothing any more.
  if (until > dayOfSeason(season, season.bullEnd)) drop('to-bull')
  return standing.at(-1)
}

/** Whether she is out of the season by it: left to the bull she is not. */
export const isOut = (decided: Decided | undefined): boolean =>
  decided !== undefined && decided.fact.kind !== 'to-bull'

/**
 * Her standing as it would be in this season had that not been decided, so that she stays on the list of those to be
 * decided; unchanged where nothing took her out of the season.
 */
export function asUndecided(
  standing: Standing,
  decided: Decided | undefined,
  book: HerdBook,
  season: Season,
): Standing {
  if (decided === undefined || !isOut(decided)) return standing
  const before = standingOn(book, standing.animal, plusDays(decided.day, -1))
  if (before.block !== season.block) return standing
  return { ...standing, inHerd: before.inHerd, barred: before.barred, block: season.block }
}
