/** One animal as plain text. */

import type { HerdBook } from '../../breeding/book.ts'
import { isoDay } from '../../breeding/day.ts'
import type { Standing } from '../../breeding/standing.ts'
import { counted } from '../../words/counted.ts'
import { dateInWords } from '../../words/dates.ts'
import { factWords } from '../../words/facts.ts'
import { recordedWords } from '../../words/recorded.ts'
import { safeText } from '../../words/safe.ts'
import type { animalJson } from './json.ts'

/**
 * What is known of an animal, as lines of text.
 *
 * @param known her JSON value
 * @example animalText(book, standing, animalJson(book, standing, rates, rows)).split('\n')[0] // '412 Bramble, spring block, second lactation'
 */
export function animalText(book: HerdBook, standing: Standing, known: ReturnType<typeof animalJson>): string {
  const said = (iso: string): string => dateInWords(isoDay(iso))
  const lines = [
    [
      safeText(known.name === null ? known.number : `${known.number} ${known.name}`),
      known.block === null ? 'no block' : `${safeText(known.block)} block`,
      known.maiden ? 'maiden' : `calved ${counted(known.parity, 'time')}`,
    ].join(', '),
    `On ${said(known.date)}, at ${safeText(book.farm.name)}`,
  ]
  if (known.calving !== null && known.calved !== null)
    lines.push(`Last calving ${said(known.calving)}; ${known.calved} days waited`)
  if (known.in_calf) {
    const conceived =
      known.conception === null ? 'to no known service' : `conceived ${said(known.conception.date)}`
    lines.push(`In calf, ${conceived}${known.conception?.ai_or_bull ? ', by AI or by the bull' : ''}`)
  } else if (known.chance_pregnant !== null) {
    lines.push(`Chance of being in calf ${Math.round(known.chance_pregnant * 100)} %`)
  }
  if (known.due !== null && known.due_low !== null && known.due_high !== null)
    lines.push(
      `Due ${said(known.due)}, nearly always between ${said(known.due_low)} and ${said(known.due_high)}`,
    )
  if (known.dry_off !== null) lines.push(`Dry off ${said(known.dry_off)}`)
  if (known.next_return !== null)
    lines.push(
      `Next heat, if she is open: ${said(known.next_return.from)} to ${said(known.next_return.to)}, likeliest ${said(known.next_return.likely)}`,
    )
  lines.push(`Chances used this season: ${known.chances}`)
  if (standing.female && standing.inHerd && !known.in_calf && known.straws.length > 0)
    lines.push('', 'Straws', ...known.straws.map(strawLine))
  lines.push('', 'Facts')
  for (const { fact, day } of standing.animal.happenings) {
    if (day > standing.today) continue
    const what = `  ${fact.date} ${(fact.time ?? '').padEnd(7)} ${factWords(fact)}`
    lines.push(`${what} (recorded ${recordedWords(fact, book.farm.zone)})`)
  }
  return `${lines.join('\n')}\n`
}

type KnownStraw = ReturnType<typeof animalJson>['straws'][number]

/** @example '  HX20 conventional, 18 left, calf inbred 1.6 %, 2 generations known. Of the proposed kind. …' */
const strawLine = ({ sire, kind, left, inbreeding, generations, why }: KnownStraw): string =>
  `  ${safeText(sire)} ${kind}, ${left} left, calf inbred ${(100 * inbreeding).toFixed(1)} %, ${counted(generations, 'generation')} known. ${why}`
