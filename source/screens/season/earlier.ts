/** This season and those before it, side by side. */

import { calendarOf } from '../../breeding/day.ts'
import type { Figure } from '../../breeding/figures/figure.ts'
import type { SeasonFigures } from '../../breeding/figures/season-figures.ts'
import { figuresShown } from '../../morning/places/season.ts'
import { figureWords, intervalNames } from '../../words/season.ts'
import { bit, type Line } from '../line.tsx'
import { type Room, wholePage } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { type Table, tableLines } from '../table.ts'
import { movedIn } from '../text.ts'
import { seasonWords } from '../words/season.ts'
import { saysNothing } from './figures.ts'
import { type DrawPart, reckoningPage } from './part.ts'

export const earlierPage: DrawPart = (part) => {
  const { desk, place, room, kept } = part
  const view = figuresShown(desk, place)?.view
  if (view?.knows('earlier') !== true) return reckoningPage(part)
  const lines: readonly Line[] = [
    ruled(seasonWords.earlier, '', '', room),
    ...movedIn(tableLines(earlierTable([view.figures, ...view.earlier], room), room.theme), 2),
    ...(view.earlier.length === 0 ? [[bit(` ${seasonWords.noEarlier}`, 'faint')]] : []),
  ]
  const below = { ...room, height: Math.max(1, room.height - kept.length) }
  const page = wholePage(lines, below, place.pointer)
  return { ...page, lines: [...kept, ...page.lines] }
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

/** Figures down, seasons across, the latest first; as many as there is room for. */
export function earlierTable(seasons: readonly SeasonFigures[], { cells }: Room): Table {
  const label = cells < 70 ? 22 : 25
  const column = cells < 70 ? 12 : 17
  const shown = seasons.slice(0, Math.max(1, Math.floor((cells - label - 2) / column)))
  return {
    columns: [
      { name: '', cells: label },
      ...shown.map(({ season }, index) => ({
        name: `${calendarOf(season.matingStart).year}${index === 0 ? ` ${seasonWords.toDate}` : ''}`,
        cells: column,
        side: 'right' as const,
      })),
    ],
    rows: [
      [bit(seasonWords.cohort), ...shown.map(({ cohort }) => bit(String(cohort)))],
      ...figures.map(([name, of]) => [
        bit(name),
        ...shown.map((one, index) => bit(shareWords(of(one), column), index === 0 ? 'strong' : 'plain')),
      ]),
    ],
  }
}

/** `72 % 116/162`; on a narrow screen the share alone, with its denominator. */
const shareWords = (figure: Figure, cells: number): string =>
  saysNothing(figure)
    ? seasonWords.noneYet
    : cells < 15
      ? `${seasonWords.percent(figure.percent)} of ${figure.denominator}`
      : `${seasonWords.percent(figure.percent)} ${figure.numerator}/${figure.denominator}`
