/** Which straw an animal is served with. */
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import { type Kinship, kinshipOf } from '../kinship/herd-kinship.ts'
import type { Serving } from '../session.ts'
import type { Standing } from '../standing.ts'
import type { KindProposal } from './kind.ts'
import type { RankedStraw } from './rank.ts'
import { nothingSetAside, type SetAside } from './set-aside.ts'
import { type StrawChoice, StrawsOfDay } from './straws-of-day.ts'

/**
 * One chooser for the list of a day: stock and use are counted once, when the first animal asks. The kind is proposed
 * by the conditions of kind.ts, the sire by the order of rank.ts. A maiden gets an easy-calving sire of another kind
 * before one of the proposed kind that is not.
 *
 * Warnings: `no-straw` nothing in stock fits; `straw-out` the kind that she should have is out; `related-6` the calf
 * would be inbred above 6.25 %; `related-12` of the kind that she should have only sires are left that must be
 * confirmed first; `parents-unknown` her sire or dam is not named; `not-easy-calving` a maiden, and only such sires
 * are in stock.
 *
 * @param book the herd book, @param today the list's day, its own facts included
 * @returns the choice for an animal at the session where she is served
 * @example strawChooser(book, today)(standing, serving).straw // { sire: 'S17', straw: 'sexed' }
 */
export function strawChooser(
  book: HerdBook,
  today: Day,
  kinship: Kinship = kinshipOf(book),
): (standing: Standing, serving: Serving) => StrawChoice {
  const straws = new StrawsOfDay(book, today, kinship, nothingSetAside())
  return (standing, serving) => straws.choose(standing, serving)
}

/**
 * The straws for a whole list: what is proposed for one animal is set aside, so that the next ones get what is left
 * and the sires are used evenly, also on a printed list.
 *
 * @param rows the animals still to be served, in the order of the list
 * @returns their choices, in the same order
 * @example allotStraws(book, today, rows)[1]?.straw // { sire: 'S18', straw: 'sexed' }
 */
export function allotStraws(
  book: HerdBook,
  today: Day,
  rows: readonly { readonly standing: Standing; readonly serving: Serving }[],
  kinship: Kinship = kinshipOf(book),
): readonly StrawChoice[] {
  const aside = nothingSetAside()
  const straws = new StrawsOfDay(book, today, kinship, aside)
  return rows.map(({ standing, serving }) => {
    const choice = straws.choose(standing, serving)
    if (choice.straw !== undefined) aside.add(choice.straw.sire, choice.straw.straw)
    return choice
  })
}

/**
 * Every straw in stock ranked for an animal, kinds that are proposed first: for her own page.
 *
 * @returns for a standing, the session where she is served if there is one, and what is promised to others
 * @example strawRanking(book, today)(standing, undefined).ranked[0]?.sire // 'S17'
 */
export function strawRanking(
  book: HerdBook,
  today: Day,
  kinship: Kinship = kinshipOf(book),
): (
  standing: Standing,
  serving: Serving | undefined,
  aside?: SetAside,
) => { readonly proposal: KindProposal; readonly ranked: readonly RankedStraw[] } {
  const straws = new StrawsOfDay(book, today, kinship, nothingSetAside())
  return (standing, serving, aside = nothingSetAside()) => straws.ranking(standing, serving, aside)
}
