/** The lines of the morning list: one for each item of the page. */
import type { HerdBook } from '../../breeding/book.ts'
import { type Day, dayIso } from '../../breeding/day.ts'
import type { AnimalFact, Fact } from '../../breeding/facts.ts'
import type { Row } from '../../breeding/list.ts'
import type { Item } from '../../morning/page.ts'
import { informs } from '../../morning/page.ts'
import { cautions, cautionsOf } from '../../words/cautions.ts'
import { shortDate } from '../../words/dates.ts'
import { factWords } from '../../words/facts.ts'
import { moveWords, reasonWords, sectionNames, warningWords } from '../../words/list.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { MARGIN, margin, ruled } from '../ruled.ts'
import type { Theme, Tone } from '../theme.ts'
import { cut, fill, widthOf } from '../width.ts'
import { lastWords, screenWords, whenWords } from '../words/screen.ts'
import type { Columns } from './columns.ts'

/** Cells that a reason keeps beside its warnings. */
const LEAST_REASON = 8

/** What the lines are drawn from. */
export interface Drawing {
  readonly book: HerdBook
  /** Facts that tick rows and are not in the book yet. */
  readonly unsettled: readonly Fact[]
  readonly day: Day
  /** Initials of who sits here: what others recorded is marked with theirs. */
  readonly by: string | undefined
  readonly theme: Theme
  readonly cells: number
  readonly columns: Columns
}

/** The line of an item. */
export function itemLine(item: Item, pointed: boolean, drawing: Drawing): Line {
  switch (item.is) {
    case 'move': {
      return margin(pointed, drawing.theme.signs.toDo, drawing, [
        bit(` ${moveWords(item.move)}`, pointed ? 'pointed' : 'strong'),
        bit(`  ${screenWords.opensIt}`, 'faint'),
      ])
    }
    case 'kept-results':
      return margin(pointed, drawing.theme.signs.toDo, drawing, [
        bit(` ${screenWords.keptResults(item.count)}`, pointed ? 'pointed' : 'strong'),
        bit(`  ${screenWords.opensIt}`, 'faint'),
      ])
    case 'heading':
      return headingLine(item, drawing)
    case 'row':
      return rowLine(item.row, pointed, drawing)
    case 'with-bull':
      return margin(pointed, ' ', drawing, [
        bit(` ${screenWords.withBull(item.count)}`, pointed ? 'pointed' : 'plain'),
        bit(`  ${item.open ? screenWords.fold.open : screenWords.fold.closed}`, 'faint'),
      ])
    case 'visit':
      return margin(false, ' ', drawing, [
        bit(` ${screenWords.visit(item.visit.ready, shortDate(item.visit.visit))}`),
      ])
    case 'also':
      return ruled(screenWords.also(item.count), '', '', drawing)
    case 'fact':
      return factLine(item.fact as AnimalFact, pointed, drawing)
  }
}

function headingLine(item: Item & { is: 'heading' }, drawing: Drawing): Line {
  const caution = cautionsOf[item.section][0]
  const counts = informs(item.section)
    ? item.toDo + item.done > 0
      ? screenWords.animals(item.toDo + item.done)
      : ''
    : [item.toDo > 0 ? screenWords.toDo(item.toDo) : '', item.done > 0 ? screenWords.done(item.done) : '']
        .filter((part) => part !== '')
        .join(', ')
  return ruled(
    sectionNames[item.section],
    caution === undefined ? '' : cautions[caution].short,
    counts,
    drawing,
  )
}

function rowLine(row: Row, pointed: boolean, drawing: Drawing): Line {
  const { book, theme, columns } = drawing
  const { signs } = theme
  const record = book.animals.get(row.animal)?.record
  const tone: Tone = row.done ? 'faint' : pointed ? 'pointed' : 'plain'
  const number = bit(
    fill(safeText(row.number), columns.number, signs.cut, 'right'),
    row.done ? 'faint' : 'strong',
  )
  const name =
    columns.name === 0 ? [] : [bit(` ${fill(safeText(record?.name ?? ''), columns.name, signs.cut)}`, tone)]
  const rest = row.done ? doneCells(row, drawing) : openCells(row, tone, drawing)
  const tick = informs(row.section) && !row.done ? ' ' : row.done ? signs.done : signs.toDo
  return margin(pointed, tick, drawing, [number, ...name, ...rest], row.done ? 'good' : 'plain')
}

/** Why, when, and the straw or chance. Warnings follow the reason, marked with a sign. */
function openCells(row: Row, tone: Tone, { theme, columns }: Drawing): Line {
  const { signs } = theme
  const [reason] = row.reasons
  const why = reason === undefined ? '' : reasonWords[reason].phrase
  const warned = row.warnings.map((warning) => `${signs.warning} ${warningWords[warning].phrase}`).join(' ')
  const warning = warned === '' ? '' : ` ${warned}`
  // A warning matters more than the end of the reason.
  const forReason = Math.max(LEAST_REASON, columns.why - widthOf(warning))
  const reasonText = cut(why, forReason, signs.cut)
  const danger = row.section === 'take-care'
  return [
    bit(' '),
    bit(reasonText, danger ? 'care' : tone),
    bit(fill(warning, columns.why - widthOf(reasonText), signs.cut), 'care'),
    bit(` ${fill(whenWords(row), columns.when, signs.cut)}`, tone),
    bit(` ${fill(lastWords(row), columns.last, signs.cut)}`, tone),
  ]
}

/** What ticked the row, in the place of why and when. */
function doneCells(row: Row, { book, unsettled, day, by, theme, columns }: Drawing): Line {
  const date = dayIso(day)
  const settled = (book.animals.get(row.animal)?.happenings ?? []).map(({ fact }) => fact)
  const facts = [
    ...settled,
    ...(unsettled as readonly AnimalFact[]).filter((fact) => fact.about === row.animal),
  ]
  const today = facts.filter((one) => one.date === date)
  // A note does not hide what was done.
  const fact = today.findLast(({ kind }) => kind !== 'note') ?? today.at(-1)
  const cells = columns.why + columns.when + columns.last + 2
  return [
    bit(
      ` ${fill(fact === undefined ? '' : tickWords(fact, by, cells, theme), cells, theme.signs.cut)}`,
      'faint',
    ),
  ]
}

/** What a fact says and, where somebody else recorded it, who: that stays in sight where the rest is cut. */
function tickWords(fact: AnimalFact, by: string | undefined, cells: number, theme: Theme): string {
  const time = fact.time === undefined ? '' : `, ${safeText(fact.time)}`
  const who = fact.by === undefined || fact.by === '' || fact.by === by ? '' : ` (${safeText(fact.by)})`
  return `${cut(`${factWords(fact)}${time}`, cells - widthOf(who), theme.signs.cut)}${who}`
}

function factLine(fact: AnimalFact, pointed: boolean, drawing: Drawing): Line {
  const { book, theme, cells, columns } = drawing
  const record = book.animals.get(fact.about)?.record
  const tone: Tone = pointed ? 'pointed' : 'plain'
  const time = fact.time === undefined ? '' : `, ${safeText(fact.time)}`
  const name =
    columns.name === 0 ? '' : ` ${fill(safeText(record?.name ?? ''), columns.name, theme.signs.cut)}`
  const room = cells - MARGIN - columns.number - widthOf(name) - 1
  return margin(
    pointed,
    theme.signs.done,
    drawing,
    [
      bit(fill(safeText(record?.number ?? ''), columns.number, theme.signs.cut, 'right'), 'strong'),
      bit(name, tone),
      bit(` ${cut(`${factWords(fact)}${time}`, room, theme.signs.cut)}`, tone),
    ],
    'good',
  )
}
