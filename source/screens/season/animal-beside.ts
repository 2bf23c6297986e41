/** The animal pointed at in a list, told beside it or below it. */
import type { Desk } from '../../morning/desk.ts'
import { rowOf } from '../../morning/page.ts'
import { aboutOf } from '../animal/about.ts'
import { aboutLines, shortWhy, standingLines } from '../animal/about-lines.ts'
import type { PageLines, Room } from '../page-lines.ts'
import { movedIn } from '../text.ts'

/** Lines of a strip. */
const STRIP = 3

export function besideOf(
  desk: Desk,
  id: string | undefined,
  room: Room,
): Pick<Required<PageLines>, 'beside' | 'strip'> {
  const animal = id === undefined ? undefined : desk.book.animals.get(id)
  if (animal === undefined) return { beside: [], strip: [] }
  const row = rowOf(desk.page, animal.id)
  if (room.beside > 0)
    return { beside: aboutLines(aboutOf(desk, animal, row, room.beside, room.theme)), strip: [] }
  const about = aboutOf(desk, animal, row, room.cells - 2, room.theme)
  const why = row === undefined ? [] : shortWhy(about, 2)
  return { beside: [], strip: movedIn([...why, ...standingLines(about)].slice(0, STRIP)) }
}
