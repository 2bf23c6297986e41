/** The screen of the move as it opens. */
import { movesDue, withBull } from '../../breeding/ahead/moves-due.ts'
import type { Day } from '../../breeding/day.ts'
import type { BlockDay } from '../../breeding/list.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import { bookNow } from '../book-now.ts'
import type { Desk } from '../desk.ts'
import type { TurnOutPlace } from '../place.ts'
import { blocksWithBull } from './move.ts'

/** The screen as it opens: on the move that is due, else on the next one. */
export function openTurnOut(desk: Desk): TurnOutPlace {
  const [due] = movesDue(desk.book, desk.page.list)
  if (due !== undefined) return placeFor(desk, due.block, due.what)
  const order: readonly BlockDay['phase'][] = ['bull', 'ai', 'closing', 'before', 'closed']
  const [next] = blocksWithBull(desk).toSorted((a, b) => order.indexOf(a.phase) - order.indexOf(b.phase))
  const what = next?.phase === 'bull' || next?.phase === 'closing' ? 'out' : 'in'
  return placeFor(desk, next?.block ?? '', what)
}

/** The screen of one move: on the day of the plan, or today where that is past. */
export function placeFor(desk: Desk, block: string, what: TurnOutPlace['what']): TurnOutPlace {
  const season = blocksWithBull(desk).find((one) => one.block === block)?.season
  const today = desk.now.day
  const planned =
    season === undefined ? today : dayOfSeason(season, (what === 'in' ? season.aiEnd : season.bullEnd) + 1)
  return { at: 'turn-out', pointer: 0, block, what, day: Math.max(planned, today) as Day, without: [] }
}

/**
 * One bull comes out today, lame or worn out: of the block where he is with most, so that another can go in for him.
 *
 * @param bull his number
 * @example placeForBull(desk, 'B9')?.what // 'out'; undefined where he is with none
 */
export function placeForBull(desk: Desk, bull: string): TurnOutPlace | undefined {
  const { day } = desk.now
  const count = (block: string): number =>
    withBull(bookNow(desk), block, day).filter(({ bulls }) => bulls.includes(bull)).length
  const [most] = blocksWithBull(desk)
    .map(({ block }) => ({ block, count: count(block) }))
    .toSorted((a, b) => b.count - a.count)
  if (most === undefined || most.count === 0) return undefined
  return { ...placeFor(desk, most.block, 'out'), day, bull }
}
