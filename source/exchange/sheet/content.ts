/** What stands on the sheet of a day, without a form: the day's work in the order of the list. */
import { movesDue } from '../../breeding/ahead/moves-due.ts'
import type { HerdBook } from '../../breeding/book.ts'
import type { Day } from '../../breeding/day.ts'
import type { MorningList, Row } from '../../breeding/list.ts'
import { rowsBySection } from '../../breeding/morning-list.ts'
import { compareNumbers } from '../../breeding/order.ts'
import type { Section } from '../../breeding/sections.ts'
import { type Lot, stockOn } from '../../breeding/straws/stock.ts'
import { type CautionName, cautions, cautionsOf } from '../../words/cautions.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import { moveWords, reasonWords, sectionNames, sessionNames, warningWords } from '../../words/list.ts'
import { blockLine, chanceWords, sinceWords } from '../list/text.ts'
import { servingCard } from './serving-card.ts'

export interface SheetRow {
  readonly number: string
  readonly name: string
  /** What she is on the list for, and since when. */
  readonly what: string
  /** What to mind, each a few words; empty where there is nothing. */
  readonly warnings: readonly string[]
  /** Which milking; empty where it is no matter of a milking. */
  readonly session: string
  /** Sire and kind; empty without a straw. */
  readonly straw: string
  /** Flask and canister of that straw, as far as they are known. */
  readonly place: string
  readonly done: boolean
}

export interface SheetSection {
  readonly section: Section
  readonly name: string
  readonly todo: number
  /** The animals of a scanning visit, by number, with room for what the scanner says. */
  readonly scanning: boolean
  /** Short cautions of this work. */
  readonly cautions: readonly string[]
  readonly rows: readonly SheetRow[]
  /** Animals of whom the number is enough, to be crossed off. */
  readonly numbers: readonly { readonly number: string; readonly done: boolean }[]
  /** Said once for many animals: `212 with the bull`. */
  readonly lines: readonly string[]
}

export interface SheetContent {
  readonly farm: string
  /** `Thu 28 May 2026` */
  readonly date: string
  /** A line a block: where its season stands. */
  readonly blocks: readonly string[]
  /** The day's cautions in full, and in short for the foot of each page. */
  readonly cautions: readonly string[]
  readonly shortCautions: readonly string[]
  /** How today's straws are thawed, step by step; empty on a day without. */
  readonly servingCard: readonly string[]
  readonly sections: readonly SheetSection[]
}

/**
 * The content of the sheet.
 *
 * @example sheetContent(book, morningList(book, day)).sections[0]?.name // 'Take care'
 */
export function sheetContent(book: HerdBook, list: MorningList): SheetContent {
  const { lots } = stockOn(book, list.day)
  const sections = [...rowsBySection(list)].flatMap(([section, rows]) => {
    const scanned = section === 'pregnancy-check' ? rows.filter((row) => isVisited(book, row, list.day)) : []
    const others = rows.filter((row) => !scanned.includes(row))
    return [
      ...(scanned.length === 0 ? [] : [scanningOf(book, section, scanned)]),
      ...(others.length === 0 ? [] : [sectionOf(book, lots, section, others)]),
    ]
  })
  const names = cautionsOfDay(list)
  const visits = list.visits.map(
    ({ block, ready, visit }) =>
      `${block} block: ${ready} ready for the scanning visit on ${shortDate(visit)}`,
  )
  return {
    farm: book.farm.name,
    date: dateInWords(list.day),
    blocks: [...list.blocks.map(blockLine), ...movesDue(book, list).map(moveWords), ...visits],
    cautions: names.map((name) => cautions[name].full),
    shortCautions: names.map((name) => cautions[name].short),
    servingCard: servingCard(book, list.rows),
    sections,
  }
}

/** The cautions of the sections that have work, and of every loss; the law always. */
function cautionsOfDay(list: MorningList): readonly CautionName[] {
  const names = new Set<CautionName>()
  for (const row of list.rows) {
    for (const name of cautionsOf[row.section]) names.add(name)
    if (row.reasons.includes('loss')) names.add('catching')
  }
  return [...names, 'law']
}

/** Whether a scanning visit of her block is planned for the day. */
const isVisited = (book: HerdBook, { block }: Row, day: Day): boolean =>
  book.allSeasons.some((season) => season.block === block && season.scanDays.includes(day))

/** The list for who scans: in the order of numbers, with the days since the service and without our chances. */
function scanningOf(book: HerdBook, section: Section, rows: readonly Row[]): SheetSection {
  return {
    section,
    name: 'Scanning visit',
    todo: rows.filter(({ done }) => !done).length,
    scanning: true,
    cautions: cautionsOf[section].map((name) => cautions[name].short),
    rows: rows
      .toSorted((a, b) => compareNumbers(a.number, b.number))
      .map((row) => ({
        ...plainRow(book, row),
        what: [
          sinceWords(row),
          ...row.reasons.filter((reason) => reason !== 'due').map((reason) => reasonWords[reason].phrase),
        ]
          .filter((part) => part !== '')
          .join(', '),
      })),
    numbers: [],
    lines: [],
  }
}

function sectionOf(
  book: HerdBook,
  lots: readonly Lot[],
  section: Section,
  rows: readonly Row[],
): SheetSection {
  const withBull = rows.filter(({ reasons }) => reasons[0] === 'window' && section === 'sweep-bull')
  const listed = rows.filter((row) => !withBull.includes(row) && section !== 'heat-record')
  return {
    section,
    name: sectionNames[section],
    todo: rows.filter(({ done }) => !done).length,
    scanning: false,
    cautions: cautionsOf[section].map((name) => cautions[name].short),
    rows: listed.map((row) => rowOf(book, lots, row)),
    numbers: section === 'heat-record' ? rows.map(({ number, done }) => ({ number, done })) : [],
    lines: withBull.length === 0 ? [] : [`${withBull.length} with the bull`],
  }
}

const plainRow = (book: HerdBook, row: Row): Omit<SheetRow, 'what'> => ({
  number: row.number,
  name: book.animals.get(row.animal)?.record.name ?? '',
  warnings: row.warnings.map((warning) => warningWords[warning].phrase),
  session: row.session === undefined ? '' : sessionNames[row.session],
  straw: '',
  place: '',
  done: row.done,
})

function rowOf(book: HerdBook, lots: readonly Lot[], row: Row): SheetRow {
  const { straw } = row
  const lot =
    straw === undefined
      ? undefined
      : lots.find((each) => each.sire === straw.sire && each.straw === straw.straw && each.left > 0)
  return {
    ...plainRow(book, row),
    what: [
      ...row.reasons.map((reason) => reasonWords[reason].phrase),
      sinceWords(row),
      row.straw === undefined ? chanceWords(row) : '',
      row.also === undefined ? '' : `else ${sectionNames[row.also].toLowerCase()}`,
    ]
      .filter((part) => part !== '')
      .join(', '),
    straw: straw === undefined ? '' : `${straw.sire} ${straw.straw}`,
    place: lot === undefined ? '' : placeOf(lot),
  }
}

/** @example 'flask 1, canister 3' */
const placeOf = ({ flask, canister }: Lot): string =>
  [
    ['flask', flask],
    ['canister', canister],
  ]
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `${name} ${value}`)
    .join(', ')
