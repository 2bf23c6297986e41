/** What is said of the line pointed at. */
import { seasonDates } from '../../breeding/ahead/key-dates.ts'
import { plusDays } from '../../breeding/day.ts'
import { PRE_MATING, seasonDay } from '../../breeding/season.ts'
import { sections } from '../../breeding/sections.ts'
import type { AheadLine } from '../../morning/ahead.ts'
import type { Desk } from '../../morning/desk.ts'
import { keyDateName, keyDateTodo } from '../../words/key-dates.ts'
import { sectionNames } from '../../words/list.ts'
import { safeText } from '../../words/safe.ts'
import type { Line } from '../line.tsx'
import { paragraph } from '../text.ts'
import type { Theme, Tone } from '../theme.ts'
import { aheadWords } from '../words/ahead.ts'

/** The lines, the most important first. */
export function aboutLine(desk: Desk, line: AheadLine, cells: number, theme: Theme): readonly Line[] {
  const text = (words: string, tone?: Tone): readonly Line[] => paragraph(words, cells, theme, tone)
  switch (line.is) {
    case 'day':
      return [
        ...text(aheadWords.dayTitle(line.day), 'strong'),
        ...ofDay(line).flatMap((words) => text(words)),
      ]
    case 'visit':
    case 'scan':
      return [
        ...text(aheadWords.scan(line.block, line.day, line.ready)),
        ...text(...sires(desk, line)),
        ...text(line.is === 'visit' ? aheadWords.cancelHow : aheadWords.planHow, 'faint'),
      ]
    case 'date':
      return [...text(safeText(keyDateName(line.date)), 'strong'), ...text(keyDateTodo(line.date))]
  }
}

function ofDay({ ahead }: AheadLine & { is: 'day' }): readonly string[] {
  if (ahead === undefined) return [aheadWords.reckoning]
  const rows = sections.flatMap((section) => {
    const count = ahead.counts.get(section)
    return count === undefined ? [] : [aheadWords.row(sectionNames[section], count)]
  })
  return [
    aheadWords.returnsExpected(ahead.returns),
    aheadWords.openDay,
    ...(rows.length === 0 ? [aheadWords.nothing] : rows),
  ]
}

/** Whether the foetal age tells the sires on that day; if not, when it does. */
function sires(desk: Desk, { block, day, tellsSires }: AheadLine & { is: 'visit' | 'scan' }): [string, Tone] {
  if (tellsSires) return [aheadWords.tellsLong, 'good']
  const season = (desk.book.seasons.get(block) ?? []).findLast((one) => seasonDay(one, day) >= PRE_MATING)
  if (season === undefined) return ['', 'plain']
  const dates = seasonDates(season, desk.book.policy.finalCheckDays)
  const dayOf = (code: 'scan-tells-sires-from' | 'scan-tells-sires-to') =>
    dates.find((date) => date.code === code)?.day ?? plusDays(day, 0)
  return [aheadWords.tellsNot(dayOf('scan-tells-sires-from'), dayOf('scan-tells-sires-to')), 'plain']
}
