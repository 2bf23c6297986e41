/** How many lines a text takes in print, estimated on the safe side: nothing on paper may be cut. */
import { safeText } from '../../words/safe.ts'

/** Width of a letter, that of a usual small one being 1. */
function widthOf(letter: string): number {
  if (/\p{Mn}/u.test(letter)) return 0
  if ((letter.codePointAt(0) ?? 0) >= 0x1100) return 2
  return /[\p{Lu}mw@%&+<>=~_]/u.test(letter) ? 1.4 : 1
}

const width = (text: string): number => [...text].reduce((sum, letter) => sum + widthOf(letter), 0)

/**
 * Lines of a text where `letters` usual letters stand on one line. Words that are longer than a line are broken.
 *
 * @param text as it came from the herd, @param letters 1 or more
 * @example linesIn('on heat, seen today', 10) // 2
 */
export function linesIn(text: string, letters: number): number {
  let lines = 1
  let used = 0
  for (const word of safeText(text).split(' ')) {
    const wide = width(word)
    if (used > 0 && used + 1 + wide <= letters) used += 1 + wide
    else {
      if (used > 0) lines += 1
      lines += Math.max(0, Math.ceil(wide / letters) - 1)
      used = wide > letters ? wide % letters || letters : wide
    }
  }
  return lines
}
