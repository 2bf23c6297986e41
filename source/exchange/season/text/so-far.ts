/** The figures, the pace, the services that held, the curve and the calving, as lines of plain text. */
import { tooYoungWords } from '../../../words/figures.ts'
import type { FigureLine, GroupTable, SeasonContent } from '../content.ts'
import { curvePoints } from '../curve.ts'
import { cut, percentOf, rangeOf, wrapped } from './columns.ts'

/** The shares of the season, beside them those of earlier ones. */
export function figureLines({ figures, earlier, archived }: SeasonContent): readonly string[] {
  const head = `${''.padEnd(25)}${'count'.padStart(9)}${'share'.padStart(7)}${'95 %'.padStart(7)}${'unknown'.padStart(8)}${'aim'.padStart(6)}`
  return [
    head + earlier.map((year) => year.padStart(6)).join(''),
    ...figures.map((line) => figureLine(line)),
    ...(archived === undefined ? [] : wrapped(archived, '')),
  ]
}

const figureLine = ({ label, figure, soFar, earlier }: FigureLine): string =>
  [
    label.padEnd(25),
    `${figure.numerator}/${figure.denominator}`.padStart(9),
    percentOf(figure.percent).padStart(7),
    (soFar ? 'so far' : rangeOf(figure)).padStart(7),
    (figure.unknown === 0 ? '' : String(figure.unknown)).padStart(8),
    percentOf(figure.target).replace(/^-$/, '').padStart(6),
    ...earlier.map((percent) => percentOf(percent).padStart(6)),
  ]
    .join('')
    .trimEnd()

/** Served by the end of each of the three weeks. */
export function paceLines({ view }: SeasonContent): readonly string[] {
  const { pace } = view.figures.submission
  const shown = pace.filter(({ day }) => day % 7 === 6 || day === pace.length - 1)
  return shown.map(
    ({ day, served, percent, target }) =>
      `  served by day ${String(day + 1).padStart(2)}${String(served).padStart(7)}${percentOf(percent).padStart(7)}   aim ${percentOf(target)}`,
  )
}

/** Days between services, by class. */
export function intervalLines({ intervals, view }: SeasonContent): readonly string[] {
  const { all } = view.figures.returnIntervals
  if (all === 0) return []
  return intervals.map(
    ({ label, count, meaning }) =>
      `  ${label.padEnd(14)}${String(count).padStart(4)}${percentOf((100 * count) / all).padStart(7)}  ${meaning}`,
  )
}

/** Services that held, a table for each grouping; a sentence where none has a result. */
export function groupTables({ groups }: SeasonContent): readonly (readonly string[])[] {
  const any = groups.some(({ rows }) => rows.some(({ figure }) => figure.denominator > 0))
  if (any) return groups.map(groupLines)
  return groups.some(({ rows }) => rows.length > 0) ? [[tooYoungWords]] : []
}

function groupLines({ title, rows }: GroupTable): readonly string[] {
  if (rows.length === 0) return []
  return [
    title,
    ...rows.map(
      ({ label, figure }) =>
        `  ${cut(label, 24).padEnd(24)}${`${figure.numerator}/${figure.denominator}`.padStart(9)}${percentOf(figure.percent).padStart(7)}${rangeOf(figure).padStart(8)}${figure.unknown === 0 ? '' : `   ${figure.unknown} not known`}`,
    ),
  ]
}

/** The curve at the end of each week that it is known for. */
export function curveLines({ view }: SeasonContent): readonly string[] {
  const points = curvePoints(view.figures)
  const { knownTo } = view.figures.inCalf
  const weeks = Array.from({ length: Math.floor((knownTo + 1) / 7) }, (_, week) => 7 * week + 6)
  return weeks.flatMap((day) => {
    const at = points.findLast((point) => point.day <= day)
    if (at === undefined) return []
    const { percent, low, high } = at
    const bar = '#'.repeat(Math.round(percent / 2.5))
    return [
      `  to day ${String(day + 1).padStart(3)}${percentOf(percent).padStart(7)}${`${Math.round(low)}-${Math.round(high)}`.padStart(9)}  ${bar}`,
    ]
  })
}

/** Calvings by week: those of the calving before, and those to come. */
export function calvingLines({ view }: SeasonContent): readonly string[] {
  const now = new Map(view.figures.calving.weeks.map((week) => [week.week, week]))
  const next = new Map((view.forecast?.calvings ?? []).map((week) => [week.week, week]))
  const some = ({ calved = 0, expected }: { calved?: number; expected: number }): boolean =>
    calved + expected >= 0.5
  const all = [...now.values(), ...next.values()].filter(some).map(({ week }) => week)
  if (all.length === 0) return []
  const first = Math.min(...all)
  const rows = Array.from({ length: Math.max(...all) - first + 1 }, (_, i) => first + i)
  return [
    `  ${'week'.padEnd(8)}${'calved'.padStart(8)}${'to come'.padStart(9)}${'so far'.padStart(8)}     ${'expected in the next calving'}`,
    ...rows.map((week) => {
      const one = now.get(week)
      const coming = next.get(week)
      const amount = (value: number | undefined): string =>
        value === undefined || value < 0.5 ? '' : String(Math.round(value))
      return `  ${String(week).padEnd(8)}${amount(one?.calved).padStart(8)}${amount(one?.expected).padStart(9)}${amount(one?.cumulative).padStart(8)}     ${amount(coming?.expected).padStart(4)}  ${'#'.repeat(Math.round((coming?.expected ?? 0) / 2))}`.trimEnd()
    }),
  ]
}
