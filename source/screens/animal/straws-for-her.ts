/** The straws in the flask, ranked for her: how many are left, and how inbred her calf would be. */
import type { RankedStraw } from '../../breeding/straws/rank.ts'
import { strawsOnList } from '../../breeding/straws-on-list.ts'
import { rankingOf } from '../../morning/straw-ranking.ts'
import { strawWords } from '../../words/facts.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { cut, fill } from '../width.ts'
import { animalWords } from '../words/animal.ts'
import type { About } from './about.ts'

/** Straws that are told. */
const MOST = 6
const STRAW = 20
const LEFT = 9
/** From so many cells on there is room for the generations known. */
const WIDE = 56

/** None for a male, an animal in calf, barred or gone, and none where the flask is empty. */
export function strawsForHer({ desk, standing, cells, theme }: About): readonly Line[] {
  const { female, inHerd, inCalf, barred } = standing
  if (!female || !inHerd || inCalf || barred) return []
  const { book, page } = desk
  const { ranked } = strawsOnList(book, page.list.rows, standing, rankingOf(book, page.list.day))
  if (ranked.length === 0) return []
  const straw = Math.min(STRAW, Math.floor(cells / 2))
  return [
    [bit(animalWords.straws, 'heading')],
    ...ranked.slice(0, MOST).map((one): Line => {
      const words = cut(kinWords(one, cells >= WIDE), cells - straw - LEFT, theme.signs.cut)
      return [
        bit(fill(safeText(strawWords(one.sire, one.straw)), straw, theme.signs.cut), 'strong'),
        bit(fill(animalWords.strawLeft(one.left), LEFT, theme.signs.cut)),
        bit(words, one.needsConfirming ? 'care' : 'faint'),
      ]
    }),
  ]
}

const kinWords = (
  { inbreeding, generations, straw, needsConfirming }: RankedStraw,
  wide: boolean,
): string => {
  // A beef calf is not bred from: it does not matter whom she descends from.
  if (straw === 'beef') return ''
  const parts = [
    needsConfirming ? animalWords.confirm : '',
    animalWords.inbred(inbreeding, wide),
    wide ? animalWords.generations(generations) : '',
  ]
  return parts.filter((part) => part !== '').join(', ')
}
