/** The season ahead: what is likely as planned, and beside it with what is tried out. */

import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import { forecastShown, tryAt } from '../../morning/places/season.ts'
import { tryEntries } from '../../morning/season/tries.ts'
import { shortDate } from '../../words/dates.ts'
import { assumptionWords, changeWords } from '../../words/forecast.ts'
import { bit, type Line } from '../line.tsx'
import { type PointedLine, pointedPage, type Room, wholePage } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { tableLines, tableWithin } from '../table.ts'
import { movedIn, paragraph, pointable } from '../text.ts'
import { forecastWords } from '../words/season/forecast.ts'
import { seasonWords } from '../words/season/shared.ts'
import { aheadTable } from './ahead-table.ts'
import { type DrawPart, reckoningPage } from './part.ts'
import { isPlan, knobLines, toldOf, whatIfOf, worthLines } from './tries.ts'

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
    isPlan(place.change) ? forecastWords.planned : forecastWords.whatIfIs(changeWords(place.change)),
    '',
    cells < 70
      ? seasonWords.animals(forecast.animals)
      : forecastWords.aheadOf(
          forecast.animals,
          shortDate(dayOfSeason(block.season, (changed ?? forecast).lastAiDay)),
          bull,
        ),
    room,
  )
  const above = [...kept, head]
  const table = tableWithin(
    aheadTable(view, forecast, changed, !isPlan(place.change), room),
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
  const head = pointable([bit(forecastWords.assumptions, 'heading')], theme)
  return [
    { ...head, after: said.length },
    ...said.map((line): PointedLine => ({ line: [bit('    '), ...line] })),
  ]
}
