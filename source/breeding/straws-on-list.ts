/** The straws ranked for an animal as the list sees her. */
import type { HerdBook } from './book.ts'
import type { Row } from './list.ts'
import { placesOf } from './places.ts'
import type { Standing } from './standing.ts'
import { strawRanking } from './straws/choose.ts'
import { nothingSetAside, type SetAside } from './straws/set-aside.ts'

/**
 * The straws in stock ranked for an animal at the milking where she is served, what is promised to the rows above hers
 * set aside: the straw of her row then comes first, with the reason why.
 *
 * @param rows of the list of her standing's day, in its order; an animal that is not on it finds nothing set aside
 * @param ranking where it is known already
 * @example strawsOnList(book, morningList(book, today).rows, standing).ranked[0]?.sire // 'S17'
 */
export function strawsOnList(
  book: HerdBook,
  rows: readonly Row[],
  standing: Standing,
  ranking: ReturnType<typeof strawRanking> = strawRanking(book, standing.today),
): ReturnType<typeof ranking> {
  const [place] = placesOf(book, [standing])
  const first = place?.takeCare ?? place?.further
  return ranking(standing, first?.serving, promisedAbove(rows, standing.animal.id))
}

/** What is promised to the rows above the one of an animal. */
function promisedAbove(rows: readonly Row[], animal: string): SetAside {
  const aside = nothingSetAside()
  for (const row of rows) {
    if (row.animal === animal) return aside
    if (row.straw !== undefined && !row.done) aside.add(row.straw.sire, row.straw.straw)
  }
  return nothingSetAside()
}
