/** Straws, as lines: whether they will last, nitrogen, the lots by flask and canister. */
import { sireOf } from '../../breeding/sire.ts'
import type { NitrogenLevel } from '../../breeding/straws/nitrogen.ts'
import type { Lot } from '../../breeding/straws/stock.ts'
import type { Desk } from '../../morning/desk.ts'
import type { StrawsPlace } from '../../morning/place.ts'
import { type StrawsEntry, strawsEntries, strawsEntryAt } from '../../morning/places/straws.ts'
import { cautions } from '../../words/cautions.ts'
import { dayAndMonth, shortDate } from '../../words/dates.ts'
import { sentence } from '../../words/index.ts'
import { safeText } from '../../words/safe.ts'
import { nitrogenWords } from '../../words/straws.ts'
import { bit, type Line } from '../line.tsx'
import { type DrawPage, type PointedLine, pointedPage, type Room, wholePage } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { movedIn, pointable } from '../text.ts'
import { cut, fill } from '../width.ts'
import { screenWords } from '../words/screen.ts'
import { kindNames, strawsWords } from '../words/straws.ts'
import { supplyPart } from './supply.ts'
import { entryLines, shortEntry } from './told.ts'

export const strawsPage: DrawPage<StrawsPlace> = (desk, place, room) => {
  const { theme, cells } = room
  const entries = strawsEntries(desk, place)
  const entry = strawsEntryAt(desk, place)
  if (place.top !== undefined && entry !== undefined)
    return wholePage(movedIn(entryLines(desk, entry, cells - 2, theme)), room, place.top)
  const beside = entry === undefined ? [] : entryLines(desk, entry, room.beside, theme)
  const strip = entry === undefined ? [] : movedIn(shortEntry(desk, entry, cells - 2, theme))
  const lines = [...nitrogenPart(entries, desk, room), ...lotsPart(entries, desk, room)]
  const supply = supplyPart(desk, room)
  return { ...pointedPage(lines, place.pointer, room, supply.lines), table: supply.table, beside, strip }
}

function nitrogenPart(entries: readonly StrawsEntry[], desk: Desk, room: Room): PointedLine[] {
  const { cells, theme } = room
  const levels = entries.flatMap((entry) => (entry.is === 'nitrogen' ? [entry.level] : []))
  const notices = entries.flatMap((entry) => (entry.is === 'notice' ? [entry.problem] : []))
  const { cut: sign } = theme.signs
  return [
    { line: ruled(strawsWords.nitrogen, cautions.nitrogen.short, '', room) },
    ...(levels.length === 0
      ? [{ line: [bit(`  ${strawsWords.noNitrogen}`, 'faint')] as Line }]
      : levels.map((level) => pointable(nitrogenLine(level, desk, cells, theme), theme))),
    ...(notices.length === 0
      ? []
      : [
          { line: ruled(strawsWords.odd, '', String(notices.length), room) },
          ...notices.map((problem) =>
            pointable([bit(cut(sentence(problem), cells - 3, sign), 'care')], theme),
          ),
        ]),
  ]
}

function nitrogenLine(level: NitrogenLevel, _desk: Desk, cells: number, { signs }: Room['theme']): Line {
  const said = [
    strawsWords.measured(dayAndMonth(level.latest.day)),
    level.fallsBy === undefined || level.fallsBy <= 0 ? '' : strawsWords.falls(level.fallsBy),
    level.orderOn === undefined ? '' : strawsWords.orderOn(shortDate(level.orderOn)),
  ].filter((part) => part !== '')
  const name = level.flask === undefined ? strawsWords.oneFlask : safeText(level.flask)
  return [
    bit(fill(name, cells < 70 ? 8 : 12, signs.cut)),
    bit(fill(strawsWords.depth(level.latest.depthCm), 7, signs.cut), 'strong'),
    bit(nitrogenWords[level.state], level.state === 'enough' ? 'good' : 'care'),
    bit(`, ${said.join(', ')}`, 'faint'),
  ]
}

/** The lots under their flasks, then those used up. */
function lotsPart(entries: readonly StrawsEntry[], desk: Desk, room: Room): PointedLine[] {
  const { theme } = room
  const lots = entries.flatMap((entry) => (entry.is === 'lot' ? [entry.lot] : []))
  if (!entries.some((entry) => entry.is === 'lot' || entry.is === 'used-up'))
    return [{ line: [] }, { line: [bit(` ${strawsWords.nothing}`)] }]
  const lines: PointedLine[] = []
  let flask: string | undefined | null = null
  for (const entry of entries) {
    if (entry.is === 'used-up') {
      lines.push({ line: ruled(strawsWords.usedUp, '', '', room) })
      lines.push(
        pointable(
          [
            bit(strawsWords.lotsUsedUp(entry.count)),
            bit(
              `  ${lots.some((lot) => lot.left === 0) ? screenWords.fold.open : screenWords.fold.closed}`,
              'faint',
            ),
          ],
          theme,
        ),
      )
    }
    if (entry.is !== 'lot') continue
    const { lot } = entry
    if (lot.left > 0 && lot.flask !== flask) {
      flask = lot.flask
      const inFlask = lots.filter((one) => one.flask === flask).reduce((sum, one) => sum + one.left, 0)
      const name = strawsWords.flask(flask === undefined ? undefined : safeText(flask))
      lines.push({ line: ruled(name, '', strawsWords.straws(inFlask), room) })
    }
    lines.push(pointable(lotLine(lot, desk, room), theme))
  }
  return lines
}

/** Canister, sire, name, kind, batch, how many are left, when they were counted. */
function lotLine(lot: Lot, desk: Desk, { cells, theme }: Room): Line {
  const { cut: sign } = theme.signs
  const tone = lot.left === 0 ? 'faint' : 'plain'
  const narrow = cells < 70
  const name = narrow ? 0 : cells < 76 ? 12 : 16
  const counted =
    lot.counted === undefined ? strawsWords.neverCounted : strawsWords.counted(dayAndMonth(lot.counted))
  return [
    bit(fill(safeText(lot.canister ?? ''), 4, sign), 'faint'),
    bit(fill(safeText(lot.sire), 9, sign), lot.left === 0 ? 'faint' : 'strong'),
    ...(narrow ? [] : [bit(fill(safeText(sireOf(desk.book, lot.sire).name ?? ''), name + 1, sign), tone)]),
    bit(fill(kindNames[lot.straw], 13, sign), tone),
    bit(fill(safeText(lot.batch ?? ''), 10, sign), tone),
    bit(fill(String(lot.left), 5, sign, 'right'), lot.left === 0 ? 'faint' : 'strong'),
    bit(`  ${counted}`, 'faint'),
  ]
}
