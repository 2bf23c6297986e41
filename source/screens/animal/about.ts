/** What a column about an animal is drawn from. */
import type { AnimalRecord } from '../../breeding/book.ts'
import type { Row } from '../../breeding/list.ts'
import { type Standing, standingOn } from '../../breeding/standing.ts'
import type { Desk } from '../../morning/desk.ts'
import { paragraph as wrapped } from '../text.ts'
import type { Theme, Tone } from '../theme.ts'

export interface About {
  readonly desk: Desk
  readonly animal: AnimalRecord
  readonly row: Row | undefined
  readonly standing: Standing
  readonly cells: number
  readonly theme: Theme
}

export const aboutOf = (
  desk: Desk,
  animal: AnimalRecord,
  row: Row | undefined,
  cells: number,
  theme: Theme,
): About => ({ desk, animal, row, cells, theme, standing: standingOn(desk.book, animal, desk.page.list.day) })

/** Text on as many lines as it needs, at most `most`. */
export const paragraph = ({ cells, theme }: About, text: string, tone: Tone = 'plain', most = 6) =>
  wrapped(text, cells, theme, tone, most)
