/** What is reckoned in small steps between keys. */
import type { HerdBook } from '../breeding/book.ts'
import type { Steps } from '../breeding/steps.ts'

/** Something to be reckoned: of which book, what, and the steps towards it. */
export interface Reckoning {
  readonly book: HerdBook
  readonly name: string
  readonly begin: () => Steps<void>
}
