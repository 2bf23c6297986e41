/** The time line of her cycle: what happened since she calved, newest first, each with its day count. */
import type { Happening } from '../../breeding/book.ts'
import { dateInWords, dayAndMonth } from '../../words/dates.ts'
import { factWords } from '../../words/facts.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { cut, fill } from '../width.ts'
import { animalWords } from '../words/animal.ts'
import type { About } from './about.ts'

/** What happened in the open cycle and what opened it, newest first; all of it where there is no cycle. */
function cycleHappenings({ animal, standing }: About): readonly Happening[] {
  const opened = standing.cycle.opened
  return animal.happenings
    .filter(({ day }) => day <= standing.today && (opened === undefined || day >= opened))
    .toReversed()
}

/**
 * The newest lines of her cycle.
 *
 * @param most lines at most
 */
export function cycleLines(about: About, most: number): Line[] {
  const happenings = cycleHappenings(about)
  if (happenings.length === 0) return []
  const shown = happenings.slice(0, most)
  const more = happenings.length - shown.length
  return [
    [bit(about.standing.waitFrom === undefined ? animalWords.record : animalWords.cycle, 'heading')],
    ...shown.map((happening) => happeningLine(happening, about)),
    ...(more > 0 ? [[bit(animalWords.more(more), 'faint')]] : []),
  ]
}

/** From so many cells on there is room for the weekday and the year. */
const WHOLE_DATES_FROM = 56

/** One fact: its date, days since she calved, what it says. */
export function happeningLine({ fact, day }: Happening, { standing, cells, theme }: About): Line {
  const { waitFrom: from, today } = standing
  const whole = cells >= WHOLE_DATES_FROM
  const date = fill(whole ? dateInWords(day) : dayAndMonth(day), whole ? 16 : 7, theme.signs.cut)
  const count = fill(from === undefined || day < from ? '' : String(day - from), 4, theme.signs.cut, 'right')
  const time = fact.time === undefined ? '' : `, ${safeText(fact.time)}`
  const room = cells - date.length - count.length - 2
  return [
    bit(date, day === today ? 'strong' : 'plain'),
    bit(count, 'faint'),
    bit(`  ${cut(`${factWords(fact)}${time}`, room, theme.signs.cut)}`),
  ]
}
