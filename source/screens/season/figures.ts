/** The figures of a season, each with what it is counted of, its interval, what is not known, and its aim. */

import type { FigureName } from '../../breeding/figures/behind.ts'
import type { Figure } from '../../breeding/figures/figure.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { figuresAt, figuresShown } from '../../morning/places/season.ts'
import { type FigureGroup, type FigureRow, figureGroups } from '../../morning/season/figures.ts'
import { capital } from '../../words/capital.ts'
import { groupingWords, groupName, intervalMeanings } from '../../words/figures.ts'
import { bit, type Line } from '../line.tsx'
import { type PointedLine, pointedPage, type Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { movedIn, paragraph, parted, pointable } from '../text.ts'
import type { Theme } from '../theme.ts'
import { fill } from '../width.ts'
import { figureLabel, figureMeaning, figureTableWords, groupWords } from '../words/season/figures.ts'
import { seasonWords } from '../words/season/shared.ts'
import { type DrawPart, reckoningPage } from './part.ts'

export const figuresPage: DrawPart = (part) => {
  const { desk, place, room, kept } = part
  const view = figuresShown(desk, place)?.view
  if (view === undefined) return reckoningPage(part)
  const lines = figureGroups(view.figures).flatMap((group): PointedLine[] => [
    { line: ruled(groupTitle(group), '', groupEnd(group, view, room.cells), room) },
    ...group.rows.map((row) => pointable(rowLine(row, room), room.theme)),
  ])
  const row = figuresAt(desk, place)
  const told = (cells: number): readonly (readonly Line[])[] =>
    row === undefined ? [] : toldOf(row, view, cells, room.theme)
  const [, ...short] = told(room.cells - 2)
  return {
    ...pointedPage(lines, place.pointer, room, [...kept, columnsLine(room)]),
    beside: parted(told(room.beside)),
    strip: movedIn(short.flat()),
  }
}

const groupTitle = (group: FigureGroup): string =>
  group.of === 'conception-by' ? groupingWords[group.by] : groupWords[group.of]

/** What the rows of a group come to together, where that is a figure of its own. */
function groupEnd({ of }: FigureGroup, { figures }: SeasonView, cells: number): string {
  const { services, pregnancies, ratio } = figures.servicesPerPregnancy
  if (of !== 'ai' || ratio === undefined) return ''
  return cells < 70
    ? figureTableWords.perPregnancyShort(ratio)
    : figureTableWords.perPregnancy(services, pregnancies, ratio)
}

/** What a row is called: a group of services by its key. */
export const rowLabel = ({ name }: FigureRow): string =>
  name.of === 'conception' && name.by !== undefined ? groupName(name.by, name.key) : figureLabel(name)

function rowLine(row: FigureRow, { cells, theme }: Room): Line {
  const { cut: sign } = theme.signs
  const label = fill(rowLabel(row), 25, sign)
  if (row.figure === undefined) {
    const { days: mean } = row
    const days =
      mean === undefined
        ? ''
        : `  ${cells < 70 ? figureTableWords.halfBy(mean.median) : figureTableWords.meanDays(mean.mean, mean.median)}`
    return [bit(label), bit(`${fill(seasonWords.animals(row.count ?? 0), 12, sign)}${days}`)]
  }
  return [bit(label), ...figureBits(row.name, row.figure, cells, sign)]
}

/** Whether the animals not known are among those that the figure divides by. */
const knowsAll = ({ of }: FigureName, { unknown }: Figure): boolean =>
  unknown === 0 || !(of === 'six-weeks' || of === 'in-calf' || of === 'empty' || of === 'calved-by')

/** Whether nothing is known yet that the figure could say. */
export const saysNothing = ({ numerator, denominator, unknown }: Figure): boolean =>
  denominator === 0 || (numerator === 0 && unknown >= denominator)

/**
 * `116 of 162    72 %   64-78   9 not known   aim 90 %`, as much as there is room for. No interval while animals that it
 * divides by are not known: what stands there is so far only.
 */
export function figureBits(name: FigureName, figure: Figure, cells: number, sign: string): Line {
  const { numerator, denominator, percent, low, high, unknown, target } = figure
  const interval = knowsAll(name, figure) ? seasonWords.interval(low, high) : ''
  return [
    bit(
      fill(
        cells < 70 ? `${numerator}/${denominator}` : seasonWords.of(numerator, denominator),
        cells < 70 ? 8 : 12,
        sign,
      ),
    ),
    bit(fill(saysNothing(figure) ? seasonWords.noneYet : seasonWords.percent(percent), 9, sign), 'strong'),
    bit(fill(interval, cells < 70 ? 7 : 9, sign), 'faint'),
    ...(cells < 70 ? [] : [bit(fill(seasonWords.notKnown(unknown), 14, sign), 'faint')]),
    bit(seasonWords.aim(target), 'faint'),
  ]
}

/** What the columns of the figures are. */
const columnsLine = ({ cells, theme }: Room): Line => {
  const { cut: sign } = theme.signs
  const { columns } = figureTableWords
  const label = 27
  const counted = cells < 70 ? 17 : 21
  return [
    bit(fill('', label, sign)),
    bit(fill(columns.of, counted, sign), 'faint'),
    bit(columns.interval, 'faint'),
  ]
}

/** The figure itself; then its meaning, how sure it is, what it should be and who says so. */
function toldOf(row: FigureRow, view: SeasonView, cells: number, theme: Theme): readonly (readonly Line[])[] {
  const { name, figure } = row
  const say = (text: string): readonly Line[] => paragraph(text, cells, theme)
  const title: Line = [bit(rowLabel(row), 'strong')]
  const meaning = [
    ...say(figureMeaning(name)),
    ...(name.of === 'interval' ? say(`${capital(intervalMeanings[name.class])}.`) : []),
  ]
  if (figure === undefined) return [[title], meaning]
  const { low, high, unknown, target, source } = figure
  const { ratio } = view.figures.returnIntervals
  return [
    [title, ...(figure.denominator === 0 ? [] : [figureBits(name, figure, 60, theme.signs.cut)])],
    meaning,
    [
      ...(low === undefined || high === undefined || !knowsAll(name, figure)
        ? []
        : say(figureTableWords.intervalMeans(low, high))),
      ...(unknown === 0 ? [] : say(figureTableWords.notKnownYet(unknown))),
      ...(target === undefined ? [] : say(figureTableWords.aimFrom(target, source ?? ''))),
      ...(target === undefined && source !== undefined ? say(figureTableWords.from(source)) : []),
    ],
    name.of === 'interval'
      ? [
          ...(ratio === undefined ? [] : say(figureTableWords.ratio(ratio))),
          ...paragraph(figureTableWords.intervalShare, cells, theme, 'faint'),
        ]
      : [],
  ]
}
