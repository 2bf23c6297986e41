/** The foot of every screen: the keys that work now. */
import type { Desk } from '../../morning/desk.ts'
import { safeText } from '../../words/safe.ts'
import { footBindings, shown, type View } from '../keys.ts'
import { type Bit, bit, type Line, lineWidth } from '../line.tsx'
import type { Theme } from '../theme.ts'

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
