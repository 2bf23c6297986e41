/** The forecast, the changes of the plan and the last chances, as lines of plain text. */
import type { CountForecast } from '../../../breeding/forecast/herd.ts'
import type { SeasonContent } from '../content.ts'
import type { ChangeLine, ForecastLine } from '../content-ahead.ts'
import { cut, percentOf, wrapped } from './columns.ts'

const band = ({ low, high }: CountForecast): string => `${low}-${high}`

/** The counts ahead: middle, range, and both as shares. */
export function forecastLines({ forecast, view }: SeasonContent): readonly string[] {
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

/** What each change of the plan would bring, beside the plan. */
export function changeLines({ changes }: SeasonContent): readonly string[] {
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

/** Late calvers and empties, by what becomes of them. */
export const lastChanceLines = ({ lastChances }: SeasonContent): readonly string[] =>
  lastChances.flatMap(({ becomes, lines }) => [
    ...wrapped(`${becomes}:`, '  '),
    ...lines.flatMap(({ said, numbers }) => wrapped(`${said}: ${numbers.join(' ')}`, '    ')),
  ])
