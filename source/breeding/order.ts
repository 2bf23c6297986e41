/** The order of the rows. */
import { compareTexts } from './compare-texts.ts'
import type { Row } from './list.ts'
import { type Reason, reasonsOf, sections } from './sections.ts'
import type { ServingSession } from './session.ts'

/** Most numbers are plain, and there are many comparisons in a list. */
const plain = /^[1-9]\d{0,8}$/
const runsOf = (number: string): readonly string[] => number.match(/(\d+|\D+)/g) ?? []

/**
 * Compares animal numbers in runs, digits by value: "9" < "41" < "412" < "A3".
 *
 * @returns negative, zero or positive
 * @example compareNumbers('A3', 'A12') // negative
 */
export function compareNumbers(a: string, b: string): number {
  if (plain.test(a) && plain.test(b)) return Number(a) - Number(b)
  const left = runsOf(a)
  const right = runsOf(b)
  for (const [place, x] of left.entries()) {
    const y = right[place]
    if (y === undefined) break
    const bothDigits = /^\d/.test(x) && /^\d/.test(y)
    const byValue = bothDigits ? x.replace(/^0+(?=\d)/, '').length - y.replace(/^0+(?=\d)/, '').length : 0
    if (byValue !== 0) return byValue
    const p = bothDigits ? x.replace(/^0+(?=\d)/, '') : x
    const q = bothDigits ? y.replace(/^0+(?=\d)/, '') : y
    if (p !== q) return p < q ? -1 : 1
  }
  return left.length - right.length || compareTexts(a, b)
}

const sessions: readonly (ServingSession | undefined)[] = [
  'morning',
  'evening',
  'next-morning',
  'next-evening',
]
const sessionOrder = (row: Row): number => sessions.indexOf(row.session)
const codeOrder = (row: Row): number =>
  (reasonsOf[row.section] as readonly (Reason | undefined)[]).indexOf(row.reasons[0])

/** What orders the rows of a section after their block; ties go by number. */
function within(a: Row, b: Row): number {
  switch (a.section) {
    case 'take-care':
    case 'sweep-bull':
      return codeOrder(a) - codeOrder(b)
    case 'serve':
    case 'second-service':
      return sessionOrder(a) - sessionOrder(b) || a.moment - b.moment
    case 'repeat-heat-watch':
      return (b.chance ?? 0) - (a.chance ?? 0)
    case 'pregnancy-check':
    case 'no-heat-seen':
      return (b.days ?? Number.NEGATIVE_INFINITY) - (a.days ?? Number.NEGATIVE_INFINITY) || 0
    default:
      return 0
  }
}

/**
 * Compares rows for the screen: section, block, then take-care and sweep-bull by code, serve by session and moment,
 * the watch by the best chance of a return, checks and no-heat-seen longest first; ties by number.
 *
 * @param blocks place of each block among the blocks shown; animals without a block come last
 */
export const compareRows =
  (blocks: ReadonlyMap<string, number>) =>
  (a: Row, b: Row): number => {
    const blockOf = (row: Row): number => blocks.get(row.block ?? '') ?? blocks.size
    return (
      sections.indexOf(a.section) - sections.indexOf(b.section) ||
      blockOf(a) - blockOf(b) ||
      within(a, b) ||
      compareNumbers(a.number, b.number)
    )
  }
