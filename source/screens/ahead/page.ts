/** The next two weeks, scanning visits and key dates, as lines. */
import { type Day, weekday } from '../../breeding/day.ts'
import { type Section, sections } from '../../breeding/sections.ts'
import { type AheadLine, aheadIsKnown, aheadLines } from '../../morning/ahead.ts'
import type { Desk } from '../../morning/desk.ts'
import type { AheadPlace } from '../../morning/place.ts'
import { aheadLineAt, blockToPlan } from '../../morning/places/ahead.ts'
import { shortDate } from '../../words/dates.ts'
import { keyDateName } from '../../words/key-dates.ts'
import { safeText } from '../../words/safe.ts'
import { type Bit, bit, type Line } from '../line.tsx'
import { type DrawPage, type PointedLine, pointedPage, type Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { movedIn } from '../text.ts'
import { fill } from '../width.ts'
import { aheadWords, columnNames } from '../words/ahead.ts'
import { aboutLine } from './about-line.ts'

const DATE = 12
/** Cells of a column of counts. */
const NARROWEST = 6
/** Cells from which heads do not stand wall to wall. */
const ROOMY = 7
const WIDEST = 9
const BLOCK = 10
const READY = 20

export const aheadPage: DrawPage<AheadPlace> = (desk, place, room) => {
  const all = aheadLines(desk)
  const pointable = (line: AheadLine, text: Line, mark: string): PointedLine => ({
    line: marked(line.day, text, mark, false, room),
    pointed: marked(line.day, text, mark, true, room),
  })
  const columns = columnsOf(all, room)
  const { toDo, done } = room.theme.signs
  const lines: PointedLine[] = [
    {
      line: ruled(
        aheadWords.daysTitle,
        '',
        aheadIsKnown(desk) ? aheadWords.asIf : aheadWords.reckoning,
        room,
      ),
    },
    { line: headLine(columns, room) },
  ]
  for (const line of all)
    if (line.is === 'day') lines.push(pointable(line, countCells(line, columns, room), ' '))
  const block = blockToPlan(desk, place)
  const planning = block === undefined ? '' : aheadWords.planFor(block)
  lines.push({ line: ruled(aheadWords.visitsTitle, '', planning, room) })
  const visits = all.filter((line) => line.is === 'visit' || line.is === 'scan')
  for (const line of visits)
    lines.push(pointable(line, visitCells(line, room), line.is === 'visit' ? done : toDo))
  if (visits.length === 0) lines.push(remark(aheadIsKnown(desk) ? aheadWords.noVisits : aheadWords.reckoning))
  lines.push({ line: ruled(aheadWords.datesTitle, '', '', room) })
  const dates = all.filter((line) => line.is === 'date')
  for (const line of dates) lines.push(pointable(line, [bit(safeText(keyDateName(line.date)))], ' '))
  if (dates.length === 0) lines.push(remark(aheadIsKnown(desk) ? aheadWords.noDates : aheadWords.reckoning))
  const page = pointedPage(lines, place.pointer, room)
  const about = aboutPointed(desk, place, room)
  return { ...page, beside: about, strip: about.slice(0, 3) }
}

const remark = (text: string): PointedLine => ({ line: [bit(`     ${text}`, 'faint')] })

const isWeekend = (day: Day): boolean => weekday(day) === 0 || weekday(day) === 6

/** Pointer, mark, date, and what is said of the day. */
function marked(day: Day, text: Line, mark: string, pointed: boolean, { theme }: Room): Line {
  const { pointer, dot, cut } = theme.signs
  const off = isWeekend(day)
  const tone = pointed ? 'pointed' : 'plain'
  return [
    bit(pointed ? `${pointer} ` : '  ', 'light'),
    bit(`${mark} `, mark === ' ' ? 'plain' : 'good'),
    bit(off ? dot : ' ', 'rule'),
    bit(fill(shortDate(day), DATE, cut), off && !pointed ? 'light' : tone),
    ...text.map((one): Bit => (pointed && one.tone === undefined ? { ...one, tone } : one)),
  ]
}

/** A column: its head, and the sections that are counted in it. */
interface Column {
  readonly head: string
  readonly of: readonly Section[]
}
interface Columns {
  readonly shown: readonly Column[]
  readonly cells: number
  /** Whether there is room for the returns too. */
  readonly returns: boolean
}

/**
 * Sections that hold something within the two weeks, as wide as there is room; where it is tight, services first and
 * second stand in one column.
 */
function columnsOf(all: readonly AheadLine[], { cells }: Room): Columns {
  const days = all.flatMap((line) => (line.is === 'day' && line.ahead !== undefined ? [line.ahead] : []))
  const held = sections.filter((section) => days.some(({ counts }) => counts.has(section)))
  const single = held.map((section): Column => ({ head: columnNames[section], of: [section] }))
  const eachOf = (columns: readonly Column[]): number => Math.floor((cells - DATE - 5) / (columns.length + 1))
  const both = held.includes('serve') && held.includes('second-service')
  const shown = both && eachOf(single) < ROOMY ? single.flatMap(joined) : single
  // The returns of a day are told about the line pointed at, too.
  const returns = eachOf(shown) >= ROOMY
  const each = returns ? eachOf(shown) : Math.floor((cells - DATE - 5) / Math.max(1, shown.length))
  return { shown, cells: Math.max(NARROWEST, Math.min(WIDEST, each)), returns }
}

const joined = (column: Column): readonly Column[] => {
  if (column.of[0] === 'second-service') return []
  return [column.of[0] === 'serve' ? { ...column, of: ['serve', 'second-service'] } : column]
}

function headLine({ shown, cells, returns }: Columns, { theme }: Room): Line {
  const { cut, dot } = theme.signs
  const heads = [...shown.map(({ head }) => head), ...(returns ? [aheadWords.returns] : [])]
  return [
    bit(fill(`    ${aheadWords.weekend(dot)}`, DATE + 5, cut), 'faint'),
    ...heads.map((name) => bit(fill(name, cells, cut, 'right'), 'faint')),
  ]
}

function countCells({ ahead }: AheadLine & { is: 'day' }, columns: Columns, { theme }: Room): Line {
  const { cut, dot } = theme.signs
  if (ahead === undefined) return [bit(cut, 'faint')]
  const counts = columns.shown.map(({ of }) =>
    of.reduce((sum, section) => sum + (ahead.counts.get(section) ?? 0), 0),
  )
  return [
    ...counts.map((count) =>
      count === 0
        ? bit(fill(dot, columns.cells, cut, 'right'), 'faint')
        : bit(fill(String(count), columns.cells, cut, 'right')),
    ),
    ...(columns.returns ? [bit(fill(ahead.returns.toFixed(1), columns.cells, cut, 'right'), 'faint')] : []),
  ]
}

function visitCells(line: AheadLine & { is: 'visit' | 'scan' }, { theme, cells }: Room): Line {
  const ready = line.is === 'visit' ? aheadWords.planned(line.ready) : aheadWords.ready(line.ready)
  return [
    bit(fill(safeText(line.block), BLOCK, theme.signs.cut)),
    bit(fill(ready, READY, theme.signs.cut)),
    bit(line.tellsSires ? (cells < 76 ? aheadWords.tellsShort : aheadWords.tells) : '', 'good'),
  ]
}

/** All about the line pointed at: beside the page, or the first lines of it below. */
function aboutPointed(desk: Desk, place: AheadPlace, room: Room): readonly Line[] {
  const line = aheadLineAt(desk, place)
  if (line === undefined) return []
  const cells = room.beside === 0 ? room.cells - 2 : room.beside
  const lines = aboutLine(desk, line, cells, room.theme)
  return room.beside === 0 ? movedIn(lines) : lines
}
