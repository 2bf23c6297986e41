/** The day of the move, and what another day than the planned one does. */
import { plusDays } from '../../breeding/day.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import type { Desk } from '../../morning/desk.ts'
import type { TurnOutPlace } from '../../morning/place.ts'
import { openAt } from '../../morning/places/turn-out.ts'
import { canBeRecorded } from '../../morning/turn-out/day.ts'
import { changeOf, type Move } from '../../morning/turn-out/move.ts'
import { shortDate } from '../../words/dates.ts'
import { bit, type Line } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import { movedIn, paragraph } from '../text.ts'
import type { Tone } from '../theme.ts'
import { turnOutWords } from '../words/turn-out.ts'

export function dayLines(desk: Desk, place: TurnOutPlace, move: Move, room: Room): readonly Line[] {
  const text = (words: string, tone: Tone): readonly Line[] =>
    movedIn(paragraph(words, room.cells - 2, room.theme, tone))
  const { days, unserved, left } = changeOf(move, openAt(desk, move))
  const { season } = move
  const than =
    place.bull !== undefined
      ? ''
      : days === 0
        ? turnOutWords.asPlanned
        : days > 0
          ? turnOutWords.later(days)
          : turnOutWords.earlier(-days)
  const until =
    place.what === 'in' ? `, ${turnOutWords.inUntil(dayOfSeason(season, season.bullEnd + 1))}` : ''
  const line: Line = [
    bit(` ${turnOutWords.day} `),
    bit(shortDate(move.day), 'strong'),
    bit(` ${than}${until}`, days === 0 ? 'plain' : 'care'),
    ...(room.cells < 76 ? [] : [bit(`   ${turnOutWords.dayHint}`, 'faint')]),
  ]
  const effect =
    place.what === 'in'
      ? days > 0
        ? turnOutWords.unserved(unserved, left, desk.now.day < move.planned)
        : days < 0
          ? turnOutWords.early(plusDays(move.planned, -1))
          : ''
      : days > 0 && place.bull === undefined
        ? turnOutWords.outLate(plusDays(move.day, desk.book.policy.defaultGestation))
        : ''
  return [
    line,
    ...(effect === '' ? [] : text(effect, 'care')),
    ...(canBeRecorded(desk, move.day) ? [] : text(turnOutWords.notYet, 'faint')),
  ]
}
