/** The picture of a season: who is in calf by the day of conception, known and expected, and the season before. */
import type { SeasonFigures } from '../../breeding/figures/season-figures.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { dayOfSeason, SIX_WEEKS } from '../../breeding/season.ts'
import { dayAndMonth } from '../../words/dates.ts'
import { curvePoints } from './curve.ts'
import { isExpected } from './expected.ts'
import {
  bar,
  diamond,
  drawing,
  line,
  type Point,
  polygon,
  polyline,
  type Scale,
  scaleOf,
  steps,
  words,
} from './svg.ts'

const WIDTH = 186
const HEIGHT = 69
const LEFT = 11
const RIGHT = WIDTH - 25
const TOP = 8
const BOTTOM = HEIGHT - 9

/** Percent in calf that six weeks should bring. */
const TARGET = 78

/** The whole picture; x is the season day, y percent of the animals. */
export function curveChart(view: SeasonView, before: SeasonFigures | undefined): string {
  const { season } = view
  const end = season.bullEnd + 1
  const x = scaleOf(0, end, LEFT, RIGHT)
  const y = scaleOf(0, 100, BOTTOM, TOP)
  return drawing(WIDTH, HEIGHT, 'In calf by day of conception', [
    ...frame(view, x, y),
    ...expectedBand(view, x, y),
    ...(before === undefined ? [] : earlierCurve(before, end, x, y)),
    ...expectedCurve(view, x, y),
    ...knownCurve(view, x, y),
    ...todayLine(view, x, y),
    diamond({ x: x(SIX_WEEKS + 1), y: y(TARGET) }, 1.5, 'aim'),
    words({ x: x(SIX_WEEKS + 1) - 2.5, y: y(TARGET) + 0.9 }, `aim ${TARGET} %`, 'small end'),
  ])
}

function frame({ season }: SeasonView, x: Scale, y: Scale): string[] {
  const parts = [
    bar(x(season.aiEnd + 1), TOP, x(season.bullEnd + 1) - x(season.aiEnd + 1), BOTTOM - TOP, 'shade'),
  ]
  for (const percent of [0, 25, 50, 75, 100]) {
    parts.push(line({ x: LEFT, y: y(percent) }, { x: RIGHT, y: y(percent) }, percent === 0 ? 'axis' : 'grid'))
    parts.push(words({ x: LEFT - 1.5, y: y(percent) + 1 }, `${percent} %`, 'small end'))
  }
  for (let day = 0; day <= season.bullEnd + 1; day += 7) {
    parts.push(
      line({ x: x(day), y: BOTTOM }, { x: x(day), y: BOTTOM + (day % 14 === 0 ? 1.6 : 0.9) }, 'axis'),
    )
    if (day % 14 === 0)
      parts.push(words({ x: x(day), y: BOTTOM + 5 }, dayAndMonth(dayOfSeason(season, day)), 'small middle'))
  }
  parts.push(words({ x: (x(0) + x(season.aiEnd + 1)) / 2, y: TOP - 2 }, 'AI', 'small middle'))
  if (season.bullEnd > season.aiEnd)
    parts.push(
      words(
        { x: (x(season.aiEnd + 1) + x(season.bullEnd + 1)) / 2, y: TOP - 2 },
        'sweep bull',
        'small middle',
      ),
    )
  return parts
}

/** The expected curve, or an end of its band: from nothing at the mating start on, week by week. */
function weekly(view: SeasonView, pick: 'low' | 'middle' | 'high', x: Scale, y: Scale): Point[] {
  const { forecast } = view
  if (forecast === undefined || forecast.animals === 0 || !isExpected(view)) return []
  const points = forecast.conceivedBy.map((week) => ({
    x: x(week.day + 1),
    y: y((100 * week[pick]) / forecast.animals),
  }))
  return [{ x: x(0), y: y(0) }, ...points]
}

const expectedBand = (view: SeasonView, x: Scale, y: Scale): string[] => [
  polygon([...weekly(view, 'low', x, y), ...weekly(view, 'high', x, y).reverse()], 'band'),
]

function expectedCurve(view: SeasonView, x: Scale, y: Scale): string[] {
  const { forecast, season } = view
  const last = forecast?.conceivedBy.at(-1)
  if (forecast === undefined || last === undefined || !isExpected(view)) return []
  const percent = (count: number): number => Math.round((100 * count) / Math.max(1, forecast.animals))
  const at = { x: x(season.bullEnd + 1) + 1.5, y: y(percent(last.middle)) + 1.1 }
  return [
    polyline(weekly(view, 'middle', x, y), 'expected'),
    words(at, `${percent(last.middle)} %`, 'strong'),
    words({ ...at, y: at.y + 3.9 }, `${percent(last.low)}-${percent(last.high)} %`, 'small'),
  ]
}

function knownCurve(view: SeasonView, x: Scale, y: Scale): string[] {
  const { figures, season } = view
  const points = curvePoints(figures)
  const first = points[0]
  if (first === undefined) return []
  const until = x(Math.min(figures.inCalf.knownTo, season.bullEnd) + 1)
  const corners = (pick: 'percent' | 'low' | 'high'): Point[] =>
    steps(
      points.map((point) => ({ x: x(point.day + 1), y: y(point[pick]) })),
      until,
    )
  const start: Point[] = [
    { x: x(0), y: y(0) },
    { x: x(first.day + 1), y: y(0) },
  ]
  const end = points.at(-1)
  return [
    polygon([...corners('low'), ...corners('high').reverse()], 'interval'),
    polyline([...start, ...corners('percent')], 'known'),
    ...(!isExpected(view) && end !== undefined
      ? [
          words(
            { x: x(season.bullEnd + 1) + 1.5, y: y(end.percent) + 1.1 },
            `${Math.round(end.percent)} %`,
            'strong',
          ),
        ]
      : []),
  ]
}

function earlierCurve(before: SeasonFigures, end: number, x: Scale, y: Scale): string[] {
  const points = curvePoints(before)
    .filter(({ day }) => day < end)
    .map(({ day, percent }) => ({ x: x(day + 1), y: y(percent) }))
  return [
    polyline(
      [{ x: x(0), y: y(0) }, ...steps(points, x(Math.min(end, before.inCalf.knownTo + 1)))],
      'earlier',
    ),
  ]
}

function todayLine({ s, season }: SeasonView, x: Scale, y: Scale): string[] {
  if (s < 0 || s > season.bullEnd + 1) return []
  return [
    line({ x: x(s), y: y(0) }, { x: x(s), y: y(100) }, 'today'),
    words({ x: x(s) + 1, y: y(100) + 3.4 }, 'this morning', 'small'),
  ]
}
