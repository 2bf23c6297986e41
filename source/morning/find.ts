/** Finding an animal by what someone types: her number, the end of an ear tag, a name. */
import type { AnimalRecord, HerdBook } from '../breeding/book.ts'

/** What a typed number points at. */
type Found =
  | { readonly animal: AnimalRecord; readonly by: 'number' | 'tag' }
  | { readonly animal?: undefined; readonly many: number }

/** Digits of a tag shorter than this are taken for a number only. */
const SHORTEST_TAG_END = 3

/**
 * The animal that typed digits mean: the one with exactly that number, else the only one whose official or
 * electronic ear tag ends so.
 *
 * @param typed digits
 * @returns the animal, or of how many none could be chosen (0: there is none)
 * @example foundByNumber(book, '412') // { animal: cow 412, by: 'number' }
 */
export function foundByNumber(book: HerdBook, typed: string): Found {
  const exact = book.byNumber.get(typed)
  if (exact !== undefined) return { animal: exact, by: 'number' }
  if (typed.length < SHORTEST_TAG_END) return { many: 0 }
  const tagged: AnimalRecord[] = []
  for (const animal of book.animals.values()) {
    const { officialId, electronicId } = animal.record
    if (endsWith(officialId, typed) || endsWith(electronicId, typed)) tagged.push(animal)
  }
  const [only] = tagged
  return only !== undefined && tagged.length === 1 ? { animal: only, by: 'tag' } : { many: tagged.length }
}

const endsWith = (tag: string | undefined, typed: string): boolean =>
  tag?.replaceAll(/\D/g, '').endsWith(typed) === true

/**
 * Animals whose name, number or ear tag holds a text, those that begin with it first; then in order of the file.
 *
 * @param most so many at most
 * @example foundByText(book, 'butt', 8).map((animal) => animal.record.name) // ['Buttercup']
 */
export function foundByText(book: HerdBook, text: string, most: number): readonly AnimalRecord[] {
  const wanted = text.trim().toLowerCase()
  if (wanted === '') return []
  const first: AnimalRecord[] = []
  const then: AnimalRecord[] = []
  for (const animal of book.animals.values()) {
    const { name = '', number, officialId = '' } = animal.record
    const texts = [name.toLowerCase(), number.toLowerCase(), officialId.toLowerCase()]
    if (texts.some((one) => one.startsWith(wanted))) first.push(animal)
    else if (texts.some((one) => one.includes(wanted))) then.push(animal)
  }
  return [...first, ...then].slice(0, most)
}
