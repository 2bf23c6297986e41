/** The season ahead: what is likely as planned, and beside it with what is tried out. */

import type { SeasonView } from '../../breeding/figures/season-view.ts'
import type { BlockForecast } from '../../breeding/forecast/block.ts'
import type { CountForecast } from '../../breeding/forecast/herd.ts'
import type { Change } from '../../breeding/forecast/what-if.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import { forecastShown, tryAt } from '../../morning/places/season.ts'
import { type Knob, knobs, planned, type TryEntry, tryEntries } from '../../morning/season/tries.ts'
import { shortDate } from '../../words/dates.ts'
import { assumptionWords, changeWords } from '../../words/season.ts'
import { type Bit, bit, type Line } from '../line.tsx'
import { type PointedLine, pointedPage, type Room, wholePage } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { type Table, tableLines, tableWithin } from '../table.ts'
import { movedIn, paragraph, parted, pointable } from '../text.ts'
import type { Theme } from '../theme.ts'
import { fill } from '../width.ts'
import { knobWords, seasonWords } from '../words/season.ts'
import { comparedWords } from './answer-words.ts'
import { type DrawPart, reckoningPage } from './part.ts'

/** Lines that stay for what can be tried. */
const LEAST = 3
/** Lines of a page on which there is room for a strip below it. */
const ROOMY = 18

export const forecastPage: DrawPart = (part) => {
  const { desk, place, room, kept, block } = part
  const view = forecastShown(desk, place)?.view
  if (view === undefined) return reckoningPage(part)
  const { forecast } = view
  if (forecast === undefined) return wholePage([...kept, [], [bit(` ${seasonWords.over}`)]], room)
  const { theme, cells } = room
  const changed = isPlan(place.change) ? undefined : whatIfOf(view, place.change)
  const bull =
    block.season.bullEnd > block.season.aiEnd
      ? shortDate(dayOfSeason(block.season, block.season.bullEnd))
      : undefined
  const head = ruled(
    isPlan(place.change) ? seasonWords.planned : seasonWords.whatIfIs(changeWords(place.change)),
    '',
    cells < 70
      ? seasonWords.animals(forecast.animals)
      : seasonWords.aheadOf(
          forecast.animals,
          shortDate(dayOfSeason(block.season, (changed ?? forecast).lastAiDay)),
          bull,
        ),
    room,
  )
  const above = [...kept, head]
  const table = tableWithin(
    aheadTable(view, forecast, changed, place.change, room),
    room.height - LEAST - above.length,
  )
  const entries = tryEntries(view)
  const lines = [
    ...knobLines(view, forecast, place.change, room),
    ...worthLines(view, forecast, entries, room),
    ...restsLines(view, room),
  ]
  const entry = tryAt(desk, place)
  const told = (width: number): readonly Line[] => toldOf(view, forecast, entry, width, theme)
  return {
    ...pointedPage(lines, place.pointer, room, [...above, ...tableLines(table, theme)]),
    table: { table, at: above.length },
    beside: told(room.beside),
    strip:
      entry?.is === 'worth' && room.height >= ROOMY
        ? movedIn(told(cells - 2).filter((line) => line.length > 0))
        : [],
  }
}

/** What the forecast rests on; its heading can be pointed at, so that all of it can be brought into sight. */
function restsLines(view: SeasonView, { cells, theme }: Room): PointedLine[] {
  const said = view.assumptions.flatMap((one) => paragraph(assumptionWords(one), cells - 5, theme, 'faint'))
  const head = pointable([bit(seasonWords.assumptions, 'heading')], theme)
  return [
    { ...head, after: said.length },
    ...said.map((line): PointedLine => ({ line: [bit('    '), ...line] })),
  ]
}

const isPlan = (change: Change): boolean => Object.keys(change).length === 0

/** The forecast with a change, once it is reckoned. */
const whatIfOf = (view: SeasonView, change: Change): BlockForecast | undefined =>
  view.knows(change) ? view.whatIf(change) : undefined

/** What is ahead, a row each: the middle, the band; beside them those of what is tried out. */
function aheadTable(
  view: SeasonView,
  plan: BlockForecast,
  changed: BlockForecast | undefined,
  change: Change,
  { cells, theme }: Room,
): Table {
  const tries = !isPlan(change)
  const narrow = cells < 70
  const numbers = (count: CountForecast): Bit[] => [
    bit(String(count.middle), 'strong'),
    bit(seasonWords.to(count.low, count.high)),
  ]
  const row = (name: string, of: (forecast: BlockForecast) => CountForecast): Bit[] => [
    bit(name),
    ...numbers(of(plan)),
    ...(!tries ? [] : changed === undefined ? [bit(theme.signs.cut), bit('')] : numbers(of(changed))),
  ]
  const { ahead } = seasonWords
  const single = (name: string, of: (forecast: BlockForecast) => number): Bit[] => [
    bit(name),
    bit(String(of(plan)), 'strong'),
    bit(''),
    ...(!tries
      ? []
      : [bit(changed === undefined ? theme.signs.cut : String(of(changed)), 'strong'), bit('')]),
  ]
  const band = narrow ? seasonWords.bandShort : seasonWords.band
  const isIn = view.s > view.season.aiEnd
  return {
    columns: [
      { name: '', cells: narrow ? 22 : 27 },
      { name: seasonWords.likely, cells: 8, side: 'right' },
      { name: band, cells: narrow ? 11 : 18, side: 'right' },
      ...(tries
        ? [
            {
              name: narrow ? seasonWords.if : seasonWords.whatIf,
              cells: narrow ? 8 : 9,
              side: 'right' as const,
            },
            { name: narrow ? '' : seasonWords.bandShort, cells: narrow ? 11 : 12, side: 'right' as const },
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

const knobValue = (knob: Knob, value: number, view: SeasonView): string =>
  knob === 'aiWeeks'
    ? String((view.season.aiEnd + 1) / 7 + value)
    : knob === 'bulls'
      ? String(value)
      : seasonWords.percent(100 * value)

function knobLines(view: SeasonView, forecast: BlockForecast, change: Change, room: Room): PointedLine[] {
  const { theme } = room
  const plan = planned(forecast)
  return [
    { line: ruled(seasonWords.whatIf, '', seasonWords.knobHint, room) },
    ...knobs.map((knob) => {
      const value = change[knob]
      const shown = knobValue(knob, value ?? plan[knob], view)
      const beside = value === undefined ? '' : seasonWords.turnedFrom(knobValue(knob, plan[knob], view))
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
function worthLines(
  view: SeasonView,
  plan: BlockForecast,
  entries: readonly TryEntry[],
  room: Room,
): PointedLine[] {
  const { theme, cells } = room
  const { shortSix, shortEmpty, ahead } = seasonWords
  const [six, empty] =
    cells < 76 ? [shortSix, shortEmpty] : [ahead.sixWeeks.toLowerCase(), ahead.empty.toLowerCase()]
  const worth = entries.flatMap((entry) => (entry.is === 'worth' ? [entry.change] : []))
  if (worth.length === 0) return []
  return [
    { line: ruled(seasonWords.worth, '', '', room) },
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

function toldOf(
  view: SeasonView,
  plan: BlockForecast,
  entry: TryEntry | undefined,
  cells: number,
  theme: Theme,
): readonly Line[] {
  if (entry?.is !== 'worth') return parted([paragraph(seasonWords.knobTold, cells, theme, 'faint')])
  const with_ = whatIfOf(view, entry.change)
  return parted([
    paragraph(changeWords(entry.change), cells, theme, 'strong'),
    with_ === undefined ? [] : paragraph(comparedWords(plan, with_), cells, theme),
  ])
}
