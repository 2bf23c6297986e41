/** The foot of every screen: one line for what was said, one for the keys that work now. */
import type { Desk } from '../../morning/desk.ts'
import { foundByNumber } from '../../morning/find.ts'
import { type Hint, hintOf } from '../../morning/hints.ts'
import { sentence } from '../../words/index.ts'
import { safeText } from '../../words/safe.ts'
import { screens } from '../keys/screens.ts'
import { slips } from '../keys/slips.ts'
import { footBindings, shown, type View } from '../keys.ts'
import { type Bit, bit, type Line, lineWidth } from '../line.tsx'
import type { Theme, Tone } from '../theme.ts'
import { wrap } from '../width.ts'
import { hintWords } from '../words/hints.ts'
import { keyNames } from '../words/keys.ts'
import { messageWords } from '../words/messages.ts'
import { screenWords } from '../words/screen.ts'
import { animalTitle } from './animal-title.ts'

const tones: Readonly<Record<'done' | 'why' | 'care', Tone>> = { done: 'good', why: 'plain', care: 'care' }

/** Lines of what was said, at most two: the number being typed, trouble with saving, else the last message. */
export function said(desk: Desk, cells: number, theme: Theme, most: number): readonly Line[] {
  const { saving } = desk
  const lines = (text: string, tone: Tone): readonly Line[] =>
    wrap(text, cells - 2, most, theme.signs.cut).map((line) => [bit(` ${line}`, tone)])
  if (desk.typed !== '' && desk.said === undefined) return [typedLine(desk, theme)]
  if (desk.said !== undefined) return lines(messageWords(desk.said, desk), tones[desk.said.tone])
  const [trouble] = saving.problems
  const hint = hintOf(desk)
  if (trouble === undefined && hint !== undefined) return lines(hintSentence(hint), 'faint')
  return trouble === undefined ? [] : lines(sentence(trouble), saving.state === 'saved' ? 'plain' : 'wrong')
}

/** A hint with the keys as they are in the table of keys. */
const hintSentence = (hint: Hint): string =>
  hintWords[hint].replace(/\{([\w-]+)\}/g, (gap, name: string) => {
    const binding = [...screens['morning-list'], ...slips.go].find((one) => one.name === name)
    const [key = ''] = binding?.keys ?? []
    return binding === undefined ? gap : (keyNames[key] ?? key.toUpperCase())
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

/** The keys that work now, as many as fit, the most useful first. */
export function foot(desk: Desk, view: View, cells: number, _theme: Theme): Line {
  const line: Bit[] = []
  for (const binding of footBindings(desk, view)) {
    const { keys, label } = shown(desk, binding, view)
    const next: Bit[] = [bit(line.length === 0 ? ' ' : '   '), bit(safeText(keys), 'key'), bit(` ${label}`)]
    if (lineWidth(line) + lineWidth(next) > cells) break
    line.push(...next)
  }
  return line
}
