/** What stands on the sheet of a day, without a form: the day's work in the order of the list. */
import { movesDue } from '../../breeding/ahead/moves-due.ts'
import type { HerdBook } from '../../breeding/book.ts'
import type { MorningList, Row, Section } from '../../breeding/list.ts'
import { rowsBySection } from '../../breeding/morning-list.ts'
import { type Lot, stockOn } from '../../breeding/straws/stock.ts'
import { type CautionName, cautions, cautionsOf } from '../../words/cautions.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import { moveWords, reasonWords, sectionNames, sessionNames, warningWords } from '../../words/list.ts'
import { blockLine, chanceWords, sinceWords } from '../list/text.ts'

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
  /** The day's cautions in full. */
  readonly cautions: readonly string[]
  readonly sections: readonly SheetSection[]
}

/**
 * The content of the sheet.
 *
 * @example sheetContent(book, morningList(book, day)).sections[0]?.name // 'Take care'
 */
export function sheetContent(book: HerdBook, list: MorningList): SheetContent {
  const { lots } = stockOn(book, list.day)
  const sections = [...rowsBySection(list)].map(([section, rows]) => sectionOf(book, lots, section, rows))
  const visits = list.visits.map(
    ({ block, ready, visit }) =>
      `${block} block: ${ready} ready for the scanning visit on ${shortDate(visit)}`,
  )
  return {
    farm: book.farm.name,
    date: dateInWords(list.day),
    blocks: [...list.blocks.map(blockLine), ...movesDue(book, list).map(moveWords), ...visits],
    cautions: cautionsOfDay(list),
    sections,
  }
}

/** The cautions of the sections that have work, and of every loss; the law always. */
function cautionsOfDay(list: MorningList): string[] {
  const names = new Set<CautionName>()
  for (const row of list.rows) {
    for (const name of cautionsOf[row.section]) names.add(name)
    if (row.reasons.includes('loss')) names.add('catching')
  }
  return [...names, 'law' as const].map((name) => cautions[name].full)
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
    cautions: cautionsOf[section].map((name) => cautions[name].short),
    rows: listed.map((row) => rowOf(book, lots, row)),
    numbers: section === 'heat-record' ? rows.map(({ number, done }) => ({ number, done })) : [],
    lines: withBull.length === 0 ? [] : [`${withBull.length} with the bull`],
  }
}

function rowOf(book: HerdBook, lots: readonly Lot[], row: Row): SheetRow {
  const { straw } = row
  const lot =
    straw === undefined
      ? undefined
      : lots.find((each) => each.sire === straw.sire && each.straw === straw.straw && each.left > 0)
  return {
    number: row.number,
    name: book.animals.get(row.animal)?.record.name ?? '',
    what: [
      ...row.reasons.map((reason) => reasonWords[reason].phrase),
      sinceWords(row),
      row.straw === undefined ? chanceWords(row) : '',
      row.also === undefined ? '' : `else ${sectionNames[row.also].toLowerCase()}`,
    ]
      .filter((part) => part !== '')
      .join(', '),
    warnings: row.warnings.map((warning) => warningWords[warning].phrase),
    session: row.session === undefined ? '' : sessionNames[row.session],
    straw: straw === undefined ? '' : `${straw.sire} ${straw.straw}`,
    place: lot === undefined ? '' : placeOf(lot),
    done: row.done,
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
