/** What is said above the keys: the number being typed, the last message, trouble with saving, a hint. */
import type { Desk } from '../../morning/desk.ts'
import { foundByNumber } from '../../morning/find.ts'
import { type Hint, hintOf } from '../../morning/hints.ts'
import { sentence } from '../../words/index.ts'
import { screens } from '../keys/screens.ts'
import { slips } from '../keys/slips.ts'
import { bit, type Line } from '../line.tsx'
import type { Theme, Tone } from '../theme.ts'
import { wrap } from '../width.ts'
import { hintWords } from '../words/hints.ts'
import { keyNames } from '../words/keys.ts'
import { messageWords } from '../words/messages.ts'
import { screenWords } from '../words/screen.ts'
import { animalTitle } from './animal-title.ts'

const tones: Readonly<Record<'done' | 'why' | 'care', Tone>> = { done: 'good', why: 'plain', care: 'care' }

interface Said {
  readonly text: string
  readonly tone: Tone
}

/** The last message, then all that stands in the way of saving or was noticed. */
export function saidTexts({ said, saving, ...desk }: Desk): readonly Said[] {
  const tone: Tone = saving.state === 'saved' ? 'plain' : 'wrong'
  return [
    ...(said === undefined ? [] : [{ text: messageWords(said, desk), tone: tones[said.tone] }]),
    ...saving.problems.map((problem) => ({ text: sentence(problem), tone })),
  ]
}

/** Whether there is more to say than fits. */
export const isCut = (desk: Desk, cells: number, theme: Theme, most: number): boolean =>
  saidTexts(desk).flatMap(({ text }) => wrap(text, cells - 2, most + 1, theme.signs.cut)).length > most

/** Lines of what is said, at most two: the number being typed, the last message, else trouble with saving. */
export function said(desk: Desk, cells: number, theme: Theme, most: number): readonly Line[] {
  const lines = ({ text, tone }: Said): readonly Line[] =>
    wrap(text, cells - 2, most, theme.signs.cut).map((line) => [bit(` ${line}`, tone)])
  if (desk.typed !== '' && desk.said === undefined) return [typedLine(desk, theme)]
  const [first] = saidTexts(desk)
  if (first !== undefined) return lines(first)
  const hint = hintOf(desk)
  return hint === undefined ? [] : lines({ text: hintSentence(hint), tone: 'faint' })
}

/** A hint with the keys as they are in the table of keys. */
const hintSentence = (hint: Hint): string =>
  hintWords[hint].replace(/\{([\w-]+)\}/g, (gap, name: string) => {
    const binding = [...screens['morning-list'], ...slips.go].find((one) => one.name === name)
    const [key = ''] = binding?.keys ?? []
    return binding === undefined ? gap : (keyNames[key] ?? key)
  })

/** The number being typed, and whom it means. */
function typedLine(desk: Desk, theme: Theme): Line {
  const found = foundByNumber(desk.book, desk.typed)
  const typed = [bit(` ${screenWords.typed(desk.typed)}`, 'entry'), bit(`${theme.signs.caret} `, 'light')]
  if (found.animal === undefined) {
    const many = found.many > 1 ? `${screenWords.animals(found.many)}` : theme.signs.dash
    return [...typed, bit(` ${many}`, 'faint')]
  }
  return [...typed, bit(` ${animalTitle(desk, found.animal)}`, 'strong')]
}
