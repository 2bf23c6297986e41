/** The upper edge of a slip: its title on a strong line. */
import { type Bit, bit, type Line, lineWidth } from '../line.tsx'
import type { Theme } from '../theme.ts'

export function title(text: string, cells: number, theme: Theme): Line {
  const head: Bit[] = [bit(theme.signs.risen.repeat(2), 'light'), bit(` ${text} `, 'heading')]
  return [...head, bit(theme.signs.risen.repeat(Math.max(0, cells - lineWidth(head))), 'light')]
}
