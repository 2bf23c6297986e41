/** The head of every screen: farm, day, what is saved; the blocks; the line of the morning's work. */
import type { HerdBook } from '../../breeding/book.ts'
import type { BlockDay } from '../../breeding/list.ts'
import { type Desk, showsToday } from '../../morning/desk.ts'
import { paceOf } from '../../morning/pace.ts'
import type { Saving } from '../../morning/saving.ts'
import { dateInWords } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { type Bit, bit, type Line, lineWidth, spread } from '../line.tsx'
import type { Theme } from '../theme.ts'
import { widthOf } from '../width.ts'
import { paceWords } from '../words/pace.ts'
import { blockWords, screenWords } from '../words/screen.ts'

/** Lines of the head. */
export function header(desk: Desk, cells: number, theme: Theme): readonly Line[] {
  const live = desk.page.list.blocks.filter((block) => block.phase !== 'closed')
  const shown = live.length > 0 ? live : desk.page.list.blocks.slice(0, 1)
  return [
    titleLine(desk, cells, theme),
    ...shown.map((block) => blockLine(desk.book, block, cells, theme)),
    workLine(desk.page.done, desk.page.toDo, cells, theme),
  ]
}

function titleLine(desk: Desk, cells: number, theme: Theme): Line {
  const { cut, dot } = theme.signs
  const { day } = desk.page.list
  const left: Bit[] = [
    bit(` ${safeText(desk.book.farm.name)}`, 'strong'),
    bit(` ${dot} `, 'rule'),
    bit(dateInWords(day), 'light'),
  ]
  if (!showsToday(desk)) left.push(bit(` (${otherDay(desk)})`, 'care'))
  const right: Bit[] = [
    savedBit(desk.saving),
    bit(` ${dot} `, 'rule'),
    desk.by === undefined ? bit(screenWords.noInitials, 'faint') : bit(safeText(desk.by)),
    bit(' '),
  ]
  return spread(left, right, cells, cut)
}

/** What a list of another day than today is. */
export const otherDay = ({ page, now }: Desk): string => {
  if (page.list.day > now.day) return screenWords.ahead
  return page.knownThen === true ? screenWords.pastThen : screenWords.past
}

/** Saved or not is always in sight, and in words. */
function savedBit({ state, waiting }: Saving): Bit {
  if (state === 'saved') return bit(screenWords.saved, 'good')
  if (state === 'saving') return bit(screenWords.saving)
  if (state === 'read-only') return bit(screenWords.readOnly, 'care')
  return bit(screenWords.notSaved(waiting), 'wrong')
}

function blockLine(book: HerdBook, block: BlockDay, cells: number, theme: Theme): Line {
  const left: Line = [bit(` ${blockWords(block)}`)]
  const pace = paceOf(book, block)
  const words = pace === undefined ? undefined : paceWords(pace)
  const right = words?.find((text) => lineWidth(left) + widthOf(text) + 3 <= cells)
  return spread(left, right === undefined ? [] : [bit(right), bit(' ')], cells, theme.signs.cut)
}

/** The line under the head: rose, and gold from the left as far as the work is done. */
function workLine(done: number, toDo: number, cells: number, theme: Theme): Line {
  const all = done + toDo
  const words = all === 0 ? '' : ` ${screenWords.progress(done, all)} `
  const room = Math.max(0, cells - widthOf(words) - (words === '' ? 0 : 2))
  const risen = all === 0 ? 0 : Math.floor((room * done) / all)
  return [
    bit(theme.signs.risen.repeat(risen), 'light'),
    bit(theme.signs.rule.repeat(room - risen), 'rule'),
    bit(words, done > 0 ? 'light' : undefined),
    bit(words === '' ? '' : theme.signs.rule.repeat(2), 'rule'),
  ]
}
