/** What can be tried out: the knobs, the changes worth a look, and what each would bring. */
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import type { Change } from '../../breeding/forecast/what-if.ts'
import { type Knob, knobs, planned, type TryEntry } from '../../morning/season/tries.ts'
import { changeWords } from '../../words/forecast.ts'
import { bit, type Line } from '../line.tsx'
import type { PointedLine, Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { paragraph, parted, pointable } from '../text.ts'
import type { Theme } from '../theme.ts'
import { fill } from '../width.ts'
import { forecastWords, knobWords } from '../words/season/forecast.ts'
import { seasonWords } from '../words/season/shared.ts'
import { comparedWords } from './answer-words.ts'

/** Nothing is tried out. */
export const isPlan = (change: Change): boolean => Object.keys(change).length === 0

/** The forecast with a change, once it is reckoned. */
export const whatIfOf = (view: SeasonView, change: Change): BlockForecast | undefined =>
  view.knows(change) ? view.whatIf(change) : undefined

const knobValue = (knob: Knob, value: number, view: SeasonView): string =>
  knob === 'aiWeeks'
    ? String((view.season.aiEnd + 1) / 7 + value)
    : knob === 'bulls'
      ? String(value)
      : seasonWords.percent(100 * value)

/** The knobs, each with the value it is turned to and the planned one. */
export function knobLines(
  view: SeasonView,
  forecast: BlockForecast,
  change: Change,
  room: Room,
): PointedLine[] {
  const { theme } = room
  const plan = planned(forecast)
  return [
    { line: ruled(forecastWords.whatIf, '', forecastWords.knobHint, room) },
    ...knobs.map((knob) => {
      const value = change[knob]
      const shown = knobValue(knob, value ?? plan[knob], view)
      const beside = value === undefined ? '' : forecastWords.turnedFrom(knobValue(knob, plan[knob], view))
      return pointable(
        [
          bit(fill(knobWords[knob], 22, theme.signs.cut)),
          bit(fill(`< ${shown} >`, 12, theme.signs.cut), value === undefined ? 'plain' : 'entry'),
          bit(beside, 'faint'),
        ],
        theme,
      )
    }),
  ]
}

/** Changes worth a look, each with what it would bring where that is reckoned. */
export function worthLines(
  view: SeasonView,
  plan: BlockForecast,
  entries: readonly TryEntry[],
  room: Room,
): PointedLine[] {
  const { theme, cells } = room
  const { shortSix, shortEmpty, ahead } = forecastWords
  const [six, empty] =
    cells < 76 ? [shortSix, shortEmpty] : [ahead.sixWeeks.toLowerCase(), ahead.empty.toLowerCase()]
  const worth = entries.flatMap((entry) => (entry.is === 'worth' ? [entry.change] : []))
  if (worth.length === 0) return []
  return [
    { line: ruled(forecastWords.worth, '', '', room) },
    ...worth.map((change) => {
      const with_ = whatIfOf(view, change)
      const brings =
        with_ === undefined
          ? theme.signs.cut
          : [
              `${six} ${signed(with_.inCalfSixWeeks.middle - plan.inCalfSixWeeks.middle)}`,
              `${empty} ${signed(with_.emptyAtEnd.middle - plan.emptyAtEnd.middle)}`,
            ].join(', ')
      return pointable([bit(fill(changeWords(change), 28, theme.signs.cut)), bit(brings, 'faint')], theme)
    }),
  ]
}

const signed = (change: number): string => (change > 0 ? `+${change}` : change === 0 ? 'same' : `${change}`)

/** What the entry pointed at is or brings, told beside it. */
export function toldOf(
  view: SeasonView,
  plan: BlockForecast,
  entry: TryEntry | undefined,
  cells: number,
  theme: Theme,
): readonly Line[] {
  if (entry?.is !== 'worth') return parted([paragraph(forecastWords.knobTold, cells, theme, 'faint')])
  const with_ = whatIfOf(view, entry.change)
  return parted([
    paragraph(changeWords(entry.change), cells, theme, 'strong'),
    with_ === undefined ? [] : paragraph(comparedWords(plan, with_), cells, theme),
  ])
}
