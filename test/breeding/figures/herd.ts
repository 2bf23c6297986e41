/** A block of hand-made animals and its figures on a season day. */
import { countedIn, figuresOf, type SeasonFigures } from '../../../source/breeding/figures/season-figures.ts'
import { standingOn } from '../../../source/breeding/standing.ts'
import { type Animal, bookOf, dayAt, type Herd } from '../support.ts'

export function figuresAt(s: number, animals: readonly Animal[], herd?: Herd): SeasonFigures {
  const numbered = animals.map((one, i) => ({ ...one, record: { ...one.record, number: String(i + 1) } }))
  const book = bookOf(numbered, herd)
  const season = book.allSeasons[0]
  if (season === undefined) throw new Error('no season')
  const standings = [...book.animals.values()].map((animal) => standingOn(book, animal, dayAt(s)))
  return figuresOf(countedIn(book, standings, season, dayAt(s)), book, season, dayAt(s))
}

/** `numerator/denominator ?unknown`. */
export const told = ({
  numerator,
  denominator,
  unknown,
}: {
  numerator: number
  denominator: number
  unknown: number
}): string => `${numerator}/${denominator}${unknown === 0 ? '' : ` ?${unknown}`}`
