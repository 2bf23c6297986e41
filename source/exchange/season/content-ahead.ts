/** What the season's page says of the weeks to come: forecast, changes of the plan, bulls, and whose time runs out. */
import { isOut } from '../../breeding/ahead/decided.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import type { CountForecast } from '../../breeding/forecast/herd.ts'
import type { Change } from '../../breeding/forecast/what-if.ts'
import { compareNumbers } from '../../breeding/order.ts'
import { shortDate } from '../../words/dates.ts'
import { changeWords } from '../../words/forecast.ts'
import { becomesWords, lastChanceReasons } from '../../words/last-chances.ts'
import { safeText } from '../../words/safe.ts'
import { isExpected } from './expected.ts'

export interface ForecastLine {
  readonly label: string
  readonly count: CountForecast
  /** Animals that it is a share of; undefined where it is none. */
  readonly of: number | undefined
  readonly target: number | undefined
}

export interface ChangeLine {
  readonly label: string
  readonly forecast: BlockForecast
}

/** Animals of whom the same becomes, those with the same dates together. */
export interface LastChanceGroup {
  readonly becomes: string
  readonly lines: readonly { readonly said: string; readonly numbers: readonly string[] }[]
}

/** The counts of the forecast, a line each. */
export function forecastLines(view: SeasonView): ForecastLine[] {
  const { forecast, season, s } = view
  if (forecast === undefined) return []
  const { animals, straws } = forecast
  const heifers = plain('Heifer calves of dairy straws', forecast.heiferCalves)
  if (!isExpected(view)) return [heifers]
  const share = (label: string, count: CountForecast, target?: number): ForecastLine => ({
    label,
    count,
    of: animals,
    target,
  })
  const bull = season.bullEnd > season.aiEnd && s <= season.aiEnd
  return [
    share('In calf in six weeks', forecast.inCalfSixWeeks, 78),
    ...(bull ? [share('Open when the bull goes in', forecast.openAtTurnOut)] : []),
    share('Empty at the final check', forecast.emptyAtEnd),
    ...(s > season.aiEnd ? [] : (['conventional', 'sexed', 'beef'] as const)).map((kind) =>
      plain(`Straws still to use, ${kind}`, straws[kind]),
    ),
    heifers,
  ]
}

const plain = (label: string, count: CountForecast): ForecastLine => ({
  label,
  count,
  of: undefined,
  target: undefined,
})

/** Late calvers and empties whose fate is still to be decided. */
export function lastChanceGroups({ lastChances }: SeasonView): LastChanceGroup[] {
  const toDecide = lastChances.filter(({ decided }) => !isOut(decided))
  const groups = Map.groupBy(toDecide, (chance) => becomesWords(chance, shortDate))
  return [...groups].map(([becomes, chances]) => {
    const lines = Map.groupBy(chances, ({ reason, calves, readyFrom }) =>
      [
        [lastChanceReasons[reason], calves && shortDate(calves)].filter(Boolean).join(' '),
        readyFrom && `ready ${shortDate(readyFrom)}`,
      ]
        .filter(Boolean)
        .join(', '),
    )
    return {
      becomes,
      lines: [...lines].map(([said, ofLine]) => ({
        said,
        numbers: ofLine.map(({ standing }) => safeText(standing.animal.number)).sort(compareNumbers),
      })),
    }
  })
}

/** The forecast as planned, then with each change. */
export function changeLines(view: SeasonView, changes: readonly Change[]): ChangeLine[] {
  return [{}, ...changes].flatMap((change) => {
    const forecast = view.whatIf(change)
    return forecast === undefined ? [] : [{ label: changeWords(change), forecast }]
  })
}

/** The bulls needed, in sentences; none where the season has no bull or he is out. */
export function bullLines({ bulls, season, today, forecast, s }: SeasonView): string[] {
  if (bulls === undefined || forecast === undefined || s > season.bullEnd) return []
  const { needed, youngNeeded, onHand, young } = bulls
  const ofThemYoung = young === 0 ? '' : `, ${young} of them under two years`
  const due = [
    ...(bulls.soundnessBy < today ? [] : [`soundness and feet checked by ${shortDate(bulls.soundnessBy)}`]),
    ...(bulls.onFarmBy < today ? [] : [`on the farm by ${shortDate(bulls.onFarmBy)}`]),
  ].join(', ')
  return [
    `${needed} needed for up to ${forecast.openAtTurnOut.high} open animals (${youngNeeded} if they are under two years); ${onHand} on the farm${ofThemYoung}.`,
    `With the cows from ${shortDate(bulls.turnOut)} to ${shortDate(bulls.last)}.`,
    ...(due === '' ? [] : [`${due.slice(0, 1).toUpperCase()}${due.slice(1)}.`]),
  ]
}
