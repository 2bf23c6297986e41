/** The serving card of a morning: how the straws proposed today are thawed, the supplier's own card first. */
import type { HerdBook } from '../../breeding/book.ts'
import type { StrawKind } from '../../breeding/facts.ts'
import type { Row } from '../../breeding/list.ts'
import { volumeOf } from '../../breeding/straws/stock.ts'
import { thawingCard } from '../../breeding/straws/thawing.ts'
import { type CardFor, servingSteps } from '../../words/straws.ts'

/**
 * The steps for the straws that are still to be used; none where none is.
 *
 * @param rows of the list of the day
 * @example servingCard(book, morningList(book, today).rows)[0] // 'The supplier’s own card comes before this one.'
 */
export function servingCard(book: HerdBook, rows: readonly Row[]): readonly string[] {
  const cards = new Map<string, { straw: StrawKind; volumeMl: number | undefined; sires: string[] }>()
  for (const { straw, done } of rows) {
    if (straw === undefined || done) continue
    const volumeMl = volumeOf(book, straw.sire, straw.straw)
    const key = `${straw.straw} ${volumeMl ?? ''}`
    const card = cards.get(key) ?? { straw: straw.straw, volumeMl, sires: [] }
    if (!card.sires.includes(straw.sire)) card.sires.push(straw.sire)
    cards.set(key, card)
  }
  const used = [...cards.values()].map(
    ({ straw, volumeMl, sires }): CardFor => ({ card: thawingCard(straw, volumeMl), sires: sires.sort() }),
  )
  return servingSteps(used)
}
