/** What is ahead as a table: as planned, and beside it with what is tried out. */
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import type { CountForecast } from '../../breeding/forecast/herd.ts'
import { type Bit, bit } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import type { Table } from '../table.ts'
import { forecastWords } from '../words/season/forecast.ts'

/** What is ahead, a row each: the middle, the band; beside them those of what is tried out. */
export function aheadTable(
  view: SeasonView,
  plan: BlockForecast,
  changed: BlockForecast | undefined,
  tries: boolean,
  { cells, theme }: Room,
): Table {
  const narrow = cells < 70
  const numbers = (count: CountForecast): Bit[] => [
    bit(String(count.middle), 'strong'),
    bit(forecastWords.to(count.low, count.high)),
  ]
  const row = (name: string, of: (forecast: BlockForecast) => CountForecast): Bit[] => [
    bit(name),
    ...numbers(of(plan)),
    ...(!tries ? [] : changed === undefined ? [bit(theme.signs.cut), bit('')] : numbers(of(changed))),
  ]
  const { ahead } = forecastWords
  const single = (name: string, of: (forecast: BlockForecast) => number): Bit[] => [
    bit(name),
    bit(String(of(plan)), 'strong'),
    bit(''),
    ...(!tries
      ? []
      : [bit(changed === undefined ? theme.signs.cut : String(of(changed)), 'strong'), bit('')]),
  ]
  const band = narrow ? forecastWords.bandShort : forecastWords.band
  const isIn = view.s > view.season.aiEnd
  return {
    columns: [
      { name: '', cells: narrow ? 22 : 27 },
      { name: forecastWords.likely, cells: 8, side: 'right' },
      { name: band, cells: narrow ? 11 : 18, side: 'right' },
      ...(tries
        ? [
            {
              name: narrow ? forecastWords.if : forecastWords.whatIf,
              cells: narrow ? 8 : 9,
              side: 'right' as const,
            },
            { name: narrow ? '' : forecastWords.bandShort, cells: narrow ? 11 : 12, side: 'right' as const },
          ]
        : []),
    ],
    rows: [
      row(ahead.sixWeeks, (forecast) => forecast.inCalfSixWeeks),
      row(isIn ? ahead.openNow : ahead.open, (forecast) => forecast.openAtTurnOut),
      row(ahead.empty, (forecast) => forecast.emptyAtEnd),
      ...(view.season.bullEnd > view.season.aiEnd
        ? [single(ahead.bulls, (forecast) => forecast.bullsNeeded)]
        : []),
      ...(isIn
        ? []
        : (['conventional', 'sexed', 'beef'] as const)
            .filter((kind) => plan.straws[kind].high > 0 || (changed?.straws[kind].high ?? 0) > 0)
            .map((kind) => row(ahead[kind], (forecast) => forecast.straws[kind]))),
      row(ahead.heifers, (forecast) => forecast.heiferCalves),
    ],
  }
}
