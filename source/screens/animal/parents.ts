/** Her pedigree, two generations: her parents and theirs. */
import { animalNamed, type HerdBook } from '../../breeding/book.ts'
import { sireOf } from '../../breeding/sire.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { cut } from '../width.ts'
import { animalWords } from '../words/animal.ts'
import type { About } from './about.ts'

export function parentLines({ animal, desk, cells, theme }: About): readonly Line[] {
  const { book } = desk
  const { sire, dam } = animal.record
  const line = (what: string, name: string | undefined): Line => [
    bit(`${what.padEnd(5)}`, 'faint'),
    bit(cut(shownName(book, name), cells - 5, theme.signs.cut), name === undefined ? 'faint' : 'strong'),
  ]
  const theirs = (name: string | undefined): readonly Line[] => {
    const record = animalNamed(book, name)?.record
    if (name === undefined || record === undefined) return []
    const words =
      record.sire === undefined && record.dam === undefined
        ? animalWords.theirsNotKnown
        : `${animalWords.herSire} ${shownName(book, record.sire)}, ${animalWords.herDam} ${shownName(book, record.dam)}`
    return [[bit(`     ${cut(words, cells - 5, theme.signs.cut)}`, 'faint')]]
  }
  return [
    [bit(animalWords.parents, 'heading')],
    line(animalWords.sire, sire),
    ...theirs(sire),
    line(animalWords.dam, dam),
    ...theirs(dam),
  ]
}

/** Number or code, with the name where one is known. */
function shownName(book: HerdBook, name: string | undefined): string {
  if (name === undefined) return animalWords.notKnown
  const own = animalNamed(book, name)?.record.name ?? sireOf(book, name).name
  return safeText(own === undefined || own === name ? name : `${name} ${own}`)
}
