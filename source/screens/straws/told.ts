/** What is told of the line pointed at, in a column: the nitrogen's readings and cautions, a lot with its serving card. */

import type { HerdBook } from '../../breeding/book.ts'
import type { Day } from '../../breeding/day.ts'
import type { ServiceFact } from '../../breeding/facts.ts'
import { sireOf } from '../../breeding/sire.ts'
import type { Movement } from '../../breeding/straws/movements.ts'
import type { NitrogenLevel } from '../../breeding/straws/nitrogen.ts'
import { type Lot, volumeOf } from '../../breeding/straws/stock.ts'
import { thawingCard } from '../../breeding/straws/thawing.ts'
import { servicesOfSeason, sireUse } from '../../breeding/straws/use.ts'
import type { Desk } from '../../morning/desk.ts'
import { flaskOn, movementsOf } from '../../morning/flask.ts'
import type { StrawsEntry } from '../../morning/places/straws.ts'
import { blockShown, blocksAhead } from '../../morning/reckoning.ts'
import { capital } from '../../words/capital.ts'
import { cautions } from '../../words/cautions.ts'
import { dayAndMonth } from '../../words/dates.ts'
import { sentence } from '../../words/index.ts'
import { safeText } from '../../words/safe.ts'
import { nitrogenCautions, nitrogenWords, thawingWords } from '../../words/straws.ts'
import { bit, type Line } from '../line.tsx'
import { barOf } from '../picture.ts'
import { paragraph, parted } from '../text.ts'
import type { Theme } from '../theme.ts'
import { fill } from '../width.ts'
import { kindNames, strawsWords } from '../words/straws.ts'
import { heiferLines } from './supply.ts'

/** Movements and readings shown. */
const MOST = 6
const MOST_READINGS = 10

/** The column for a line. */
export function entryLines(desk: Desk, entry: StrawsEntry, cells: number, theme: Theme): readonly Line[] {
  switch (entry.is) {
    case 'nitrogen':
      return nitrogenLines(desk.book, entry.level, cells, theme)
    case 'notice':
      return paragraph(sentence(entry.problem), cells, theme, 'care')
    case 'used-up':
      return []
    case 'lot':
      return parted([
        lotParts(desk, entry.lot, cells, theme).flat(),
        entry.lot.straw === 'sexed' ? heiferLines(desk, cells, theme) : [],
        cardLines(desk.book, entry.lot, cells, theme),
        historyLines(desk, entry.lot, cells, theme),
        paragraph(cautions.nitrogen.full, cells, theme, 'faint'),
      ])
  }
}

/** The same on a few lines, below a list on a narrow screen. */
export function shortEntry(desk: Desk, entry: StrawsEntry, cells: number, theme: Theme): readonly Line[] {
  if (entry.is !== 'lot')
    return entryLines(desk, entry, cells, theme)
      .filter((line) => line.length > 0)
      .slice(entry.is === 'nitrogen' ? 2 : 0)
  const [, traits = [], place = []] = lotParts(desk, entry.lot, cells, theme)
  const thaw = thawingWords(
    thawingCard(entry.lot.straw, volumeOf(desk.book, entry.lot.sire, entry.lot.straw)),
  )
  return [
    ...traits,
    ...place,
    ...thaw.slice(4, 5).flatMap((text) => paragraph(text, cells, theme, 'plain', 2)),
  ]
}

function nitrogenLines(book: HerdBook, level: NitrogenLevel, cells: number, theme: Theme): readonly Line[] {
  const { nitrogenOrder, nitrogenAlarm } = book.policy
  const head: Line = [
    bit(strawsWords.flask(level.flask === undefined ? undefined : safeText(level.flask)), 'strong'),
    bit(`  ${strawsWords.depth(level.latest.depthCm)}`, 'strong'),
  ]
  const state = paragraph(
    capital(`${nitrogenWords[level.state]}.`),
    cells,
    theme,
    level.state === 'enough' ? 'good' : 'care',
  )
  const readings = level.readings.toReversed().slice(0, MOST_READINGS)
  const deepest = Math.max(...readings.map(({ depthCm }) => depthCm), nitrogenOrder)
  const room = Math.max(4, cells - 18)
  return parted([
    [head, ...state, ...paragraph(strawsWords.levels(nitrogenOrder, nitrogenAlarm), cells, theme)],
    [
      [bit(strawsWords.readings, 'heading')],
      ...readings.map(({ day, depthCm }): Line => {
        const bar = barOf({ value: depthCm, aim: nitrogenOrder }, deepest, room, theme)
        return [
          bit(fill(dayAndMonth(day), 8, theme.signs.cut)),
          bit(fill(strawsWords.depth(depthCm), 8, theme.signs.cut)),
          ...bar,
        ]
      }),
    ],
    nitrogenCautions.flatMap((text) => paragraph(text, cells, theme, 'faint')),
  ])
}

/** Whose straws; what is known of the sire; how many, where; how much he is used. */
function lotParts(desk: Desk, lot: Lot, cells: number, theme: Theme): readonly (readonly Line[])[] {
  const { book, page } = desk
  const sire = sireOf(book, lot.sire)
  const where = [
    lot.flask === undefined ? '' : strawsWords.flask(safeText(lot.flask)),
    strawsWords.canister(lot.canister === undefined ? undefined : safeText(lot.canister)),
    strawsWords.batch(lot.batch === undefined ? undefined : safeText(lot.batch)),
    strawsWords.left(lot.left),
    lot.counted === undefined ? strawsWords.neverCounted : strawsWords.counted(dayAndMonth(lot.counted)),
  ]
  const traits = [
    sire.breed === undefined ? '' : safeText(sire.breed),
    sire.easyCalving === undefined ? '' : sire.easyCalving ? strawsWords.easy : strawsWords.notEasy,
    sire.gestationDays === undefined ? '' : strawsWords.gestation(sire.gestationDays),
  ]
  return [
    [
      [
        bit(`${safeText(lot.sire)} ${kindNames[lot.straw]}`, 'strong'),
        bit(sire.name === undefined ? '' : `  ${safeText(sire.name)}`),
      ],
    ],
    sentenceOf(traits, cells, theme),
    sentenceOf(where, cells, theme),
    sireLines(book, lot.sire, page.list.day, desk, cells, theme),
  ]
}

const sentenceOf = (parts: readonly string[], cells: number, theme: Theme): readonly Line[] => {
  const said = parts.filter((part) => part !== '').join(', ')
  return said === '' ? [] : paragraph(`${capital(said)}.`, cells, theme)
}

function sireLines(
  book: HerdBook,
  sire: string,
  day: Day,
  desk: Desk,
  cells: number,
  theme: Theme,
): readonly Line[] {
  const season = (blocksAhead(desk)[0] ?? blockShown(desk, undefined))?.season
  const use = sireUse(servicesOfSeason(book, season, day))
  if (use.total === 0) return []
  const used = use.by(sire)
  const share = Math.round((100 * used) / use.total)
  const limit = Math.round(100 * book.policy.sireShare)
  return paragraph(strawsWords.used(used, use.total, share, limit), cells, theme)
}

function cardLines(book: HerdBook, { sire, straw }: Lot, cells: number, theme: Theme): readonly Line[] {
  const steps = thawingWords(thawingCard(straw, volumeOf(book, sire, straw)))
  return [
    [bit(strawsWords.serving, 'heading')],
    ...steps.flatMap((step, index) =>
      paragraph(step, cells - 3, theme).map(
        (line, row): Line => [bit(row === 0 ? `${index + 1}  ` : '   ', 'faint'), ...line],
      ),
    ),
  ]
}

function historyLines(desk: Desk, lot: Lot, cells: number, theme: Theme): readonly Line[] {
  const moved = movementsOf(flaskOn(desk.book, desk.page.list.day), lot).slice(0, MOST)
  if (moved.length === 0) return []
  return [
    [bit(strawsWords.history, 'heading')],
    ...moved.map(
      ({ fact, day }): Line => [
        bit(fill(dayAndMonth(day), 8, theme.signs.cut)),
        bit(fill(movedWords(fact, desk.book), cells - 8, theme.signs.cut)),
      ],
    ),
  ]
}

const movedWords = (fact: Movement['fact'], book: HerdBook): string =>
  fact.kind === 'service'
    ? strawsWords.moved.service(numberOf(fact, book))
    : strawsWords.moved[fact.kind](fact.count)

const numberOf = ({ about }: ServiceFact, book: HerdBook): string =>
  safeText(book.animals.get(about)?.number ?? '')
