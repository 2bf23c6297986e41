/** Who has to be drafted at the parlour exit: the animals of the list that somebody must lay hands on. */
import type { HerdBook } from '../../breeding/book.ts'
import type { SessionName } from '../../breeding/facts.ts'
import type { MorningList, Row } from '../../breeding/list.ts'
import { compareNumbers } from '../../breeding/order.ts'
import type { Reason } from '../../breeding/sections.ts'

/** Of Take care only these ask for the animal herself; the others ask for a decision or for a fact. */
const handsOn: readonly Reason[] = ['in-calf-heat', 'served-in-calf', 'short-interval', 'calved-30-41']

export interface DraftOptions {
  /** Only for this milking. What is not tied to a milking is drafted in the morning. */
  readonly session?: SessionName
  /** Also the animals that wait for the vet. */
  readonly vet?: boolean
}

/**
 * The animals to draft, by number: to be served today, to be looked at before that, to be checked (unless the milk
 * tells). Ticked rows and those of tomorrow's milkings are left out.
 *
 * @example draftRows(book, list, { session: 'evening' }).map((row) => row.number) // ['88', '412']
 */
export const draftRows = (book: HerdBook, list: MorningList, options: DraftOptions): Row[] =>
  list.rows
    .filter((row) => !row.done && needsHands(book, row, options) && atSession(row, options.session))
    .sort((a, b) => compareNumbers(a.number, b.number))

function needsHands(book: HerdBook, row: Row, { vet }: DraftOptions): boolean {
  switch (row.section) {
    case 'serve':
    case 'second-service':
      return row.session === 'morning' || row.session === 'evening'
    case 'pregnancy-check':
      return book.policy.checkMethod !== 'milk'
    case 'take-care':
      return row.reasons.some((reason) => handsOn.includes(reason))
    case 'no-heat-seen':
      return vet === true
    default:
      return false
  }
}

const atSession = (row: Row, session: SessionName | undefined): boolean =>
  session === undefined || (row.session ?? 'morning') === session
