/** The line that names the parts of the season's screen, the open one marked. */
import type { BlockDay } from '../../breeding/list.ts'
import { seasonParts as parts, type SeasonPart } from '../../morning/place.ts'
import { dayAndMonth } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { type Bit, bit, type Line, lineWidth } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import { widthOf } from '../width.ts'
import { seasonParts, seasonWords } from '../words/season/shared.ts'

/**
 * The parts, and at the end where there is room the season or that it is being reckoned anew.
 *
 * @example // ━ answers ━  figures  pictures  forecast  empties  earlier       spring season from 1 May
 */
export function partsLine(open: SeasonPart, block: BlockDay, stale: boolean, { theme, cells }: Room): Line {
  const { risen } = theme.signs
  const gap = cells < 70 ? ' ' : '  '
  const names = parts.flatMap((part): Bit[] =>
    part === open
      ? [bit(`${risen} `, 'light'), bit(seasonParts[part], 'heading'), bit(` ${risen}`, 'light')]
      : [bit(`${gap}${seasonParts[part]}${gap}`)],
  )
  const end = stale
    ? seasonWords.reckoningAnew
    : seasonWords.season(safeText(block.block), dayAndMonth(block.season.matingStart))
  const free = cells - lineWidth(names) - widthOf(end) - 1
  return free < 1 ? names : [...names, bit(' '.repeat(free)), bit(end, 'faint')]
}
