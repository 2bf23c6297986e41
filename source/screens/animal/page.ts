/** The page of one animal: who she is and how she stands, then every fact on record with the pointer on one. */
import type { AnimalRecord } from '../../breeding/book.ts'
import type { Desk } from '../../morning/desk.ts'
import { rowOf } from '../../morning/page.ts'
import type { Place } from '../../morning/place.ts'
import { bit, type Line } from '../line.tsx'
import type { Theme } from '../theme.ts'
import { animalWords } from '../words/animal.ts'
import { aboutOf } from './about.ts'
import { standingLines, strawLines, titleLines, whyLines } from './about-lines.ts'
import { recordedLines, takenBackLines } from './recorded.ts'
import { cycleRuler } from './ruler.ts'
import { happeningLine } from './timeline.ts'

interface AnimalPage {
  /** Who she is: stays in sight. */
  readonly top: readonly Line[]
  /** Her facts, newest first. */
  readonly facts: readonly Line[]
  /** Below the fact pointed at: who recorded it, and what it stands in the place of. */
  readonly told: readonly Line[]
  /** Below all of them: what was taken back. */
  readonly takenBack: readonly Line[]
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
  const happenings = animal.happenings.toReversed()
  const facts = happenings.map((happening, index): Line => {
    const pointed = index === place.pointer
    return [
      bit(pointed ? `${theme.signs.pointer} ` : '  ', 'light'),
      ...happeningLine(happening, about).map((one) => (pointed ? { ...one, tone: 'pointed' as const } : one)),
    ]
  })
  const none: Line[] = [[bit(` ${animalWords.nothing}`, 'faint')]]
  const pointed = happenings[place.pointer]
  return {
    top: top.map((line) => [bit(' '), ...line]),
    facts: facts.length === 0 ? none : facts,
    told: pointed === undefined ? [] : recordedLines(pointed, about),
    takenBack: takenBackLines(animal, about),
  }
}
