/** The in-calf curve: what is known by day of the season, and ahead of it the forecast with its band. */
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { dayOfSeason, SIX_WEEKS } from '../../breeding/season.ts'
import { dayAndMonth } from '../../words/dates.ts'
import type { Line } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import { type Curve, type Plot, plotLines } from '../picture.ts'
import { ruled } from '../ruled.ts'
import { movedIn, paragraph } from '../text.ts'
import type { Theme } from '../theme.ts'
import { pictureWords } from '../words/season/pictures.ts'
import { seasonWords } from '../words/season/shared.ts'

/** The aim at six weeks, percent: Farming Connect (Welsh Government), block-calving project. */
const AIM = 78
/** Deviations on either side of a curve that hold it 19 times in 20. */
const SIDES = 1.96

/**
 * Heading, picture and what its signs mean.
 *
 * @param view with its figures, @param ahead the view that knows the forecast, once there is one
 */
export function curveLines(view: SeasonView, ahead: SeasonView | undefined, room: Room): readonly Line[] {
  const { cells, height, theme } = room
  const { sixWeeks } = view.figures.inCalf
  const end =
    sixWeeks.denominator === 0
      ? ''
      : seasonWords.of(sixWeeks.numerator, sixWeeks.denominator) +
        (sixWeeks.unknown === 0 ? '' : `, ${seasonWords.notKnown(sixWeeks.unknown)}`)
  return [
    ruled(pictureWords.curve, '', end, room),
    ...movedIn(curvePicture(view, ahead, cells - 2, curveRows(height), theme)),
    ...movedIn(legendLines(cells - 2, theme)),
    ...(room.beside > 0 ? [] : movedIn(paragraph(pictureWords.curveLater, cells - 2, theme, 'faint'))),
  ]
}

/** The picture alone. */
export function curvePicture(
  view: SeasonView,
  ahead: SeasonView | undefined,
  cells: number,
  rows: number,
  theme: Theme,
): readonly Line[] {
  const { season } = view
  const plot: Plot = {
    from: 0,
    to: Math.max(season.bullEnd, SIX_WEEKS),
    top: 100,
    curves: [aheadCurve(view, ahead, theme), knownCurve(view, theme)],
    spots: [{ x: SIX_WEEKS, y: AIM, sign: theme.signs.aim, tone: 'strong' }],
    marks: [
      { x: 0, text: dayAndMonth(season.matingStart) },
      ...(view.s > 0 && view.s <= season.bullEnd ? [{ x: view.s, text: pictureWords.today }] : []),
      { x: season.aiEnd, text: `${pictureWords.aiEnds} ${dayAndMonth(dayOfSeason(season, season.aiEnd))}` },
      ...(season.bullEnd > season.aiEnd ? [{ x: season.bullEnd, text: pictureWords.bullOut }] : []),
    ],
  }
  return plotLines(plot, cells, rows, theme)
}

/** What the signs of the picture mean. */
export function legendLines(cells: number, theme: Theme): readonly Line[] {
  const { done, toDo, band, aim } = theme.signs
  const { curveKnown, curveAhead, curveBand, curveAim } = pictureWords
  const legend = `${done} ${curveKnown}   ${toDo} ${curveAhead}   ${band} ${curveBand}   ${aim} ${curveAim}`
  return paragraph(legend, cells, theme, 'faint')
}

/** Rows of the picture: an odd number, so that half stands in the middle. */
const curveRows = (height: number): number => Math.max(7, Math.min(13, 2 * Math.floor((height - 8) / 2) + 1))

/** The share in calf as it is known: steps, with the Kaplan-Meier band around them. */
function knownCurve({ figures, season }: SeasonView, theme: Theme): Curve {
  const { curve, knownTo } = figures.inCalf
  const stepAt = (x: number) => curve.findLast(({ day }) => day <= x)
  const within = (x: number): boolean => x <= Math.min(knownTo, season.bullEnd)
  return {
    sign: theme.signs.done,
    tone: 'light',
    at: (x) => (within(x) && curve.length > 0 ? (stepAt(x)?.percent ?? 0) : undefined),
    band: (x) => {
      const step = stepAt(x)
      if (step === undefined || !within(x)) return undefined
      const side = SIDES * step.standardError
      return [Math.max(0, step.percent - side), Math.min(100, step.percent + side)]
    },
  }
}

/** The forecast of conceptions by week, beyond what is known; between the weeks on a straight line. */
function aheadCurve({ figures }: SeasonView, ahead: SeasonView | undefined, theme: Theme): Curve {
  const forecast = ahead?.forecast
  const weeks = forecast?.conceivedBy ?? []
  const share = (count: number): number => (100 * count) / Math.max(1, forecast?.animals ?? 1)
  const { knownTo, curve } = figures.inCalf
  const from = curve.length === 0 ? Number.NEGATIVE_INFINITY : knownTo
  const between = (x: number, of: (week: (typeof weeks)[number]) => number): number | undefined => {
    const next = weeks.find(({ day }) => day >= x)
    if (next === undefined || x <= from) return undefined
    const before = weeks.findLast(({ day }) => day < x)
    const [x0, y0] = before === undefined ? [-1, 0] : [before.day, of(before)]
    return share(y0 + ((of(next) - y0) * (x - x0)) / Math.max(1, next.day - x0))
  }
  return {
    sign: theme.signs.toDo,
    tone: 'plain',
    at: (x) => between(x, ({ middle }) => middle),
    band: (x) => {
      const low = between(x, (week) => week.low)
      const high = between(x, (week) => week.high)
      return low === undefined || high === undefined ? undefined : [low, high]
    },
  }
}
