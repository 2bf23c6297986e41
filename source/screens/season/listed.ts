/** The animals behind a figure, those against it first; Enter opens her page. */
import type { Behind, FigureName } from '../../breeding/figures/behind.ts'
import type { Season } from '../../breeding/season.ts'
import { animalAt, figuresShown } from '../../morning/places/season.ts'
import { figureRows } from '../../morning/season/figures.ts'
import { listedOf } from '../../morning/season/listed.ts'
import { dayAndMonth } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { type PointedLine, pointedPage } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { pointable } from '../text.ts'
import { fill } from '../width.ts'
import { countsWords, figureTableWords } from '../words/season/figures.ts'
import { seasonWords } from '../words/season/shared.ts'
import { stateWords } from '../words/state.ts'
import { besideOf } from './animal-beside.ts'
import { figureBits, rowLabel } from './figures.ts'
import { type DrawPart, reckoningPage } from './part.ts'

export const listedPage: DrawPart = (part) => {
  const { desk, place, room, kept } = part
  const view = figuresShown(desk, place)?.view
  const { open } = place
  if (view === undefined || open === undefined) return reckoningPage(part)
  const { cells, theme } = room
  const wanted = JSON.stringify(open)
  const row = figureRows(view.figures).find(({ name }) => JSON.stringify(name) === wanted)
  const title: Line =
    row === undefined
      ? []
      : [
          bit(` ${fill(rowLabel(row), 26, theme.signs.cut)}`, 'strong'),
          ...(row.figure === undefined ? [] : figureBits(row.name, row.figure, cells, theme.signs.cut)),
        ]
  const lines = listedOf(view, open).flatMap(({ counts, animals }): PointedLine[] => [
    {
      line: ruled(
        countsWords[open.of][counts] ?? '',
        '',
        open.of === 'conception' || open.of === 'non-return' || open.of === 'interval'
          ? figureTableWords.services(animals.length)
          : seasonWords.animals(animals.length),
        room,
      ),
    },
    ...animals.map((one) => pointable(behindLine(one, open, view.season, cells, theme.signs.cut), theme)),
  ])
  return {
    ...pointedPage(lines, place.pointer, room, [...kept, title]),
    ...besideOf(desk, animalAt(desk, place), room),
  }
}

function behindLine(one: Behind, name: FigureName, season: Season, cells: number, sign: string): Line {
  const { record } = one.animal
  return [
    bit(fill(safeText(one.animal.number), 7, sign), 'strong'),
    bit(fill(safeText(record.name ?? ''), 15, sign)),
    bit(fill(said(one, name, season), cells - 24, sign)),
  ]
}

/** What decides: her service, the day; else how she stands. */
function said({ day, service, days, standing, counts }: Behind, { of }: FigureName, season: Season): string {
  const when = day === undefined ? '' : `${dayAndMonth(day)}, day ${day - season.matingStart}`
  if (service !== undefined) {
    const straw = [service.sire, service.straw].filter((part) => part !== undefined).map(safeText)
    const after = of === 'interval' && days !== undefined ? `${days} days after the one before, ` : ''
    return `served ${when}${straw.length === 0 ? '' : `, ${straw.join(' ')}`}${after === '' ? '' : `, ${after.slice(0, -2)}`}`
  }
  if (day === undefined) return stateWords(standing)
  if (of === 'calved-by')
    return counts === 'unknown' ? `due ${dayAndMonth(day)}` : `calved ${dayAndMonth(day)}`
  if (of === 'left') return `left ${dayAndMonth(day)}`
  if (of === 'six-weeks' || of === 'in-calf' || of === 'empty') return `conceived ${when}`
  return days === undefined ? `served ${when}` : `served ${when}, ${days} days calved`
}
