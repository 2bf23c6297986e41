/** Blocks that a form suggests: those with a season, and those that animals are said to be of. */
import type { HerdBook } from '../../breeding/book.ts'
import type { Pick } from './form.ts'

/** @example blockPicks(book).map(({ fills }) => fills.block) // ['Autumn', 'Spring'] */
export function blockPicks(book: HerdBook): readonly Pick[] {
  const ofAnimals = [...book.animals.values()].flatMap(({ record }) => record.block ?? [])
  return [...new Set([...book.seasons.keys(), ...ofAnimals])].sort().map((block) => ({ fills: { block } }))
}
