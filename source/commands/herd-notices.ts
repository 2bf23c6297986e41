/** What does not fit in a herd, beyond the shape of its facts. Each is shown, and the herd works as usual. */
import type { HerdBook } from '../breeding/book.ts'
import { contradictionsOf } from '../breeding/contradictions.ts'
import type { Day } from '../breeding/day.ts'
import { identityNotices } from '../breeding/identity/notices.ts'
import { herdPedigree } from '../breeding/kinship/herd-kinship.ts'
import { compareNumbers } from '../breeding/order.ts'
import { notice, type Problem } from '../breeding/problem.ts'
import { standingOn } from '../breeding/standing.ts'
import { stockOn } from '../breeding/straws/stock.ts'

/**
 * Contradictions, odd identities and missing blocks of the animals, by number; then impossible pedigrees, and straws
 * that the book cannot account for.
 *
 * @param today the last day whose facts count
 */
export const herdNotices = (book: HerdBook, today: Day): Problem[] => [
  ...animalNotices(book, today),
  ...herdPedigree(book).problems,
  ...stockOn(book, today).notices,
]

const animalNotices = (book: HerdBook, today: Day): Problem[] =>
  [...book.animals.values()]
    .sort((a, b) => compareNumbers(a.number, b.number))
    .flatMap((animal) => {
      const standing = standingOn(book, animal, today)
      const blockless = standing.inHerd && standing.female && standing.block === undefined
      return [
        ...contradictionsOf(book, standing),
        ...identityNotices(animal.record),
        ...(blockless ? [notice('animal-without-block', '', {}, animal.number)] : []),
      ]
    })
