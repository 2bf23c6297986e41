/** A whole screen as lines: head, page, the page beside it or the strip below it, slip, what was said, keys. Pure. */

import { type Desk, placeOf } from '../../morning/desk.ts'
import { rowOf } from '../../morning/page.ts'
import { subjectOf } from '../../morning/subject.ts'
import { aboutOf } from '../animal/about.ts'
import { aboutLines, shortWhy } from '../animal/about-lines.ts'
import { besideFacts, moreLines } from '../animal/more.ts'
import { animalPage } from '../animal/page.ts'
import { helpLines } from '../help/page.ts'
import type { View } from '../keys.ts'
import { bit, type Line } from '../line.tsx'
import { columnsFor, contentsOf } from '../morning-list/columns.ts'
import { type Drawing, itemLine } from '../morning-list/rows.ts'
import { ownPage } from '../own-pages.ts'
import { type PageLines, type Room, wholePage } from '../page-lines.ts'
import { pages, type Size, windowFrom } from '../size.ts'
import { noticeLines } from '../slips/notice.ts'
import { openingLines } from '../slips/opening.ts'
import { slipLines } from '../slips/slip.ts'
import { type PlacedTable, tableHeight } from '../table.ts'
import type { Theme } from '../theme.ts'
import { screenWords } from '../words/screen.ts'
import { foot } from './foot.ts'
import { header } from './header.ts'
import { isCut, said } from './said.ts'

export interface Frame {
  readonly head: readonly Line[]
  /** Exactly as many lines as there is room for between head and what lies below. */
  readonly body: readonly Line[]
  /** The page beside; empty on a narrow screen. */
  readonly beside: readonly Line[]
  /** What is told of the line pointed at: the page beside, or the strip below. */
  readonly about: readonly Line[]
  /** Strip or slip, then what was said. */
  readonly below: readonly Line[]
  readonly foot: Line
  readonly widths: { readonly first: number; readonly second: number }
  /** A table among the lines of the body. */
  readonly table?: PlacedTable
  /** What the keys are told of the screen. */
  readonly view: View
  /** First line of the window on the page, to begin the next frame from. */
  readonly top: number
}

/** Lines of the reason below a list that has no page beside it: more on a screen of 24 rows. */
const stripHeight = (size: Size): number => (size.rows >= 24 ? 3 : 2)
/** Lines that a list keeps when a slip lies on it, where there is room. */
const LEAST_BODY = 3
/** Lines that a screen of its own may put below its page. */
const STRIP = 4
/** Lines of what was said. */
const SAID = 2

/**
 * The frame of a desk.
 *
 * @param size cells that may be drawn, 60 x 16 or more, @param top first line of the window of the last frame
 * @example frameOf(desk, { columns: 80, rows: 24 }, theme, 0).body.length // 16
 */
export function frameOf(desk: Desk, size: Size, theme: Theme, top: number): Frame {
  const widths = pages(size)
  const head = header(desk, size.columns, theme)
  const message = said(desk, size.columns, theme, SAID)
  const rest = size.rows - head.length - Math.max(1, message.length) - 1
  const scrolled =
    desk.slip?.is === 'opening'
      ? openingLines(desk, desk.slip, widths.first, rest - LEAST_BODY, theme)
      : desk.slip?.is === 'notice'
        ? noticeLines(desk, desk.slip, widths.first, rest - LEAST_BODY, theme)
        : undefined
  const slip = scrolled?.lines ?? slipLines(desk, widths.first, rest - LEAST_BODY, theme).slice(0, rest)
  const alone = desk.slip === undefined && widths.second === 0
  const draw = (height: number): PageLines =>
    pageLines(desk, { cells: widths.first, height, beside: widths.second, theme, before: top })
  const ownStrip = (): readonly Line[] => (draw(rest).strip ?? []).slice(0, STRIP)
  const onList = placeOf(desk).at === 'morning-list'
  const strip = alone ? (onList ? stripLines(desk, size, theme) : ownStrip()) : []
  const under = desk.slip === undefined ? strip : slip
  const height = Math.max(0, rest - under.length)
  const page = draw(height)
  const beside = widths.second === 0 ? [] : (page.beside ?? besideLines(desk, widths.second, theme))
  const view = {
    rows: Math.max(1, height),
    furthest: scrolled?.furthest ?? page.furthest,
    cut: isCut(desk, size.columns, theme, SAID),
  }
  return {
    head,
    body: filled(page.lines, height),
    beside,
    about: desk.slip !== undefined ? [] : beside.length > 0 ? beside : strip,
    below: [...under, ...(message.length === 0 ? [[]] : message)],
    foot: foot(desk, view, size.columns, theme),
    widths,
    view,
    top: page.top,
    ...(page.table === undefined || page.table.at + tableHeight(page.table.table) > height
      ? {}
      : { table: page.table }),
  }
}

const filled = (lines: readonly Line[], height: number): readonly Line[] =>
  lines.length >= height
    ? lines.slice(0, height)
    : [...lines, ...Array.from({ length: height - lines.length }, (): Line => [])]

function pageLines(desk: Desk, room: Room): PageLines {
  const place = placeOf(desk)
  const { cells, height, theme } = room
  if (place.at === 'morning-list') return listLines(desk, room)
  if (place.at === 'help') return wholePage(helpLines(desk, cells, theme), room, place.top)
  if (place.at !== 'animal') return ownPage(desk, place, room)
  const animal = desk.book.animals.get(place.animal)
  if (animal === undefined) return { lines: [], furthest: 0, top: 0 }
  if (place.more !== undefined) return wholePage(moreLines(desk, animal, cells, theme), room, place.more)
  const { top: about, facts, told, takenBack } = animalPage(desk, animal, place, cells, theme)
  const kept = about.slice(0, Math.max(0, height - LEAST_BODY))
  const rest = Math.max(0, height - kept.length)
  const body = [
    ...facts.slice(0, place.pointer + 1),
    ...told,
    ...facts.slice(place.pointer + 1),
    ...takenBack,
  ]
  const atEnd = place.pointer === facts.length - 1
  const shown = place.pointer + told.length + (atEnd ? takenBack.length : 0)
  const top = Math.min(windowFrom(0, shown, body.length, rest), place.pointer)
  return { lines: [...kept, ...body.slice(top, top + rest)], furthest: facts.length - 1, top: 0 }
}

function listLines(desk: Desk, { cells, height, theme, before }: Room): PageLines {
  const { page, book } = desk
  if (page.items.length === 0)
    return {
      lines: [
        [],
        [bit(` ${screenWords.nothing}`, 'strong')],
        [bit(` ${screenWords.nothingWhy(book.animals.size)}`)],
      ],
      furthest: 0,
      top: 0,
    }
  const columns = columnsFor(cells, contentsOf(page.list, book))
  const drawing: Drawing = {
    book,
    unsettled: desk.unsettled,
    day: page.list.day,
    by: desk.by,
    theme,
    cells,
    columns,
  }
  const top = windowFrom(before, Math.max(0, page.pointer), page.items.length, height, 1)
  const lines = page.items
    .slice(top, top + height)
    .map((item, index) => itemLine(item, top + index === page.pointer, drawing))
  return {
    lines: withMore(lines, top > 0, top + height < page.items.length, theme),
    furthest: page.items.length - 1,
    top,
  }
}

/** Signs in the margin where the page goes on above and below. */
function withMore(lines: readonly Line[], above: boolean, below: boolean, { signs }: Theme): readonly Line[] {
  return lines.map((line, index) => {
    const sign =
      above && index === 0
        ? signs.more.above
        : below && index === lines.length - 1
          ? signs.more.below
          : undefined
    const [first, ...rest] = line
    if (sign === undefined || first === undefined || first.text.startsWith(signs.pointer)) return line
    return [bit(sign, 'light'), { ...first, text: first.text.slice(1) }, ...rest]
  })
}

/** Why the animal pointed at is on the list, below a list without a page beside it. */
function stripLines(desk: Desk, size: Size, theme: Theme): readonly Line[] {
  if (placeOf(desk).at !== 'morning-list') return []
  const height = stripHeight(size)
  const her = subjectOf(desk)
  if (her.whyNot !== undefined) return filled([], height)
  const about = aboutOf(desk, her.animal, her.row, size.columns - 2, theme)
  return filled(
    shortWhy(about, height).map((line): Line => [bit(' '), ...line]),
    height,
  )
}

function besideLines(desk: Desk, cells: number, theme: Theme): readonly Line[] {
  const place = placeOf(desk)
  const animal = place.at === 'animal' ? desk.book.animals.get(place.animal) : undefined
  if (animal !== undefined && place.at === 'animal')
    return place.more === undefined
      ? besideFacts(desk, animal, cells, theme)
      : aboutLines(aboutOf(desk, animal, rowOf(desk.page, animal.id), cells, theme))
  if (place.at !== 'morning-list') return []
  const her = subjectOf(desk)
  return her.whyNot === undefined ? aboutLines(aboutOf(desk, her.animal, her.row, cells, theme)) : []
}
