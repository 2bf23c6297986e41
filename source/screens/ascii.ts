/** Text for a terminal that can draw ASCII only. */
import { widthOf } from './width.ts'

const replacements: Readonly<Record<string, string>> = {
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '–': '-',
  '—': '-',
  '…': '~',
  '°': 'o',
  ß: 's',
  æ: 'e',
  ø: 'o',
  đ: 'd',
  ł: 'l',
}
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })
const plain = /^[\x20-\x7e]*$/

/** Whether a text is printable ASCII alone. */
export const isAscii = (text: string): boolean => plain.test(text)

/**
 * A text in ASCII, as wide as before: accents are left out, what has no likeness becomes a question mark a cell.
 *
 * @example asciiText('Zoë’s 牛') // "Zoe's ??"
 */
export function asciiText(text: string): string {
  if (isAscii(text)) return text
  let ascii = ''
  for (const { segment } of graphemes.segment(text)) {
    const bare = replacements[segment] ?? segment.normalize('NFD').replaceAll(/\p{M}/gu, '')
    ascii += isAscii(bare) ? bare : '?'.repeat(widthOf(segment))
  }
  return ascii
}
