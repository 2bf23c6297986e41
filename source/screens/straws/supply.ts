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
import { type Column, type PlacedTable, type Table, tableLines } from '../table.ts'
import { movedIn, paragraph } from '../text.ts'
import type { Theme, Tone } from '../theme.ts'
import { kindNames, strawsWords } from '../words/straws.ts'

/** Lines of a page on which there is room for the heifers. */
const ROOMY = 14

/** What stays in sight above the lots: a heading, the table below it, the heifers where there is room. */
export function supplyPart(
  desk: Desk,
  room: Room,
): { readonly lines: readonly Line[]; readonly table: PlacedTable } {
  const { cells, height, theme } = room
  const supply = supplyAhead(desk)
  const table = supplyTable(supply, room)
  const heifers = height < ROOMY ? [] : movedIn(heiferLines(desk, cells - 4, theme, 3), 2)
  return {
    lines: [ruled(strawsWords.supply, '', endOf(supply), room), ...tableLines(table, theme), ...heifers],
    table: { table, at: 1 },
  }
}

function endOf(supply: SupplyAhead): string {
  if (supply.state === 'no-ai') return strawsWords.noAi
  if (supply.state === 'reckoning') return strawsWords.reckoning
  return supply.stale ? strawsWords.reckoningAnew : strawsWords.until(shortDate(supply.until))
}

const isKnown = (kind: Supply): kind is KindAhead => 'likely' in kind

/** Columns of kind and of what is left. */
const LEFT_ALONE = 2

/** A row a kind; what is needed while it is known. */
function supplyTable(supply: SupplyAhead, { cells, theme }: Room): Table {
  const narrow = cells < 70
  const { columns } = strawsWords
  const rows = supply.kinds.map((kind) => {
    const name = bit(kindNames[kind.straw])
    const left = bit(String(kind.left), 'strong')
    if (!isKnown(kind)) {
      const open = supply.state === 'reckoning' ? theme.signs.cut : ''
      return [name, left, bit(open, 'faint'), bit(''), bit('')]
    }
    const { todo, tone } = todoOf(kind)
    return [
      name,
      left,
      bit(String(kind.likely)),
      bit(kind.low === kind.high ? '' : strawsWords.to(kind.low, kind.high)),
      bit(todo, tone),
    ]
  })
  const shown: readonly Column[] = [
    { name: '', cells: narrow ? 14 : 16 },
    { name: columns.left, cells: 6, side: 'right' },
    { name: columns.needed, cells: 8, side: 'right' },
    { name: narrow ? columns.bandShort : columns.band, cells: narrow ? 10 : 18, side: 'right' },
    { name: '', cells: cells - (narrow ? 38 : 48) },
  ]
  return { columns: supply.state === 'no-ai' ? shown.slice(0, LEFT_ALONE) : shown, rows }
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
  const season = blocksAhead(desk).find(({ phase }) => phase === 'ai' || phase === 'bull')?.season
  const { book, page } = desk
  if (season === undefined || book.policy.replacementsWanted === 0) return []
  const services = servicesOfSeason(book, season, page.list.day)
  const progress = heiferProgress(book, services, ratesOfPolicy(book.policy))
  const { wanted, expected, band, sexedStillNeeded } = progress
  const over = page.list.day > dayOfSeason(season, book.policy.sexedUntil)
  const text = strawsWords.heifers(wanted, Math.floor(expected), band, sexedStillNeeded, over)
  return paragraph(text, cells, theme, 'plain', most)
}
