/** The move to the bull weeks and out of them, as lines. */

import { plusDays } from '../../breeding/day.ts'
import { bookNow } from '../../morning/book-now.ts'
import type { Desk } from '../../morning/desk.ts'
import type { TurnOutPlace } from '../../morning/place.ts'
import { chosenBulls, type Move, moveOf, served } from '../../morning/turn-out.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { type DrawPage, type PointedLine, pointedPage, type Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { wrap } from '../width.ts'
import { cautions } from '../words/cautions.ts'
import { keptReasons, turnOutWords } from '../words/turn-out.ts'
import { bullLine, goingLine, keptLine } from './animal-lines.ts'
import { dayLines } from './day-lines.ts'
import { highOpen, needLines } from './need-lines.ts'

export const turnOutPage: DrawPage<TurnOutPlace> = (desk, place, room) => {
  const move = moveOf(desk, place)
  if (move === undefined) return { lines: [[], [bit(` ${turnOutWords.noBullWeeks}`)]], furthest: 0, top: 0 }
  const text = (words: string, tone?: 'care' | 'faint'): readonly Line[] =>
    wrap(words, room.cells - 2, 6, room.theme.signs.cut).map((line) => [bit(` ${line}`, tone)])
  const head = [
    ruled(turnOutWords.title[place.what], '', endOf(place, move), room),
    ...dayLines(desk, place, move, room),
    ...(place.what === 'in' ? needLines(desk, move, room) : []),
  ]
  const lines: PointedLine[] = [
    ...(room.beside === 0 ? [] : head.map((line) => ({ line }))),
    ...(place.what === 'in' ? bullLines(desk, place, move, room) : []),
    ...animalLines(desk, place, move, room),
    ...(place.what === 'in' ? restLines(move, room) : []),
  ]
  const caution = text(cautions.bull.full, 'care')
  // On a narrow screen head and caution are lines like others: they move out of sight as one looks down the animals.
  const all =
    room.beside === 0 ? [...head, ...caution].map((line): PointedLine => ({ line })).concat(lines) : lines
  const page = pointedPage(all, place.pointer, place.pointer === 0 ? { ...room, before: 0 } : room)
  return { ...page, beside: besideLines(room) }
}

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
  if (move.bulls.length === 0)
    return [
      { line: title },
      ...wrap(turnOutWords.noBulls, room.cells - 6, 3, room.theme.signs.cut).map((line) => ({
        line: [bit(`     ${line}`, 'care')] as Line,
      })),
    ]
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
    ...(move.goes.length === 0 ? [{ line: [bit(`     ${none}`, 'faint')] as Line }] : []),
    ...move.goes.map((going): PointedLine => {
      const left = place.without.includes(going.animal.id)
      return {
        line: goingLine(desk, going, left, false, room),
        pointed: goingLine(desk, going, left, true, room),
      }
    }),
    ...(move.already === 0
      ? []
      : [{ line: [bit(`     ${turnOutWords.already(move.already)}`, 'faint')] as Line }]),
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
    ...wrap(numbers, room.cells - 6, 40, room.theme.signs.cut).map((line) => ({
      line: [bit(`     ${line}`, 'faint')] as Line,
      pointed: [bit(`${room.theme.signs.pointer} `, 'light'), bit(`   ${line}`, 'pointed')] as Line,
    })),
  ]
}

/** The cautions in full. */
const besideLines = ({ beside, theme }: Room): readonly Line[] =>
  beside === 0
    ? []
    : [cautions.bull.full, cautions.law.full].flatMap((text, index): Line[] => [
        ...(index === 0 ? [] : [[]]),
        ...wrap(text, beside, 14, theme.signs.cut).map(
          (line): Line => [bit(line, index === 0 ? 'care' : 'faint')],
        ),
      ])
