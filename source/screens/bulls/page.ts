/** Bulls, as lines: how many are needed by when in each block, then the bulls and what their services tell. */
import type { BlockDay } from '../../breeding/list.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import type { BullHere } from '../../morning/bulls-here.ts'
import type { Desk } from '../../morning/desk.ts'
import type { BullsPlace } from '../../morning/place.ts'
import { bullsEntries, bullsEntryAt } from '../../morning/places/bulls.ts'
import { knownView } from '../../morning/reckoning.ts'
import { cautions } from '../../words/cautions.ts'
import { shortDate } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { type DrawPage, type PointedLine, pointedPage, type Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { movedIn, paragraph, pointable } from '../text.ts'
import type { Tone } from '../theme.ts'
import { fill } from '../width.ts'
import { bullsWords } from '../words/bulls.ts'
import { absence, ageOf } from './state.ts'
import { shortTold, toldLines } from './told.ts'

export const bullsPage: DrawPage<BullsPlace> = (desk, place, room) => {
  const { theme, cells } = room
  const entries = bullsEntries(desk)
  const blocks = entries.flatMap((entry) => (entry.is === 'block' ? [entry.block] : []))
  const bulls = entries.flatMap((entry) => (entry.is === 'bull' ? [entry.bull] : []))
  const text = (words: string): PointedLine[] =>
    paragraph(words, cells - 4, theme, 'faint').map((line) => ({ line: [bit('  '), ...line] }))
  const lines: PointedLine[] = [
    ...(blocks.length === 0
      ? text(bullsWords.noBlocks)
      : blocks.flatMap((block) => blockLines(block, desk, room))),
    { line: ruled(bullsWords.onHand, cautions.bull.short, '', room) },
    ...(bulls.length === 0
      ? text(bullsWords.none)
      : bulls.map((bull) => pointable(bullLine(bull, desk, room), theme))),
  ]
  const entry = bullsEntryAt(desk, place)
  return {
    ...pointedPage(lines, place.pointer, room),
    beside: entry === undefined ? [] : toldLines(desk, entry, room.beside, theme),
    strip: entry === undefined ? [] : movedIn(shortTold(desk, entry, cells - 2, theme)),
  }
}

/** When the bull goes in, how many are needed and why, by when they must be sound and here. */
function blockLines(block: BlockDay, desk: Desk, room: Room): PointedLine[] {
  const { cells, theme } = room
  const { season } = block
  const { day } = desk.page.list
  const turnOut = dayOfSeason(season, season.aiEnd + 1)
  const last = dayOfSeason(season, season.bullEnd)
  const when =
    day < turnOut
      ? bullsWords.begins(turnOut - day)
      : day <= last
        ? bullsWords.isIn(shortDate(last))
        : bullsWords.isOut(shortDate(dayOfSeason(season, season.bullEnd + 1)))
  const head: PointedLine = { line: ruled(bullsWords.block(safeText(block.block)), '', when, room) }
  if (day > last) return [head, pointable([bit(bullsWords.over, 'faint')], theme)]
  const view = knownView(desk, season, {})?.view
  const plan = view?.bulls
  if (view?.forecast === undefined || plan === undefined)
    return [head, pointable([bit(bullsWords.reckoning, 'faint')], theme)]
  const { low, middle, high } = view.forecast.openAtTurnOut
  const tone: Tone = plan.needed > plan.onHand ? 'care' : 'good'
  const below = (text: string, toned: Tone = 'plain'): PointedLine[] =>
    paragraph(text, cells - 4, theme, toned).map((line) => ({ line: [bit('    '), ...line] }))
  return [
    head,
    pointable(
      [bit(high === 0 ? bullsWords.nothingOpen : bullsWords.needed(plan.needed, plan.onHand), tone)],
      theme,
    ),
    ...below(bullsWords.why(high, desk.book.policy.openPerBull, day >= turnOut)),
    ...below(bullsWords.band(middle, low, high)),
    ...below(bullsWords.weeks(shortDate(turnOut), shortDate(last))),
    ...(day < turnOut
      ? [
          ...below(bullsWords.sound(shortDate(plan.soundnessBy), plan.soundnessBy - day)),
          ...below(bullsWords.onFarm(shortDate(plan.onFarmBy), plan.onFarmBy - day)),
        ]
      : []),
  ]
}

/** Number, name, breed, age, whom he is with, services seen, returns; a doubt is marked. */
function bullLine(bull: BullHere, desk: Desk, { cells, theme }: Room): Line {
  const { signs } = theme
  const all = bull.records.reduce((sum, { services }) => sum + services.length, 0)
  const returned = bull.records.reduce((sum, one) => sum + one.returned, 0)
  const doubtful = bull.records.some((one) => one.doubtful)
  const age = ageOf(desk, bull) ?? bullsWords.ageUnknown
  const state = absence(bull) ?? (bull.young ? `${age}, ${bullsWords.youngBull}` : age)
  const said = [bullsWords.with(bull.with), bullsWords.seen(all, returned)].filter((part) => part !== '')
  return [
    ...nameBits(bull, cells < 70, signs.cut),
    bit(fill(state, cells < 70 ? 14 : 17, signs.cut), bull.onHand ? 'plain' : 'faint'),
    bit(doubtful ? `${signs.warning} ` : '', 'care'),
    bit(said.join(', '), doubtful ? 'care' : 'plain'),
  ]
}

/** Number, name and breed; of a bull that is not on record what services call him. */
function nameBits({ name, animal }: BullHere, narrow: boolean, sign: string): Line {
  const breed = narrow ? 0 : 13
  if (animal === undefined)
    return [
      bit(
        fill(name === undefined ? bullsWords.unnamed : safeText(name), breed === 0 ? 17 : 32, sign),
        'strong',
      ),
    ]
  const { record } = animal
  return [
    bit(fill(safeText(animal.number), 7, sign), 'strong'),
    bit(`${fill(safeText(record.name ?? ''), breed === 0 ? 9 : 11, sign)} `),
    bit(breed === 0 ? '' : `${fill(safeText(record.breed ?? ''), breed - 1, sign)} `),
  ]
}
