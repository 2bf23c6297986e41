/** The screen for a screen reader: a few lines of text with states in words, no rules, no columns. */
import { type Desk, placeOf, showsToday } from '../../morning/desk.ts'
import type { Item } from '../../morning/page.ts'
import type { Place } from '../../morning/place.ts'
import { dateInWords } from '../../words/dates.ts'
import { reasonWords, sectionNames, warningWords } from '../../words/list.ts'
import { safeText } from '../../words/safe.ts'
import { aboutOf } from '../animal/about.ts'
import { whyLines } from '../animal/about-lines.ts'
import { footBindings, shown, type View } from '../keys.ts'
import type { Line } from '../line.tsx'
import { slipLines } from '../slips/slip.ts'
import type { Theme } from '../theme.ts'
import { readerWords } from '../words/reader.ts'
import { lastWords, screenWords, whenWords } from '../words/screen.ts'
import type { Frame } from './frame.ts'
import { otherDay } from './header.ts'
import { said } from './said.ts'

/** Cells of a line: long, because a reader wraps nothing. */
const CELLS = 200

/**
 * The lines that are read out: where one is, what was said, the row pointed at with its state, the keys.
 *
 * @param frame of the same desk, for pages that are not the list
 */
export function readerLines(desk: Desk, frame: Frame, theme: Theme): readonly string[] {
  return [
    heading(desk),
    ...said(desk, CELLS, theme, 3).map(plain),
    ...(desk.slip === undefined ? page(desk, frame, theme) : slip(desk, theme)),
    keys(desk, frame.view),
  ].filter((line) => line !== '')
}

/** A line without its tones, its rules and the gaps between its columns. */
const plain = (line: Line): string =>
  line
    .map((one) => one.text)
    .join('')
    .replaceAll(/[─━│║▁▲▼○●█▒░┼]+|[-=]{2,}/g, ' ')
    .replaceAll(/\s{2,}/g, ', ')
    .replaceAll(/^[, ]+|[, ]+$/g, '')

/** A line of a page: the one pointed at and its mark are told by words. */
function told(line: Line, { signs }: Theme): string {
  const [first, mark] = line
  const here = first?.text.startsWith(signs.pointer) === true
  const state =
    mark?.text.trim() === signs.done
      ? readerWords.marked
      : mark?.text.trim() === signs.toDo
        ? readerWords.notMarked
        : ''
  const words = plain(here ? line.slice(1) : line)
  return `${here ? readerWords.pointed : ''}${state === '' || words === '' ? '' : `${state}, `}${words}`
}

function heading(desk: Desk): string {
  const { state, waiting } = desk.saving
  const saving = {
    saved: screenWords.saved,
    saving: screenWords.saving,
    'not-saved': screenWords.notSaved(waiting),
    'read-only': screenWords.readOnly,
  }[state]
  const { day } = desk.page.list
  const other = showsToday(desk) ? '' : `, ${otherDay(desk)}`
  return `${safeText(desk.book.farm.name)}, ${dateInWords(day)}${other}. ${saving}.`
}

function page(desk: Desk, frame: Frame, theme: Theme): readonly string[] {
  const { at } = placeOf(desk)
  if (at !== 'morning-list')
    return [...frame.body.map((line) => withoutDots(told(line, theme), at)), ...frame.about.map(plain)]
  const { items, pointer, toDo, done } = desk.page
  const item = items[pointer]
  if (item === undefined) return [screenWords.nothing, screenWords.nothingWhy(desk.book.animals.size)]
  const rows = items.filter((one) => one.is === 'row')
  const place = item.is === 'row' ? readerWords.place(rows.indexOf(item) + 1, rows.length) : ''
  const animal = item.is === 'row' ? desk.book.animals.get(item.row.animal) : undefined
  const why =
    animal === undefined || item.is !== 'row'
      ? []
      : whyLines(aboutOf(desk, animal, item.row, CELLS, theme)).map(plain)
  return [
    screenWords.progress(done, done + toDo),
    `${place}${itemWords(desk, item) ?? lineAt(frame, theme)}`,
    ...why,
  ]
}

/** A dot alone counts none on the days ahead; elsewhere it only parts words. */
const withoutDots = (text: string, at: Place['at']): string =>
  text.replaceAll(/(^|, )·(?=,|$)/g, at === 'ahead' ? '$10' : '').replaceAll(/·\s?/g, '')

/** The line pointed at, as it stands on the page. */
function lineAt({ body }: Frame, { signs }: Theme): string {
  const line = body.find(([first]) => first?.text.startsWith(signs.pointer))
  return line === undefined ? '' : plain(line.slice(1))
}

/** The row pointed at, its state in words; undefined where it is another line. */
function itemWords(desk: Desk, item: Item): string | undefined {
  if (item.is === 'with-bull') return screenWords.withBull(item.count)
  if (item.is !== 'row') return undefined
  const { row } = item
  const name = desk.book.animals.get(row.animal)?.record.name ?? ''
  const [reason] = row.reasons
  return [
    sectionNames[row.section],
    `${safeText(row.number)} ${safeText(name)}`.trim(),
    row.done ? readerWords.done : readerWords.toDo,
    reason === undefined ? '' : reasonWords[reason].phrase,
    ...row.warnings.map((warning) => readerWords.warning(warningWords[warning].phrase)),
    whenWords(row),
    lastWords(row),
  ]
    .filter((part) => part !== '')
    .join(', ')
}

/** What lies on top; of a form the field that keys go to is marked by a word. */
const slip = (desk: Desk, theme: Theme): readonly string[] =>
  slipLines(desk, CELLS, 40, theme).map((line) =>
    plain(line).replace(`${theme.signs.pointer} `, readerWords.here),
  )

const keys = (desk: Desk, view: View): string =>
  readerWords.keys(
    footBindings(desk, view)
      .slice(0, 6)
      .map((binding) => shown(desk, binding, view))
      .map((one) => `${one.keys} ${one.label}`)
      .join(', '),
  )
