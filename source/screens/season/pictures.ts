/** The season in pictures: in calf by day, pace, the calvings before and ahead, days between services. */
import type { CalvedWeek } from '../../breeding/figures/calving.ts'
import { intervalClasses } from '../../breeding/figures/returns.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { paceTarget } from '../../breeding/figures/submission.ts'

import { figuresShown, forecastShown } from '../../morning/places/season.ts'
import { dateInWords } from '../../words/dates.ts'
import { intervalMeanings, intervalNames } from '../../words/figures.ts'
import { bit, type Line } from '../line.tsx'
import { type Room, wholePage } from '../page-lines.ts'
import { barOf, plotLines } from '../picture.ts'
import { ruled } from '../ruled.ts'
import { movedIn, paragraph, parted } from '../text.ts'
import type { Theme } from '../theme.ts'
import { fill } from '../width.ts'
import { answerWords } from '../words/season/answers.ts'
import { figureMeaning, figureTableWords } from '../words/season/figures.ts'
import { pictureWords } from '../words/season/pictures.ts'
import { seasonWords } from '../words/season/shared.ts'
import { curveLines } from './curve.ts'
import { type DrawPart, reckoningPage } from './part.ts'

export const picturesPage: DrawPart = (part) => {
  const { desk, place, room, kept } = part
  const view = figuresShown(desk, place)?.view
  if (view === undefined) return reckoningPage(part)
  const ahead = forecastShown(desk, place)?.view
  const below = { ...room, height: Math.max(1, room.height - kept.length) }
  const { theme } = room
  const page = wholePage(
    [
      ...curveLines(view, ahead, room),
      ...paceLines(view, room),
      ...returnsLines(view, room),
      ...calvedLines(view, room),
      ...aheadLines(ahead, room),
    ],
    below,
    place.pointer,
  )
  return {
    ...page,
    lines: [...kept, ...page.lines],
    beside: parted([
      paragraph(figureMeaning({ of: 'six-weeks' }), room.beside, theme),
      paragraph(pictureWords.curveLater, room.beside, theme),
      returnsTold(view, room.beside, theme),
    ]),
  }
}

/** Cells of what stands before a bar and after it. */
const LABEL = 14
const AFTER = 24
/** Cells of what a class of days means. */
const MEANING = 40

const barCells = (cells: number): number => Math.max(8, cells - LABEL - AFTER - 2)

/** The first three weeks: the share served by the evening of each day. */
function paceLines({ figures }: SeasonView, room: Room): readonly Line[] {
  const { cells, theme } = room
  const { pace, all } = figures.submission
  const end =
    all.percent === undefined
      ? ''
      : answerWords.servedOf(all.numerator, all.denominator, seasonWords.percent(all.percent))
  const head = ruled(pictureWords.pace, '', pace.length === 0 ? '' : end, room)
  if (pace.length === 0) return [head, [bit(` ${pictureWords.noPace}`, 'faint')]]
  const served = new Map(pace.map(({ day, percent }) => [day, percent]))
  const plot = plotLines(
    {
      from: 0,
      to: 20,
      top: 100,
      curves: [
        { at: (x) => paceTarget(x), sign: theme.signs.aim, tone: 'strong' },
        { at: (x) => served.get(Math.round(x)), sign: theme.signs.done, tone: 'light' },
      ],
      spots: [],
      marks: [0, 7, 14, 20]
        .map((day) => ({ x: day, text: pictureWords.week(Math.floor(day / 7) + 1) }))
        .slice(0, 3),
    },
    cells - 2,
    7,
    theme,
  )
  const { aim, done } = theme.signs
  return [
    head,
    ...movedIn(plot),
    [bit(`       ${done} ${pictureWords.paceServed}   ${aim} ${pictureWords.paceAim}`, 'faint')],
  ]
}

function returnsLines(view: SeasonView, room: Room): readonly Line[] {
  const { cells, theme } = room
  const { counts, all } = view.figures.returnIntervals
  const head = ruled(pictureWords.returns, '', all === 0 ? '' : String(all), room)
  if (all === 0) return [head, [bit(` ${pictureWords.none}`, 'faint')]]
  const most = Math.max(...intervalClasses.map((one) => counts[one]))
  // What a class means stands beside it where there is room for both.
  const told = cells >= 76
  const bar = told ? cells - LABEL - 14 - MEANING : cells - LABEL - 14
  return [
    head,
    ...intervalClasses.map(
      (one): Line => [
        bit(` ${fill(intervalNames[one], LABEL, theme.signs.cut)}`),
        ...barOf({ value: counts[one] }, most, bar, theme),
        bit(` ${fill(`${counts[one]} (${Math.round((100 * counts[one]) / all)} %)`, 10, theme.signs.cut)}`),
        bit(told ? intervalMeanings[one] : '', 'faint'),
      ],
    ),
    ...(room.beside > 0 ? [] : movedIn(returnsTold(view, cells - 2, theme))),
  ]
}

/** What the days between services say of the watch, and what they are elsewhere. */
const returnsTold = ({ figures }: SeasonView, cells: number, theme: Theme): readonly Line[] => {
  const { ratio } = figures.returnIntervals
  return [
    ...(ratio === undefined ? [] : paragraph(figureTableWords.ratio(ratio), cells, theme)),
    ...paragraph(figureTableWords.intervalShare, cells, theme, 'faint'),
  ]
}

/** The calving that the season follows, and what is still to come of it. */
function calvedLines({ figures }: SeasonView, room: Room): readonly Line[] {
  const { plannedStart, weeks } = figures.calving
  const head = ruled(pictureWords.calvedWeeks, '', pictureWords.calvedTo(dateInWords(plannedStart)), room)
  return [head, ...weekLines(weeks, room)]
}

function weekLines(weeks: readonly CalvedWeek[], { cells, theme }: Room): readonly Line[] {
  if (weeks.length === 0) return [[bit(` ${pictureWords.none}`, 'faint')]]
  const most = Math.max(...weeks.map(({ calved, expected }) => calved + expected))
  const all = weeks.at(-1)?.cumulative ?? 0
  return weeks.map(({ week, calved, expected, cumulative }): Line => {
    const to = all === 0 ? 0 : (100 * cumulative) / all
    const aim = week === 3 ? 50 : week === 6 ? 90 : undefined
    const many = calved + expected
    return [
      bit(` ${fill(pictureWords.week(week), LABEL, theme.signs.cut)}`),
      ...barOf({ value: calved, expected }, most, barCells(cells), theme),
      bit(` ${fill(String(Math.round(many)), 4, theme.signs.cut, 'right')}`),
      bit(` ${fill(pictureWords.cumulative(to), 6, theme.signs.cut, 'right')}`, 'strong'),
      bit(aim === undefined ? '' : `  ${seasonWords.aim(aim)}`, 'faint'),
    ]
  })
}

/** The calvings that this season will bring. */
function aheadLines(view: SeasonView | undefined, room: Room): readonly Line[] {
  const calvings = view?.forecast?.calvings
  if (calvings === undefined || calvings.length === 0) return []
  const weeks = calvings.filter(({ expected }) => expected >= 0.5).map((week) => ({ ...week, calved: 0 }))
  return [ruled(pictureWords.calvingsAhead, '', '', room), ...weekLines(weeks, room)]
}
