/**
 * Whom the block has little time left for, then who is probably empty: until when each can be served and why she is
 * here. What becomes of her is decided on the row, and stands on it from then on.
 */
import { type LastChance, timeLeft } from '../../breeding/ahead/last-chances.ts'
import { emptyReasons, type ProbablyEmpty } from '../../breeding/figures/probably-empty.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { Standing } from '../../breeding/standing.ts'
import type { Desk } from '../../morning/desk.ts'
import { animalAt, figuresShown } from '../../morning/places/season.ts'
import { decidedNow, type EmptyRow, emptyRows } from '../../morning/season/empties.ts'
import { dayAndMonth, shortDate } from '../../words/dates.ts'
import { factWords } from '../../words/facts.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { type PointedLine, pointedPage, type Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { pointable } from '../text.ts'
import { fill, widthOf } from '../width.ts'
import { emptiesWords, emptyWords, lastChanceWords, timeLeftWords } from '../words/season/empties.ts'
import { seasonWords } from '../words/season/shared.ts'
import { stateWords } from '../words/state.ts'
import { besideOf } from './animal-beside.ts'
import { type DrawPart, reckoningPage } from './part.ts'

export const emptiesPage: DrawPart = (part) => {
  const { desk, place, room, kept } = part
  const view = figuresShown(desk, place)?.view
  if (view === undefined) return reckoningPage(part)
  const { last, empties } = emptyRows(view)
  const lines: PointedLine[] = [
    ...groupLines(emptiesWords.lastChances, last, (one) => lastLine(one, room), { desk, view, room }),
    ...emptyReasons.flatMap((reason) => {
      const of = empties.filter((one) => one.reason === reason)
      return groupLines(emptyWords[reason], of, (one) => emptyLine(one, view, room), { desk, view, room })
    }),
    ...(empties.length > 0 || last.some(({ reason }) => reason === 'empty')
      ? []
      : [{ line: [bit(` ${nobody(view)}`)] as Line }]),
  ]
  return { ...pointedPage(lines, place.pointer, room, kept), ...besideOf(desk, animalAt(desk, place), room) }
}

const nobody = ({ s, season }: SeasonView): string =>
  s < 0 ? seasonWords.begins(shortDate(season.matingStart)) : emptiesWords.noEmpties

interface On {
  readonly desk: Desk
  readonly view: SeasonView
  readonly room: Room
}

/** A heading with its rows: what was decided of an animal, else what is to be known to decide it. */
function groupLines<R extends EmptyRow>(
  title: string,
  rows: readonly R[],
  line: (row: R) => Line,
  { desk, view, room }: On,
): PointedLine[] {
  if (rows.length === 0) return []
  const decided = rows.map(({ standing }) => decidedNow(desk, standing.animal.id, view.season))
  const many = decided.filter((one) => one !== undefined).length
  return [
    { line: ruled(title, '', emptiesWords.toDecide(rows.length, many), room) },
    ...rows.map((row, index) => {
      const what = decided[index]
      const told = what && emptiesWords.decided(factWords(what.fact), dayAndMonth(what.day))
      return pointable(
        [
          ...who(row.standing, room.theme.signs.cut),
          ...(told === undefined
            ? line(row)
            : [bit(fill(told, room.cells - 24, room.theme.signs.cut), 'good')]),
        ],
        room.theme,
      )
    }),
  ]
}

const who = ({ animal }: Standing, sign: string): Line => [
  bit(fill(safeText(animal.number), 7, sign), 'strong'),
  bit(fill(safeText(animal.record.name ?? ''), 15, sign)),
]

/** How she stands; until when she can be served; her chance where there is one, and room for it. */
function emptyLine({ standing, chance }: ProbablyEmpty, view: SeasonView, { cells, theme }: Room): Line {
  const { cut: sign } = theme.signs
  const likely = chance === undefined || chance === 0 ? '' : emptiesWords.chance(chance)
  const state = stateWords(standing)
  const left = timeLeft(standing, view.season, view.book.policy.chances)
  const end = left.last ?? left.lastAi
  const short = end === undefined ? '' : emptiesWords.servedTo(dayAndMonth(end))
  const ways = [[likely, timeLeftWords(left, dayAndMonth)], [likely, short], [short]].map((parts) =>
    parts.filter((one) => one !== '').join(', '),
  )
  const free = cells - 25
  const told = ways.find((way) => widthOf(state) + 1 + widthOf(way) <= free) ?? short
  return [bit(fill(state, free - widthOf(told), sign)), bit(` ${told}`, 'faint')]
}

const lastLine = (one: LastChance, { cells, theme }: Room): Line => [
  bit(fill(lastChanceWords(one, dayAndMonth), cells - 24, theme.signs.cut)),
]
