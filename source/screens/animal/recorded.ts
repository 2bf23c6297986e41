/** Who recorded a fact and when, what it stands in the place of, and what was taken back. */
import type { AnimalRecord, Happening } from '../../breeding/book.ts'
import { isoDay } from '../../breeding/day.ts'
import { placeOfWhat, type Struck, takenBackOf } from '../../morning/fact-history.ts'
import { TAKEN_BACK } from '../../morning/history.ts'
import { recordedWords } from '../../words/recorded.ts'
import { bit, type Line } from '../line.tsx'
import { cut } from '../width.ts'
import { animalWords } from '../words/animal.ts'
import type { About } from './about.ts'
import { happeningLine } from './timeline.ts'

/** Earlier versions of a fact that are told of at most. */
const EARLIER = 3
const INDENT = 4

/** The lines below the fact pointed at. */
export function recordedLines({ fact }: Happening, about: About): readonly Line[] {
  const { book } = about.desk
  const { zone } = book.farm
  const earlier = placeOfWhat(book, fact).slice(0, EARLIER)
  return [
    animalWords.recorded(recordedWords(fact, zone)),
    ...earlier.map(({ fact: was }) => animalWords.inPlaceOf(was, recordedWords(was, zone))),
  ].map((text) => indented(text, about))
}

/** Facts that count no more and that nothing took the place of, below the others. */
export function takenBackLines(animal: AnimalRecord, about: About): readonly Line[] {
  const struck = takenBackOf(about.desk.book, animal.id)
  if (struck.length === 0) return []
  return [[bit(` ${animalWords.takenBack}`, 'heading')], ...struck.flatMap((one) => struckLines(one, about))]
}

function struckLines({ fact, by }: Struck, about: About): readonly Line[] {
  const { zone } = about.desk.book.farm
  const happening = { fact, day: isoDay(fact.date), minute: 0, order: 0 }
  return [
    [bit('  '), ...happeningLine(happening, about).map((one) => ({ ...one, tone: 'faint' as const }))],
    indented(
      animalWords.recordedAndStruck(
        recordedWords(fact, zone),
        by.reason === TAKEN_BACK,
        recordedWords(by, zone),
      ),
      about,
    ),
  ]
}

const indented = (text: string, { cells, theme }: About): Line => [
  bit(`${' '.repeat(INDENT)}${cut(text, cells - INDENT, theme.signs.cut)}`, 'faint'),
]
