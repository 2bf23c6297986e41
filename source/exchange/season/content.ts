/** What the season's page says, in words and numbers but not yet laid out: plain text and HTML are made from it. */

import { isOut } from '../../breeding/ahead/decided.ts'
import { calendarOf } from '../../breeding/day.ts'
import { groupings } from '../../breeding/figures/conception.ts'
import type { Figure } from '../../breeding/figures/figure.ts'
import { intervalClasses } from '../../breeding/figures/returns.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import type { CountForecast } from '../../breeding/forecast/herd.ts'
import type { Change } from '../../breeding/forecast/what-if.ts'
import { compareNumbers } from '../../breeding/order.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import { phaseWords } from '../../words/list.ts'
import { safeText } from '../../words/safe.ts'
import {
  archivedWords,
  assumptionWords,
  becomesWords,
  changeWords,
  type FigureName,
  figureNames,
  figureWords,
  groupingWords,
  groupName,
  growingFigures,
  intervalMeanings,
  intervalNames,
  lastChanceReasons,
} from '../../words/season.ts'
import { isExpected } from './expected.ts'
import { figuresByName } from './figures.ts'

export interface FigureLine {
  readonly name: FigureName
  readonly label: string
  readonly meaning: string
  readonly figure: Figure
  /** Not known of all yet: the share is one so far, and its interval says nothing. */
  readonly soFar: boolean
  /** The same share of the earlier seasons, in the order of `earlier`. */
  readonly earlier: readonly (number | undefined)[]
}

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

export interface GroupTable {
  readonly title: string
  readonly rows: readonly { readonly label: string; readonly figure: Figure }[]
}

/** Animals of whom the same becomes, those with the same dates together. */
interface LastChanceGroup {
  readonly becomes: string
  readonly lines: readonly { readonly said: string; readonly numbers: readonly string[] }[]
}

export interface SeasonContent {
  readonly view: SeasonView
  readonly farm: string
  readonly date: string
  readonly title: string
  readonly phase: string
  /** Years of the mating starts before, the latest first; at most three. */
  readonly earlier: readonly string[]
  /** Where the figures of seasons before those are; undefined where no season was archived. */
  readonly archived: string | undefined
  readonly figures: readonly FigureLine[]
  readonly groups: readonly GroupTable[]
  readonly intervals: readonly { readonly label: string; readonly meaning: string; readonly count: number }[]
  readonly forecast: readonly ForecastLine[]
  readonly changes: readonly ChangeLine[]
  readonly bulls: readonly string[]
  /** Other blocks of the herd. */
  readonly others: readonly string[]
  readonly lastChances: readonly LastChanceGroup[]
  readonly assumptions: readonly string[]
}

/** Seasons before this one that are shown. */
const EARLIER = 3

/**
 * The content of a season's page.
 *
 * @param changes what-if changes to show; without them those worth a look
 * @example seasonContent(view).title // 'spring block, mating start Fri 1 May 2026'
 */
export function seasonContent(view: SeasonView, changes: readonly Change[] = view.changes): SeasonContent {
  const { book, season, figures, s, phase } = view
  const earlier = view.earlier.slice(0, EARLIER)
  const byName = figuresByName(figures)
  const before = earlier.map(figuresByName)
  return {
    view,
    farm: safeText(book.farm.name),
    date: dateInWords(view.today),
    title: `${safeText(season.block)} block, mating start ${dateInWords(season.matingStart)}`,
    phase: phaseWords(phase, s, season.aiEnd, season.bullEnd),
    earlier: earlier.map((one) => String(calendarOf(one.season.matingStart).year)),
    archived: view.archive && archivedWords(view.archive),
    figures: figureNames.map((name) => ({
      name,
      ...figureWords[name],
      figure: byName[name],
      soFar: isSoFar(name, byName[name], s),
      earlier: before.map((one) => one[name].percent),
    })),
    groups: groupings.map((grouping) => ({
      title: groupingWords[grouping],
      rows: figures.conceptionBy[grouping].map(({ key, figure }) => ({
        label: groupName(grouping, key),
        figure,
      })),
    })),
    intervals: intervalClasses.map((name) => ({
      label: intervalNames[name],
      meaning: intervalMeanings[name],
      count: figures.returnIntervals.counts[name],
    })),
    forecast: forecastLines(view),
    changes: changeLines(view, changes),
    bulls: bullLines(view),
    others: [...book.seasons.keys()].filter((block) => block !== season.block).map(safeText),
    lastChances: lastChanceGroups(view),
    assumptions: isExpected(view) ? view.assumptions.map(assumptionWords) : [],
  }
}

function forecastLines(view: SeasonView): ForecastLine[] {
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

/** Whether a share may still grow. */
function isSoFar(name: FigureName, { unknown }: Figure, s: number): boolean {
  const days = daysOfFigure[name]
  return days === undefined ? growingFigures.has(name) && unknown > 0 : s < days
}

/** Season days that must be over for a share to be final. */
const daysOfFigure: Partial<Record<FigureName, number>> = {
  submission_21_days: 21,
  submission_21_days_ready: 21,
  heats_seen_24_days: 24,
}

function lastChanceGroups({ lastChances }: SeasonView): LastChanceGroup[] {
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

function changeLines(view: SeasonView, changes: readonly Change[]): ChangeLine[] {
  return [{}, ...changes].flatMap((change) => {
    const forecast = view.whatIf(change)
    return forecast === undefined ? [] : [{ label: changeWords(change), forecast }]
  })
}

function bullLines({ bulls, season, today, forecast, s }: SeasonView): string[] {
  if (bulls === undefined || forecast === undefined || s > season.bullEnd) return []
  const { needed, youngNeeded, onHand, young } = bulls
  const young2 = young === 0 ? '' : `, ${young} of them under two years`
  const due = [
    ...(bulls.soundnessBy < today ? [] : [`soundness and feet checked by ${shortDate(bulls.soundnessBy)}`]),
    ...(bulls.onFarmBy < today ? [] : [`on the farm by ${shortDate(bulls.onFarmBy)}`]),
  ].join(', ')
  return [
    `${needed} needed for up to ${forecast.openAtTurnOut.high} open animals (${youngNeeded} if they are under two years); ${onHand} on the farm${young2}.`,
    `With the cows from ${shortDate(bulls.turnOut)} to ${shortDate(bulls.last)}.`,
    ...(due === '' ? [] : [`${due.slice(0, 1).toUpperCase()}${due.slice(1)}.`]),
  ]
}
