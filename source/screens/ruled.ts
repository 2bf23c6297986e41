/** Ruled paper: headings on a line, rows with a margin for the ticks. */
import { type Bit, bit, type Line, lineWidth } from './line.tsx'
import type { Theme, Tone } from './theme.ts'
import { widthOf } from './width.ts'

/** What a line is drawn on. */
interface Paper {
  readonly theme: Theme
  readonly cells: number
}

/** Cells of pointer, tick and margin. */
export const MARGIN = 5

/** A heading on a ruled line: its name, a short caution, a rule, the counts. */
export function ruled(name: string, caution: string, counts: string, { theme, cells }: Paper): Line {
  const { rule } = theme.signs
  const head: Bit[] = [bit(rule.repeat(2), 'rule'), bit(` ${name} `, 'heading')]
  const tail: Bit[] = counts === '' ? [] : [bit(` ${counts} `), bit(rule, 'rule')]
  const free = cells - lineWidth(head) - lineWidth(tail)
  const warned: Bit[] =
    caution !== '' && widthOf(caution) + 8 <= free
      ? [bit(rule.repeat(2), 'rule'), bit(` ${theme.signs.warning} ${caution} `, 'care')]
      : []
  return [...head, ...warned, bit(rule.repeat(Math.max(0, free - lineWidth(warned))), 'rule'), ...tail]
}

/** Pointer, tick and the margin of the page. */
export function margin(
  pointed: boolean,
  tick: string,
  { theme }: Paper,
  rest: Line,
  tone: Tone = 'plain',
): Line {
  const { signs } = theme
  return [
    bit(pointed ? `${signs.pointer} ` : '  ', 'light'),
    bit(tick, tone),
    bit(` ${signs.margin}`, 'rule'),
    ...rest,
  ]
}
