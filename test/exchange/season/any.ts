/** Seasons of random herds. */
import { openBook } from '../../../source/breeding/book.ts'
import { type SeasonView, seasonShown, seasonView } from '../../../source/breeding/figures/season-view.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import type { Morning } from '../../breeding/histories.ts'
import { type Animal, bookOf, dayAt, type Herd } from '../../breeding/support.ts'

/** The season that a random herd (anyMorning) is in on its day. */
export function seasonOf({ facts, s }: Morning): SeasonView {
  const book = openBook(facts)
  const season = seasonShown(book, dayAt(s))
  if (season === undefined) throw new Error('a herd without a season')
  const standings = Array.from(book.animals.values(), (animal) => standingOn(book, animal, dayAt(s)))
  return seasonView(book, standings, season, dayAt(s))
}

/** The season of a hand-made herd on a season day; animals without a number of their own are numbered in order. */
export function seasonAt(s: number, animals: readonly Animal[], herd?: Herd): SeasonView {
  const numbered = animals.map((one, i) => {
    const number = one.record.number === '1' ? String(i + 1) : one.record.number
    return { ...one, record: { ...one.record, number } }
  })
  const book = bookOf(numbered, herd)
  const season = seasonShown(book, dayAt(s), 'spring')
  if (season === undefined) throw new Error('no season')
  const standings = Array.from(book.animals.values(), (animal) => standingOn(book, animal, dayAt(s)))
  return seasonView(book, standings, season, dayAt(s))
}
