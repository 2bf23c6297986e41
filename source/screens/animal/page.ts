/** The page of one animal: who she is and how she stands, then every fact on record with the pointer on one. */
import type { AnimalRecord } from '../../breeding/book.ts'
import type { Desk } from '../../morning/desk.ts'
import { rowOf } from '../../morning/page.ts'
import type { Place } from '../../morning/place.ts'
import { bit, type Line } from '../line.tsx'
import type { Theme } from '../theme.ts'
import { animalWords } from '../words/animal.ts'
import { aboutOf, standingLines, strawLines, titleLines, whyLines } from './about.ts'
import { cycleRuler } from './ruler.ts'
import { happeningLine } from './timeline.ts'

export interface AnimalPage {
  /** Who she is: stays in sight. */
  readonly top: readonly Line[]
  /** Her facts, newest first. */
  readonly facts: readonly Line[]
}

/** The lines of the page. */
export function animalPage(
  desk: Desk,
  animal: AnimalRecord,
  place: Place & { at: 'animal' },
  cells: number,
  theme: Theme,
): AnimalPage {
  const about = aboutOf(desk, animal, rowOf(desk.page, animal.id), cells - 2, theme)
  const top: Line[] = [
    ...titleLines(about),
    ...whyLines(about),
    ...cycleRuler(about),
    ...standingLines(about),
    ...strawLines(about),
  ]
  const facts = animal.happenings.toReversed().map((happening, index): Line => {
    const pointed = index === place.pointer
    return [
      bit(pointed ? `${theme.signs.pointer} ` : '  ', 'light'),
      ...happeningLine(happening, about).map((one) => (pointed ? { ...one, tone: 'pointed' as const } : one)),
    ]
  })
  const none: Line[] = [[bit(` ${animalWords.nothing}`, 'faint')]]
  return { top: top.map((line) => [bit(' '), ...line]), facts: facts.length === 0 ? none : facts }
}
