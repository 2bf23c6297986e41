/** What the facts of an animal come to: her services, her checks, her parents, the straws for her. */
import type { AnimalRecord } from '../../breeding/book.ts'
import { plusDays } from '../../breeding/day.ts'
import { standingOn } from '../../breeding/standing.ts'
import type { Desk } from '../../morning/desk.ts'
import { rowOf } from '../../morning/page.ts'
import type { Line } from '../line.tsx'
import { movedIn, parted } from '../text.ts'
import type { Theme } from '../theme.ts'
import { type About, aboutOf } from './about.ts'
import { standingLines, titleLines } from './about-lines.ts'
import { checkLines } from './checks.ts'
import { parentLines } from './parents.ts'
import { serviceLines } from './services.ts'
import { strawsForHer } from './straws-for-her.ts'

/** What is shown as things stand tonight: what was recorded today counts. */
function tonight(desk: Desk, animal: AnimalRecord, cells: number, theme: Theme): About {
  const about = aboutOf(desk, animal, rowOf(desk.page, animal.id), cells, theme)
  return { ...about, standing: standingOn(desk.book, animal, plusDays(desk.page.list.day, 1)) }
}

const partsOf = (
  desk: Desk,
  animal: AnimalRecord,
  cells: number,
  theme: Theme,
): readonly (readonly Line[])[] => {
  const about = tonight(desk, animal, cells, theme)
  const morning = aboutOf(desk, animal, rowOf(desk.page, animal.id), cells, theme)
  return [serviceLines(about), checkLines(about), parentLines(about), strawsForHer(morning)]
}

/** The page, where there is no room beside her facts. */
export function moreLines(desk: Desk, animal: AnimalRecord, cells: number, theme: Theme): readonly Line[] {
  const about = aboutOf(desk, animal, rowOf(desk.page, animal.id), cells - 2, theme)
  const who = [...titleLines(about), ...standingLines(about)]
  return movedIn(parted([who, ...partsOf(desk, animal, cells - 2, theme)]))
}

/** The same beside her facts, where there is room. */
export const besideFacts = (desk: Desk, animal: AnimalRecord, cells: number, theme: Theme): readonly Line[] =>
  parted(partsOf(desk, animal, cells, theme))
