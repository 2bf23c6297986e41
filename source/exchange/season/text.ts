/** A season as plain text of at most 80 columns, for a pipe, a line printer or a terminal that cannot draw. */
import type { Figure } from '../../breeding/figures/figure.ts'
import type { CountForecast } from '../../breeding/forecast/herd.ts'
import { bandWords, tooYoungWords } from '../../words/season.ts'
import type { ChangeLine, FigureLine, ForecastLine, GroupTable, SeasonContent } from './content.ts'
import { curvePoints } from './curve.ts'

const WIDTH = 80

/**
 * The season as lines of text.
 *
 * @example seasonText(seasonContent(view)).split('\n')[1] // 'spring block, mating start Fri 1 May 2026'
 */
export function seasonText(content: SeasonContent): string {
  const { view } = content
  const parts: readonly (readonly string[])[] = [
    [
      `${content.farm}, ${content.date}`,
      content.title,
      content.phase,
      cohortLine(content),
      ...othersLine(content),
    ],
    figureLines(content),
    titled('Pace', paceLines(content)),
    titled(`Season ahead; a range holds ${bandWords}`, forecastLines(content)),
    titled('What if; the last day with the bull stays', changeLines(content)),
    titled(
      'Sweep bulls',
      content.bulls.flatMap((line) => wrapped(line, '  ')),
    ),
    titled('Late calvers and empties', lastChanceLines(content)),
    titled('Days between services', intervalLines(content)),
    ...groupTables(content),
    titled('Known in calf, by the day of conception (95 % interval)', curveLines(content)),
    titled('Calving by week from the planned start', calvingLines(content)),
    titled(
      'What the season ahead rests on',
      content.assumptions.flatMap((line) => wrapped(line, '  ')),
    ),
  ]
  const shown = parts.filter((part) => part.length > 0)
  if (view.forecast === undefined) shown.push(['The season is over: nothing of it lies ahead.'])
  return `${shown.map((part) => part.join('\n')).join('\n\n')}\n`
}

const titled = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [title, ...lines]

const othersLine = ({ others }: SeasonContent): readonly string[] =>
  others.length === 0 ? [] : [`other blocks: ${others.join(', ')}`]

function cohortLine({ view }: SeasonContent): string {
  const { cohort, inCalf } = view.figures
  const left = inCalf.leftBefore === 0 ? '' : `; ${inCalf.leftBefore} left before a result`
  return `${cohort} animals meant for breeding at the mating start${left}`
}

/** @example percentOf(81.4) // '81 %' */
const percentOf = (percent: number | undefined): string =>
  percent === undefined ? '-' : `${Math.round(percent)} %`

const rangeOf = ({ low, high }: Figure): string =>
  low === undefined || high === undefined ? '' : `${Math.round(low)}-${Math.round(high)}`

function figureLines({ figures, earlier, archived }: SeasonContent): readonly string[] {
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
function paceLines({ view }: SeasonContent): readonly string[] {
  const { pace } = view.figures.submission
  const shown = pace.filter(({ day }) => day % 7 === 6 || day === pace.length - 1)
  return shown.map(
    ({ day, served, percent, target }) =>
      `  served by day ${String(day + 1).padStart(2)}${String(served).padStart(7)}${percentOf(percent).padStart(7)}   aim ${percentOf(target)}`,
  )
}

const band = ({ low, high }: CountForecast): string => `${low}-${high}`

function forecastLines({ forecast, view }: SeasonContent): readonly string[] {
  if (forecast.length === 0) return []
  const animals = view.forecast?.animals ?? 0
  return [
    `  of ${animals} animals here`.padEnd(34) +
      `${'middle'.padStart(8)}${'range'.padStart(10)}${'share'.padStart(8)}${'range'.padStart(11)}${'aim'.padStart(7)}`,
    ...forecast.map(forecastLine),
  ]
}

function forecastLine({ label, count, of, target }: ForecastLine): string {
  const shared = (animals: number): string => percentOf(of ? (100 * animals) / of : undefined)
  const share =
    of === undefined || of === 0
      ? ''
      : `${shared(count.middle).padStart(8)}${`${shared(count.low).slice(0, -2)}-${shared(count.high)}`.padStart(11)}`
  const aim = target === undefined ? '' : `${target} %`.padStart(7)
  return `  ${label.padEnd(32)}${String(count.middle).padStart(8)}${band(count).padStart(10)}${share}${aim}`.trimEnd()
}

function changeLines({ changes }: SeasonContent): readonly string[] {
  if (changes.length <= 1) return []
  const cell = (text: string): string => text.padStart(13)
  return [
    `  ${''.padEnd(24)}${['in calf, 6 wk', 'open at bull', 'found empty', 'straws'].map(cell).join('')}`,
    ...changes.map(
      ({ label, forecast }: ChangeLine) =>
        `  ${cut(label, 24).padEnd(24)}${[
          forecast.inCalfSixWeeks,
          forecast.openAtTurnOut,
          forecast.emptyAtEnd,
        ]
          .map((count) => cell(`${count.middle} (${band(count)})`))
          .join('')}${cell(String(Math.round(strawsOf(forecast))))}`,
    ),
  ]
}

const strawsOf = ({ straws }: ChangeLine['forecast']): number =>
  straws.conventional.expected + straws.sexed.expected + straws.beef.expected

const lastChanceLines = ({ lastChances }: SeasonContent): readonly string[] =>
  lastChances.flatMap(({ becomes, lines }) => [
    ...wrapped(`${becomes}:`, '  '),
    ...lines.flatMap(({ said, numbers }) => wrapped(`${said}: ${numbers.join(' ')}`, '    ')),
  ])

function intervalLines({ intervals, view }: SeasonContent): readonly string[] {
  const { all } = view.figures.returnIntervals
  if (all === 0) return []
  return intervals.map(
    ({ label, count, meaning }) =>
      `  ${label.padEnd(14)}${String(count).padStart(4)}${percentOf((100 * count) / all).padStart(7)}  ${meaning}`,
  )
}

function groupTables({ groups }: SeasonContent): readonly (readonly string[])[] {
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
function curveLines({ view }: SeasonContent): readonly string[] {
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

function calvingLines({ view }: SeasonContent): readonly string[] {
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

const cut = (text: string, width: number): string =>
  text.length <= width ? text : `${text.slice(0, width - 1)}…`

/** Words set in lines, the first behind a head, the rest indented as far. */
function wrapped(text: string, head: string): string[] {
  const lines: string[] = []
  let line = head
  for (const word of text.split(' ')) {
    if (line.length + word.length > WIDTH && line.length > head.length) {
      lines.push(line.trimEnd())
      line = ' '.repeat(head.length)
    }
    line += `${word} `
  }
  lines.push(line.trimEnd())
  return lines
}
