/** Whether the straws will last: a line a kind with what is left, what will be needed and what to order. */
import { ratesOfPolicy } from '../../breeding/rates-of-policy.ts'
import { dayOfSeason } from '../../breeding/season.ts'
import { heiferProgress } from '../../breeding/straws/heifers.ts'
import type { Supply } from '../../breeding/straws/supply.ts'
import { servicesOfSeason } from '../../breeding/straws/use.ts'
import type { Desk } from '../../morning/desk.ts'
import { blocksAhead } from '../../morning/reckoning.ts'
import { type KindAhead, type SupplyAhead, supplyAhead } from '../../morning/supply-ahead.ts'
import { shortDate } from '../../words/dates.ts'
import { bit, type Line } from '../line.tsx'
import type { Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { movedIn, paragraph } from '../text.ts'
import type { Theme, Tone } from '../theme.ts'
import { fill } from '../width.ts'
import { kindNames, strawsWords } from '../words/straws.ts'

/** Lines of a page on which there is room for the heifers. */
const ROOMY = 14

/** The heading and the lines below it. */
export function supplyLines(desk: Desk, room: Room): readonly Line[] {
  const { cells, height, theme } = room
  const supply = supplyAhead(desk)
  return [
    ruled(strawsWords.supply, '', endOf(supply), room),
    ...supply.kinds.map((kind) => kindLine(kind, supply, cells, theme)),
    ...(height < ROOMY ? [] : movedIn(heiferLines(desk, cells - 4, theme, 2), 2)),
  ]
}

function endOf(supply: SupplyAhead): string {
  if (supply.state === 'no-ai') return strawsWords.noAi
  if (supply.state === 'reckoning') return strawsWords.reckoning
  return supply.stale ? strawsWords.reckoningAnew : strawsWords.until(shortDate(supply.until))
}

const isKnown = (kind: Supply, supply: SupplyAhead): kind is KindAhead =>
  supply.state === 'known' && 'likely' in kind

function kindLine(kind: Supply, supply: SupplyAhead, cells: number, { signs }: Theme): Line {
  const narrow = cells < 70
  const line: Line = [
    bit(`  ${fill(kindNames[kind.straw], 14, signs.cut)}`),
    bit(fill(strawsWords.left(kind.left), 10, signs.cut), 'strong'),
  ]
  if (!isKnown(kind, supply)) return line
  const { todo, tone } = todoOf(kind)
  const needed = `${strawsWords.columns.needed} ${strawsWords.needed(kind.likely, kind.low, kind.high)}`
  return [...line, ...(narrow ? [] : [bit(fill(needed, 30, signs.cut))]), bit(todo, tone)]
}

function todoOf(kind: KindAhead): { readonly todo: string; readonly tone: Tone } {
  if (kind.missing > 0) {
    const by = kind.outOn === undefined ? undefined : shortDate(kind.outOn)
    return { todo: strawsWords.order(kind.missing, by, kind.left === 0), tone: 'care' }
  }
  return kind.high === 0
    ? { todo: strawsWords.notNeeded, tone: 'faint' }
    : { todo: strawsWords.enough, tone: 'good' }
}

/** How far the straws used go towards the heifers wanted, where a number is set. */
export function heiferLines(desk: Desk, cells: number, theme: Theme, most = 4): readonly Line[] {
  const season = blocksAhead(desk)[0]?.season
  const { book, page } = desk
  if (season === undefined || book.policy.replacementsWanted === 0) return []
  const services = servicesOfSeason(book, season, page.list.day)
  const { wanted, expected, sexedStillNeeded } = heiferProgress(book, services, ratesOfPolicy(book.policy))
  const over = page.list.day > dayOfSeason(season, book.policy.sexedUntil)
  const text = strawsWords.heifers(wanted, Math.floor(expected), sexedStillNeeded, over)
  return paragraph(text, cells, theme, 'plain', most)
}
