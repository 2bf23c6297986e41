/** What a column about an animal is drawn from. */
import type { AnimalRecord } from '../../breeding/book.ts'
import type { Row } from '../../breeding/list.ts'
import { type Standing, standingOn } from '../../breeding/standing.ts'
import type { Desk } from '../../morning/desk.ts'
import { bit, type Line } from '../line.tsx'
import type { Theme, Tone } from '../theme.ts'
import { wrap } from '../width.ts'

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

/** Text on as many lines as it needs. */
export const paragraph = ({ cells, theme }: About, text: string, tone: Tone = 'plain', most = 6): Line[] =>
  wrap(text, cells, most, theme.signs.cut).map((line) => [bit(line, tone)])
