/** How many bulls it takes, and what a week more of AI would do. */
import { plusDays } from '../../breeding/day.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import type { Desk } from '../../morning/desk.ts'
import { knownView } from '../../morning/reckoning.ts'
import type { Move } from '../../morning/turn-out/move.ts'
import type { Line } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import { movedIn, paragraph } from '../text.ts'
import { turnOutWords } from '../words/turn-out.ts'

/** The high end of the animals open at turn-out; undefined while it is reckoned. */
export const highOpen = (desk: Desk, move: Move): number | undefined =>
  knownView(desk, move.season, {})?.view.forecast?.openAtTurnOut.high

export function needLines(desk: Desk, move: Move, room: Room): readonly Line[] {
  const text = (words: string, tone?: 'faint'): readonly Line[] =>
    movedIn(paragraph(words, room.cells - 2, room.theme, tone))
  const view = knownView(desk, move.season, {})?.view
  const forecast = view?.forecast
  const bulls = view?.bulls
  if (forecast === undefined || bulls === undefined) return text(turnOutWords.reckoning, 'faint')
  const { low, high } = forecast.openAtTurnOut
  const rests = desk.book.policy.bullsRotate ? ` ${turnOutWords.needRests}` : ''
  return [
    ...text(turnOutWords.need(low, high, bulls.needed, bulls.youngNeeded) + rests),
    ...longerLines(desk, move, forecast, text),
  ]
}

/** What the forecast says of a week more of AI, while AI goes on. */
function longerLines(
  desk: Desk,
  move: Move,
  now: BlockForecast,
  text: (words: string, tone?: 'faint') => readonly Line[],
): readonly Line[] {
  if (desk.now.day >= move.planned || move.season.bullEnd - move.season.aiEnd < 7) return []
  const then = knownView(desk, move.season, { aiWeeks: 1 })?.view.whatIf({ aiWeeks: 1 })
  if (then === undefined) return []
  const straws = ({ straws: { conventional, sexed, beef } }: BlockForecast): number =>
    conventional.expected + sexed.expected + beef.expected
  return text(
    turnOutWords.longer(
      plusDays(move.planned, 6),
      then.emptyAtEnd.expected,
      now.emptyAtEnd.expected,
      straws(then) - straws(now),
    ),
    'faint',
  )
}
