/** The scanning visit, as lines: how far it has got, the line that is typed, what is to settle, the last results. */
import type { Desk } from '../../morning/desk.ts'
import type { ScanningPlace } from '../../morning/place.ts'
import { judgedEntry } from '../../morning/places/scanning.ts'
import type { VisitSoFar } from '../../morning/scanning/awaited.ts'
import { scanLines, visitOf } from '../../morning/scanning/lines.ts'
import { cautions } from '../../words/cautions.ts'
import { shortDate } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import { bit, type Line } from '../line.tsx'
import { type DrawPage, type PointedLine, pointedPage, type Room } from '../page-lines.ts'
import { ruled } from '../ruled.ts'
import { movedIn, paragraph, parted } from '../text.ts'
import { fill } from '../width.ts'
import { resultNames, scanningWords } from '../words/scanning.ts'
import { entryLines } from './entry-lines.ts'
import { keptLine, resultLine } from './result-lines.ts'

/** Below this height there is no strip of numbers to come. */
const STRIP_FROM = 13
const STRIP = 2

export const scanningPage: DrawPage<ScanningPlace> = (desk, place, room) => {
  const visit = visitOf(desk, place)
  const above = [
    headLine(place, room),
    ...tallyLines(visit, room),
    ...entryLines(place, judgedEntry(desk, place), room),
  ]
  const page = pointedPage(belowLines(desk, place, visit, room), place.pointer - 1, room, above)
  const strip = room.height < STRIP_FROM ? [] : toComeLines(visit, room.cells - 2, STRIP, room)
  return {
    ...page,
    furthest: scanLines(desk, place).length,
    beside: besideLines(visit, room),
    strip: movedIn(strip),
  }
}

const headLine = (place: ScanningPlace, room: Room): Line =>
  ruled(scanningWords.title(shortDate(place.day)), cautions.crush.short, '', room)

/** How many of each result, and how many are still to come, by block. */
function tallyLines({ tally }: VisitSoFar, { theme, cells }: Room): readonly Line[] {
  if (tally.length === 0) return [[bit(` ${scanningWords.nothingDue}`, 'faint')]]
  const gap = cells < 70 ? ' ' : '   '
  return tally.map(({ block, results, toCome }): Line => {
    const count = (name: string, of: number) => [
      bit(`${gap}${name} `),
      bit(fill(String(of), 3, theme.signs.cut), 'strong'),
    ]
    return [
      bit(` ${fill(scanningWords.block(block), 9, theme.signs.cut)}`),
      ...count(resultNames.pregnant, results.pregnant),
      ...count(resultNames.empty, results.empty),
      ...count(resultNames.unsure, results.unsure),
      ...count(scanningWords.toCome, toCome),
    ]
  })
}

/** What is to settle, then the last results. */
function belowLines(desk: Desk, place: ScanningPlace, visit: VisitSoFar, room: Room): readonly PointedLine[] {
  const all = scanLines(desk, place)
  const kept = all.filter((line) => line.is === 'kept')
  const results = all.filter((line) => line.is === 'result')
  const lines: PointedLine[] = []
  if (kept.length > 0) {
    lines.push({ line: ruled(scanningWords.keptTitle(kept.length), '', scanningWords.keptHint, room) })
    for (const { fact } of kept)
      lines.push({
        line: keptLine(fact, place.day, false, room),
        pointed: keptLine(fact, place.day, true, room),
      })
  }
  lines.push({ line: ruled(scanningWords.lastTitle(results.length, visit.results.length), '', '', room) })
  for (const result of results)
    lines.push({
      line: resultLine(desk, result, false, room),
      pointed: resultLine(desk, result, true, room),
    })
  if (results.length === 0) lines.push({ line: [bit(` ${scanningWords.noResults}`, 'faint')] })
  return lines
}

/** Numbers that are still to come. */
function toComeLines(
  { toCome, results }: VisitSoFar,
  cells: number,
  most: number,
  { theme }: Room,
): readonly Line[] {
  if (toCome.length === 0) return results.length === 0 ? [] : [[bit(scanningWords.noneToCome, 'good')]]
  const numbers = toCome.map(({ animal }) => safeText(animal.number)).join(' ')
  const text = `${scanningWords.toComeNumbers(toCome.length)}: ${numbers}`
  return paragraph(text, cells, theme, 'plain', most)
}

function besideLines(visit: VisitSoFar, room: Room): readonly Line[] {
  const { beside, theme, height } = room
  if (beside === 0) return []
  const care = [cautions.crush.full, cautions.hygiene.full, cautions.law.full].map((text) =>
    paragraph(text, beside, theme, 'faint'),
  )
  const numbers = toComeLines(visit, beside, Math.max(3, height - care.flat().length - care.length), room)
  return parted([numbers, ...care])
}
