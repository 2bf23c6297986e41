/** All that was said, where the two lines above the keys are too short for it. */
import type { Desk, Slip } from '../../morning/desk.ts'
import { saidTexts } from '../frame/said.ts'
import { bit, type Line } from '../line.tsx'
import type { Theme } from '../theme.ts'
import { wrap } from '../width.ts'
import { screenWords } from '../words/screen.ts'
import { title } from './title.ts'

/** Lines of one text. */
const MOST = 60

/**
 * The lines of the slip, and how far it can be moved where they do not all fit.
 *
 * @param most lines at most
 */
export function noticeLines(
  desk: Desk,
  { top }: Slip & { is: 'notice' },
  cells: number,
  most: number,
  theme: Theme,
): { readonly lines: readonly Line[]; readonly furthest: number } {
  const said = saidTexts(desk).flatMap(({ text, tone }) =>
    wrap(text, cells - 4, MOST, theme.signs.cut).map((line): Line => [bit(`  ${line}`, tone)]),
  )
  const room = Math.max(1, most - 1)
  const furthest = Math.max(0, said.length - room)
  const from = Math.min(top, furthest)
  return {
    lines: [title(screenWords.noticeTitle, cells, theme), ...said.slice(from, from + room)],
    furthest,
  }
}
