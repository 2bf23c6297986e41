/** Results of a scanning visit, one on a line: those kept, and those recorded. */
import { type Day, isoDay, plusDays } from '../../breeding/day.ts'
import type { CheckFact, KeptResultFact } from '../../breeding/facts.ts'
import { standingOn } from '../../breeding/standing.ts'
import { bookNow } from '../../morning/book-now.ts'
import type { Desk } from '../../morning/desk.ts'
import type { ScanLine } from '../../morning/scanning/lines.ts'
import { shortDate } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import { MARGIN, margin } from '../ruled.ts'
import { cut, fill, widthOf } from '../width.ts'
import { keptWords, resultNames, scanningWords } from '../words/scanning.ts'
import { comesTo } from './comes-to.ts'

const NUMBER = 6
const RESULT = 24

/** Result, age and twins in a few words. */
function said(
  result: CheckFact['result'] | undefined,
  age: number | string | undefined,
  twins: boolean,
): string {
  const parts = [
    result === undefined ? '' : resultNames[result],
    age === undefined || age === '' ? '' : scanningWords.age(String(age)),
    twins ? scanningWords.twins : '',
  ]
  return parts.filter((part) => part !== '').join(', ')
}

/** A result that is to be settled, and why. */
export function keptLine(fact: KeptResultFact, day: Day, pointed: boolean, room: Room): Line {
  const { number, result, foetalAge, foetuses, why } = fact
  const read = said(result, foetalAge, (foetuses ?? 1) > 1)
  const of = isoDay(fact.date)
  const { signs } = room.theme
  const tone = pointed ? 'pointed' : 'plain'
  return margin(pointed, signs.toDo, room, [
    bit(fill(safeText(number), Math.max(NUMBER, widthOf(number)), signs.cut, 'right'), 'strong'),
    bit(` ${fill(read, RESULT, signs.cut)}`, tone),
    bit(of === day ? '' : ` ${shortDate(of)}`, tone),
    bit(` ${signs.warning} ${keptWords[why as keyof typeof keptWords] ?? safeText(why)}`, 'care'),
  ])
}

/** A recorded result, and what it came to. */
export function resultLine(
  desk: Desk,
  { check, animal }: ScanLine & { is: 'result' },
  pointed: boolean,
  room: Room,
): Line {
  const { signs } = room.theme
  const tone = pointed ? 'pointed' : 'plain'
  const name = room.cells < 70 ? '' : `${fill(safeText(animal.record.name ?? ''), 11, signs.cut)} `
  const after = standingOn(bookNow(desk), animal, plusDays(isoDay(check.date), 1))
  const words = check.result === 'pregnant' ? comesTo(after.pregnancy, after.due) : ''
  const left = room.cells - MARGIN - NUMBER - widthOf(name) - RESULT - 2
  return margin(
    pointed,
    signs.done,
    room,
    [
      bit(fill(safeText(animal.number), NUMBER, signs.cut, 'right'), 'strong'),
      bit(
        ` ${name}${fill(said(check.result, check.foetalAge, (check.foetuses ?? 1) > 1), RESULT, signs.cut)}`,
        tone,
      ),
      bit(` ${cut(words, left, signs.cut)}`, 'faint'),
    ],
    'good',
  )
}
