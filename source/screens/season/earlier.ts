/** This season and those before it, side by side. */

import { calendarOf } from '../../breeding/day.ts'
import type { Figure } from '../../breeding/figures/figure.ts'
import type { SeasonFigures } from '../../breeding/figures/season-figures.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { figuresShown } from '../../morning/places/season.ts'
import { figureWords, intervalNames } from '../../words/figures.ts'
import { archivedWords } from '../../words/herd-facts.ts'
import { bit, type Line } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { type Table, tableHeight, tableLines, tableWithin } from '../table.ts'
import { earlierWords } from '../words/season/earlier.ts'
import { seasonWords } from '../words/season/shared.ts'
import { saysNothing } from './figures.ts'
import { type DrawPart, reckoningPage } from './part.ts'

export const earlierPage: DrawPart = (part) => {
  const { desk, place, room, kept } = part
  const view = figuresShown(desk, place)?.view
  if (view?.knows('earlier') !== true) return reckoningPage(part)
  const whole = earlierTable([view.figures, ...view.earlier], room)
  const head = [...kept, ruled(earlierWords.earlier, '', '', room)]
  const below = lastLine(view)
  const lines = Math.max(2, room.height - head.length - below.length)
  const furthest = Math.max(0, tableHeight(whole) - lines)
  const top = Math.min(place.pointer, furthest)
  const table = tableWithin(whole, lines, top)
  return {
    lines: [...head, ...tableLines(table, room.theme), ...below],
    table: { table, at: head.length },
    furthest,
    top: 0,
  }
}

function lastLine({ archive, earlier }: SeasonView): readonly Line[] {
  if (archive !== undefined) return [[bit(` ${archivedWords(archive)}`, 'faint')]]
  return earlier.length === 0 ? [[bit(` ${earlierWords.noEarlier}`, 'faint')]] : []
}

const figures: readonly (readonly [string, (of: SeasonFigures) => Figure])[] = [
  [figureWords.submission_21_days.label, ({ submission }) => submission.all],
  [figureWords.heats_seen_24_days.label, ({ heatDetection }) => heatDetection],
  [figureWords.conception.label, ({ conception }) => conception],
  [figureWords.non_return_24_days.label, ({ nonReturn24 }) => nonReturn24],
  [figureWords.in_calf_six_weeks.label, ({ inCalf }) => inCalf.sixWeeks],
  [figureWords.in_calf.label, ({ inCalf }) => inCalf.all],
  [figureWords.not_in_calf.label, ({ inCalf }) => inCalf.empty],
  [`Returns ${intervalNames['short-regular']}`, ({ returnIntervals }) => returnIntervals.regular],
  [figureWords.calved_by_day_21.label, ({ calving }) => calving.byDay21],
  [figureWords.calved_by_day_42.label, ({ calving }) => calving.byDay42],
]

/** Cells of the names and of a season. */
const LABEL = 26
const COLUMN = 17

/** Figures down, seasons across, the latest first; as many as there is room for. */
function earlierTable(seasons: readonly SeasonFigures[], { cells }: Room): Table {
  const shown = seasons.slice(0, Math.max(1, Math.floor((cells - LABEL) / COLUMN)))
  return {
    columns: [
      { name: '', cells: LABEL },
      ...shown.map(({ season }, index) => ({
        name: `${calendarOf(season.matingStart).year}${index === 0 ? ` ${earlierWords.toDate}` : ''}`,
        cells: COLUMN,
        side: 'right' as const,
      })),
    ],
    rows: [
      [bit(earlierWords.cohort), ...shown.map(({ cohort }) => bit(String(cohort)))],
      ...figures.map(([name, of]) => [
        bit(name),
        ...shown.map((one, index) => bit(shareWords(of(one)), index === 0 ? 'strong' : 'plain')),
      ]),
    ],
  }
}

/** `72 % 116/162` */
const shareWords = (figure: Figure): string =>
  saysNothing(figure)
    ? seasonWords.noneYet
    : `${seasonWords.percent(figure.percent)} ${figure.numerator}/${figure.denominator}`
