import type { HerdBook } from '../book.ts'
import type { Kinship } from './choose.ts'

export const kinshipIn =
  (_book: HerdBook): Kinship =>
  () => ({ inbreeding: 0, generations: 1 })
