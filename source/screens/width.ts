/** Text measured and cut by the cells it takes on a terminal: wide characters take two, marks none. */
import stringWidth from 'string-width'

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })
/** ASCII and the signs that lines are drawn with: a cell each, known without asking. */
const narrow = /^[\x20-\x7e─━│║○●►▲▼▁·–…→’é█▒░┼]*$/

/**
 * Cells that a text takes.
 *
 * @param text without control characters
 * @example widthOf('412') // 3
 * @example widthOf('牛') // 2
 */
export const widthOf = (text: string): number => (narrow.test(text) ? text.length : stringWidth(text))

/**
 * Cuts a text to at most so many cells; a cut shows its sign.
 *
 * @param cells 0 or more
 * @param sign ends a text that was cut, one cell wide
 * @example cut('Buttercup', 6, '…') // 'Butte…'
 */
export function cut(text: string, cells: number, sign: string): string {
  if (cells <= 0) return ''
  if (widthOf(text) <= cells) return text
  let kept = ''
  let used = 0
  for (const { segment } of graphemes.segment(text)) {
    const width = widthOf(segment)
    if (used + width > cells - 1) break
    kept += segment
    used += width
  }
  return kept + sign
}

/**
 * The end of a text in at most so many cells; a cut shows its sign. What is typed is seen where it grows.
 *
 * @example endOf('Buttercup', 6, '…') // '…ercup'
 */
export function endOf(text: string, cells: number, sign: string): string {
  if (cells <= 0) return ''
  if (widthOf(text) <= cells) return text
  let kept = ''
  let used = 0
  // Graphemes of many code units are rare: so many of them are enough.
  for (const { segment } of [...graphemes.segment(text.slice(-40 * cells))].toReversed()) {
    const width = widthOf(segment)
    if (used + width > cells - 1) break
    kept = segment + kept
    used += width
  }
  return sign + kept
}

/**
 * A text in exactly so many cells: cut, or filled with spaces on the right (`left`) or on the left (`right`).
 *
 * @example fill('41', 4, '…', 'right') // '  41'
 */
export function fill(text: string, cells: number, sign: string, side: 'left' | 'right' = 'left'): string {
  const kept = cut(text, cells, sign)
  const spaces = ' '.repeat(Math.max(0, cells - widthOf(kept)))
  return side === 'left' ? kept + spaces : spaces + kept
}

/**
 * Breaks a text at spaces into lines of at most so many cells; a word longer than a line is cut.
 *
 * @param most lines at most; the last one shows that there was more
 * @example wrap('why she is here', 8, 9, '…') // ['why she', 'is here']
 */
export function wrap(text: string, cells: number, most: number, sign: string): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line === '' || widthOf(longer) <= cells) line = longer
    else {
      lines.push(line)
      line = word
    }
  }
  if (line !== '') lines.push(line)
  const shown = lines.slice(0, most)
  return shown.map((one, index) =>
    cut(index === most - 1 && lines.length > most ? `${one} ${sign}` : one, cells, sign),
  )
}
