/** The first slip of a day: the cautions that go with today's work, in full, and who is recording. */
import { sections } from '../../breeding/sections.ts'
import type { Desk, Slip } from '../../morning/desk.ts'
import { type CautionName, cautions, cautionsOf } from '../../words/cautions.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import type { Theme } from '../theme.ts'
import { wrap } from '../width.ts'
import { screenWords } from '../words/screen.ts'
import { title } from './title.ts'

/** Title and the line for initials stay in sight. */
const FIXED = 2

/** The cautions of the day's list, and the law's. */
function cautionNames(desk: Desk): ReadonlySet<CautionName> {
  const { rows } = desk.page.list
  const present = new Set(rows.map((row) => row.section))
  const names = new Set<CautionName>(
    sections.filter((section) => present.has(section)).flatMap((section) => cautionsOf[section]),
  )
  if (rows.some((row) => row.reasons.includes('loss'))) names.add('catching')
  return names.add('law')
}

/**
 * The lines of the slip, and how far it can be moved where they do not all fit.
 *
 * @param most lines at most
 */
export function openingLines(
  desk: Desk,
  slip: Slip & { is: 'opening' },
  cells: number,
  most: number,
  theme: Theme,
): { readonly lines: readonly Line[]; readonly furthest: number } {
  const said = [...cautionNames(desk)].flatMap((name) =>
    wrap(cautions[name].full, cells - 4, 8, theme.signs.cut).map((line): Line => [bit(`  ${line}`)]),
  )
  const room = Math.max(1, most - FIXED)
  const furthest = Math.max(0, said.length - room)
  const top = Math.min(slip.top, furthest)
  const shown = said.slice(top, top + room).map((line, index, all): Line => {
    const { above, below } = theme.signs.more
    const sign =
      top > 0 && index === 0 ? above : top < furthest && index === all.length - 1 ? below : undefined
    return sign === undefined ? line : [bit(sign, 'light'), bit((line[0]?.text ?? '').slice(1))]
  })
  const initials: Line = [
    bit(` ${screenWords.initialsTitle}: `, 'strong'),
    bit(safeText(slip.text), 'entry'),
    bit(theme.signs.caret, 'light'),
  ]
  return { lines: [title(screenWords.openingTitle, cells, theme), ...shown, initials], furthest }
}
