/** The move to the bull weeks and out of them, as lines. */

import { plusDays } from '../../breeding/day.ts'
import { bookNow } from '../../morning/book-now.ts'
import type { Desk } from '../../morning/desk.ts'
import type { TurnOutPlace } from '../../morning/place.ts'
import { chosenBulls, type Move, moveOf, served } from '../../morning/turn-out/move.ts'
import { cautions } from '../../words/cautions.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { type DrawPage, type PointedLine, pointedPage, type Room } from '../page-lines.ts'
import { MARGIN, ruled } from '../ruled.ts'
import { movedIn, paragraph, parted, pointable } from '../text.ts'
import type { Tone } from '../theme.ts'
import { wrap } from '../width.ts'
import { keptReasons, turnOutWords } from '../words/turn-out.ts'
import { bullLine, goingLine, keptLine } from './animal-lines.ts'
import { dayLines } from './day-lines.ts'
import { highOpen, needLines } from './need-lines.ts'

/** Lines of numbers in calf. */
const MOST_LINES = 40

export const turnOutPage: DrawPage<TurnOutPlace> = (desk, place, room) => {
  const move = moveOf(desk, place)
  if (move === undefined) return { lines: [[], [bit(` ${turnOutWords.noBullWeeks}`)]], furthest: 0, top: 0 }
  const goesIn = place.what === 'in'
  // Head and caution are lines like others: they move out of sight as one looks down the animals.
  const lines: readonly PointedLine[] = [
    ...unpointed([
      ruled(
        place.bull === undefined ? turnOutWords.title[place.what] : turnOutWords.oneOut(place.bull),
        '',
        endOf(place, move),
        room,
      ),
      ...dayLines(desk, place, move, room),
      ...(goesIn ? needLines(desk, move, room) : []),
      ...(room.beside === 0
        ? movedIn(paragraph(cautions.bull.full, room.cells - 2, room.theme, 'care'))
        : []),
    ]),
    ...(goesIn ? bullLines(desk, place, move, room) : []),
    ...animalLines(desk, place, move, room),
    ...(goesIn ? restLines(move, room) : []),
  ]
  const page = pointedPage(lines, place.pointer, place.pointer === 0 ? { ...room, before: 0 } : room)
  return { ...page, beside: besideLines(room) }
}

const unpointed = (lines: readonly Line[]): readonly PointedLine[] => lines.map((line) => ({ line }))

/** A remark between the lines. */
const remark = (text: string, room: Room, tone: Tone): readonly PointedLine[] =>
  unpointed(movedIn(paragraph(text, room.cells - MARGIN - 1, room.theme, tone), MARGIN))

const endOf = ({ what, block }: TurnOutPlace, { planned }: Move): string =>
  what === 'in' ? turnOutWords.ofBlock(block, plusDays(planned, -1)) : turnOutWords.outOfBlock(block)

function bullLines(desk: Desk, place: TurnOutPlace, move: Move, room: Room): PointedLine[] {
  const chosen = chosenBulls(move, place)
  const serve = served(chosen, bookNow(desk))
  const high = highOpen(desk, move)
  const verdict =
    chosen.length === 0 || high === undefined
      ? ''
      : serve < high
        ? turnOutWords.short(high)
        : chosen.length === 1
          ? turnOutWords.alone
          : turnOutWords.enough
  const title = ruled(turnOutWords.bullsTitle(chosen.length, serve), '', verdict, room)
  if (move.bulls.length === 0) return [{ line: title }, ...remark(turnOutWords.noBulls, room, 'care')]
  return [
    { line: title },
    ...move.bulls.map((bull): PointedLine => {
      const off = place.without.includes(bull.bull.id)
      return {
        line: bullLine(desk, bull, move.day, off, false, room),
        pointed: bullLine(desk, bull, move.day, off, true, room),
      }
    }),
  ]
}

function animalLines(desk: Desk, place: TurnOutPlace, move: Move, room: Room): PointedLine[] {
  const off = move.goes.filter(({ animal }) => place.without.includes(animal.id)).length
  const title = turnOutWords.goesTitle[place.what](move.goes.length - off)
  const none = place.what === 'in' ? turnOutWords.nobodyGoes : turnOutWords.nobodyWith
  return [
    { line: ruled(title, '', off === 0 ? '' : turnOutWords.off[place.what](off), room) },
    ...(move.goes.length === 0 ? remark(none, room, 'faint') : []),
    ...move.goes.map((going): PointedLine => {
      const left = place.without.includes(going.animal.id)
      return {
        line: goingLine(desk, going, left, false, room),
        pointed: goingLine(desk, going, left, true, room),
      }
    }),
    ...(move.already === 0 ? [] : remark(turnOutWords.already(move.already), room, 'faint')),
  ]
}

/** Who does not go: kept from him, and why; in calf. */
function restLines({ kept, inCalf }: Move, room: Room): PointedLine[] {
  const numbers = inCalf.map(({ animal }) => safeText(animal.number)).join(' ')
  return [
    ...(kept.length === 0 ? [] : [{ line: ruled(turnOutWords.keptTitle(kept.length), '', '', room) }]),
    ...kept.map(({ standing, reason }) => ({
      line: keptLine(standing.animal, keptReasons[reason], false, room),
      pointed: keptLine(standing.animal, keptReasons[reason], true, room),
    })),
    ...(inCalf.length === 0 ? [] : [{ line: ruled(turnOutWords.inCalfTitle(inCalf.length), '', '', room) }]),
    ...wrap(numbers, room.cells - MARGIN - 1, MOST_LINES, room.theme.signs.cut).map((line) =>
      pointable([bit(`   ${line}`)], room.theme),
    ),
  ]
}

/** The cautions in full. */
const besideLines = ({ beside, theme }: Room): readonly Line[] =>
  beside === 0
    ? []
    : parted([
        paragraph(cautions.bull.full, beside, theme, 'care'),
        paragraph(cautions.law.full, beside, theme, 'faint'),
      ])
