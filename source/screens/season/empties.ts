/** Who is probably empty and why, then whom the block has little time left for; Enter opens her page. */
import type { LastChance } from '../../breeding/ahead/last-chances.ts'
import { emptyReasons, type ProbablyEmpty } from '../../breeding/figures/probably-empty.ts'
import type { Standing } from '../../breeding/standing.ts'
import { animalAt, emptiesOf, figuresShown } from '../../morning/places/season.ts'
import { dayAndMonth, shortDate } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { becomesWords, lastChanceReasons } from '../../words/season.ts'
import { bit, type Line } from '../line.tsx'
import { type PointedLine, pointedPage, type Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { pointable } from '../text.ts'
import { fill } from '../width.ts'
import { emptyWords, seasonWords } from '../words/season.ts'
import { stateWords } from '../words/state.ts'
import { besideOf } from './animal-beside.ts'
import { type DrawPart, reckoningPage } from './part.ts'

export const emptiesPage: DrawPart = (part) => {
  const { desk, place, room, kept } = part
  const view = figuresShown(desk, place)?.view
  if (view === undefined) return reckoningPage(part)
  const empties = emptiesOf(view)
  const last = view.lastChances
  const lines: PointedLine[] = [
    ...emptyReasons.flatMap((reason) => {
      const of = empties.filter((one) => one.reason === reason)
      return of.length === 0
        ? []
        : [
            { line: ruled(emptyWords[reason], '', seasonWords.animals(of.length), room) },
            ...of.map((one) => pointable(emptyLine(one, room), room.theme)),
          ]
    }),
    ...(empties.length === 0
      ? [
          {
            line: [
              bit(
                ` ${view.s < 0 ? seasonWords.begins(shortDate(view.season.matingStart)) : seasonWords.noEmpties}`,
              ),
            ] as Line,
          },
        ]
      : []),
    ...(last.length === 0
      ? []
      : [
          { line: ruled(seasonWords.lastChances, '', seasonWords.animals(last.length), room) },
          ...last.map((one) => pointable(lastLine(one, room), room.theme)),
        ]),
  ]
  return { ...pointedPage(lines, place.pointer, room, kept), ...besideOf(desk, animalAt(desk, place), room) }
}

const who = ({ animal }: Standing, sign: string): Line => [
  bit(fill(safeText(animal.number), 7, sign), 'strong'),
  bit(fill(safeText(animal.record.name ?? ''), 15, sign)),
]

function emptyLine({ standing, chance }: ProbablyEmpty, { cells, theme }: Room): Line {
  const { cut: sign } = theme.signs
  const likely = chance === undefined || chance === 0 ? '' : seasonWords.chance(chance)
  return [
    ...who(standing, sign),
    bit(fill(stateWords(standing), cells - 26 - likely.length, sign)),
    bit(likely, 'faint'),
  ]
}

/** When she is ready, and what can still become of her in this block; how she stands is told beside. */
function lastLine(one: LastChance, { theme }: Room): Line {
  const ready =
    one.readyFrom === undefined
      ? lastChanceReasons[one.reason]
      : seasonWords.readyFrom(dayAndMonth(one.readyFrom))
  return [...who(one.standing, theme.signs.cut), bit(`${ready}: ${becomesWords(one, dayAndMonth)}`)]
}
