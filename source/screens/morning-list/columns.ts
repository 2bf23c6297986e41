/** How wide the columns of the morning list are. */
import type { HerdBook } from '../../breeding/book.ts'
import type { MorningList } from '../../breeding/list.ts'
import { safeText } from '../../words/safe.ts'
import { MARGIN } from '../ruled.ts'
import { widthOf } from '../width.ts'
import { lastWords, whenWords } from '../words/screen.ts'

/** Cells of the columns of a row on a page of some width. */
export interface Columns {
  readonly number: number
  readonly name: number
  readonly why: number
  readonly when: number
  readonly last: number
}

/** Narrower than this there is no room for names. */
const NAMES_FROM = 70
/** Cells that reason and warnings keep before a name is given more than SHORT_NAME. */
const LEAST_WHY = 28
const SHORT_NAME = 10
const LONGEST = { number: 8, name: 16, when: 14, last: 13 } as const

/** Cells of the longest text in each column of a page. */
type Contents = Omit<Columns, 'why'>

/**
 * Columns for a page: as wide as what stands in them, so that names are whole where there is room.
 *
 * @param contents of the page, see contentsOf
 * @example columnsFor(80, { number: 3, name: 12, when: 12, last: 12 }) // { number: 4, name: 12, when: 12, last: 12, why: 31 }
 */
export function columnsFor(cells: number, contents: Contents): Columns {
  const number = Math.min(LONGEST.number, Math.max(4, contents.number))
  const when = Math.min(LONGEST.when, contents.when)
  const last = Math.min(LONGEST.last, contents.last)
  const gaps = cells < NAMES_FROM ? 3 : 4
  const left = cells - MARGIN - number - when - last - gaps
  const roomForName = Math.max(SHORT_NAME, left - LEAST_WHY)
  const name = cells < NAMES_FROM ? 0 : Math.min(LONGEST.name, contents.name, roomForName)
  return { number, name, when, last, why: Math.max(8, left - name) }
}

const known = new WeakMap<MorningList, Contents>()

/** What stands in the columns of a list; found once for each. */
export function contentsOf(list: MorningList, book: HerdBook): Contents {
  const found = known.get(list)
  if (found !== undefined) return found
  const made = { number: 0, name: 0, when: 0, last: 0 }
  for (const row of list.rows) {
    made.number = Math.max(made.number, widthOf(row.number))
    made.name = Math.max(made.name, widthOf(safeText(book.animals.get(row.animal)?.record.name ?? '')))
    made.when = Math.max(made.when, widthOf(whenWords(row)))
    made.last = Math.max(made.last, widthOf(lastWords(row)))
  }
  known.set(list, made)
  return made
}
