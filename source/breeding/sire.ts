/** What is known of a sire: his own record in the file, else the stock-take of his straws. */
import { animalNamed, type HerdBook } from './book.ts'

export interface Sire {
  readonly code: string
  readonly name: string | undefined
  readonly breed: string | undefined
  readonly easyCalving: boolean | undefined
  readonly gestationDays: number | undefined
}

const sires = new WeakMap<HerdBook, Map<string, Sire>>()

/**
 * What the book knows of a sire.
 *
 * @param code number or international ID as written on the straw or in a pedigree
 * @example sireOf(book, 'S17').breed // 'Jersey'
 */
export function sireOf(book: HerdBook, code: string): Sire {
  let known = sires.get(book)
  if (known === undefined) {
    known = new Map()
    sires.set(book, known)
  }
  let sire = known.get(code)
  if (sire === undefined) {
    sire = findSire(book, code)
    known.set(code, sire)
  }
  return sire
}

function findSire(book: HerdBook, code: string): Sire {
  const own = animalNamed(book, code)?.record
  let name = own?.name
  let breed = own?.breed
  let easyCalving = own?.easyCalving
  let gestation = own?.gestationDays
  for (const fact of book.stock.toReversed()) {
    if (fact.kind !== 'stock-take' || fact.sire !== code) continue
    name ??= fact.sireName
    breed ??= fact.breed
    easyCalving ??= fact.easyCalving
    gestation ??= fact.gestationDays
  }
  return { code, name, breed, easyCalving, gestationDays: gestation }
}
