/** The help: every key of the screen it was opened from, read from the key table. */
import type { Desk } from '../../morning/desk.ts'
import { helpBindings, type KeyGroup, shown } from '../keys.ts'
import { bit, type Line } from '../line.tsx'
import type { Theme } from '../theme.ts'
import { fill, wrap } from '../width.ts'
import { helpWords, keyWords } from '../words/keys.ts'

const KEYS = 11

/** The lines of the help for the screen below it. */
export function helpLines(desk: Desk, cells: number, theme: Theme): readonly Line[] {
  const below = desk.places[desk.places.length - 2]?.at ?? 'morning-list'
  const groups = helpBindings(below)
  const lines: Line[] = []
  for (const group of Object.keys(helpWords.groups) as KeyGroup[]) {
    const bindings = groups.get(group)
    if (bindings === undefined) continue
    lines.push([bit(` ${helpWords.groups[group]}`, 'heading')])
    for (const binding of bindings) {
      const { keys } = shown(desk, binding)
      const text = wrap(keyWords[binding.name].help, cells - KEYS - 4, 4, theme.signs.cut)
      for (const [index, part] of text.entries())
        lines.push([bit(`   ${fill(index === 0 ? keys : '', KEYS, theme.signs.cut)}`, 'key'), bit(part)])
    }
    lines.push([])
  }
  for (const part of wrap(helpWords.capitals, cells - 2, 2, theme.signs.cut)) lines.push([bit(` ${part}`)])
  for (const part of wrap(helpWords.local, cells - 2, 4, theme.signs.cut)) lines.push([bit(` ${part}`)])
  return lines
}
