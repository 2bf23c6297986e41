/** What the season's page says, in words and numbers but not yet laid out: plain text and HTML are made from it. */
import { calendarOf } from '../../breeding/day.ts'
import { groupings } from '../../breeding/figures/conception.ts'
import type { Figure } from '../../breeding/figures/figure.ts'
import { intervalClasses } from '../../breeding/figures/returns.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { Change } from '../../breeding/forecast/what-if.ts'
import { dateInWords } from '../../words/dates.ts'
import {
  type FigureName,
  figureNames,
  figureWords,
  groupingWords,
  groupName,
  growingFigures,
  intervalMeanings,
  intervalNames,
} from '../../words/figures.ts'
import { assumptionWords } from '../../words/forecast.ts'
import { archivedWords } from '../../words/herd-facts.ts'
import { phaseWords } from '../../words/list.ts'
import { safeText } from '../../words/safe.ts'
import {
  bullLines,
  type ChangeLine,
  changeLines,
  type ForecastLine,
  forecastLines,
  type LastChanceGroup,
  lastChanceGroups,
} from './content-ahead.ts'
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

export interface GroupTable {
  readonly title: string
  readonly rows: readonly { readonly label: string; readonly figure: Figure }[]
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
