/** Shares, ranges and sentences set in the columns of plain text. */
import type { Figure } from '../../../breeding/figures/figure.ts'

const WIDTH = 80

/** @example percentOf(81.4) // '81 %' */
export const percentOf = (percent: number | undefined): string =>
  percent === undefined ? '-' : `${Math.round(percent)} %`

/** The interval of a share; nothing where it has none. @example rangeOf(figure) // '74-88' */
export const rangeOf = ({ low, high }: Figure): string =>
  low === undefined || high === undefined ? '' : `${Math.round(low)}-${Math.round(high)}`

/** A text of at most so many columns. @example cut('two weeks longer', 8) // 'two wee…' */
export const cut = (text: string, width: number): string =>
  text.length <= width ? text : `${text.slice(0, width - 1)}…`

/** Words set in lines, the first behind a head, the rest indented as far. */
export function wrapped(text: string, head: string): string[] {
  const lines: string[] = []
  let line = head
  for (const word of text.split(' ')) {
    if (line.length + word.length > WIDTH && line.length > head.length) {
      lines.push(line.trimEnd())
      line = ' '.repeat(head.length)
    }
    line += `${word} `
  }
  lines.push(line.trimEnd())
  return lines
}
