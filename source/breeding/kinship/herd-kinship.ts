/**
 * The pedigree of a herd book, and how inbred the calf of any of its animals would be.
 */
import { type AnimalRecord, animalNamed, type HerdBook } from '../book.ts'
import type { Problem } from '../problem.ts'
import { calfGenerations } from './generations.ts'
import { impossibleIn, type Parents, problemOf } from './impossible.ts'
import { type Pedigree, pedigreeOf } from './pedigree.ts'
import { calfInbreeding } from './relationship.ts'

/** Before the name of a parent that is not in the file, so that it is no animal's id. */
const outside = 'outside: '

/** One name for each animal: its id in the file where it has one, else the name that its offspring give. */
function nameIn(book: HerdBook, name: string | undefined): string | undefined {
  return name === undefined ? undefined : (animalNamed(book, name)?.id ?? outside + name)
}

const unknown: Parents = { sire: undefined, dam: undefined }

function parentsIn(book: HerdBook): Map<string, Parents> {
  const parents = new Map<string, Parents>()
  for (const [id, record] of book.records) {
    parents.set(id, { sire: nameIn(book, record.sire), dam: nameIn(book, record.dam) })
  }
  return parents
}

/** A pedigree with what was wrong in it. */
interface HerdPedigree {
  readonly pedigree: Pedigree
  /** Notices; the parents of the animals that they blame count as unknown. */
  readonly problems: readonly Problem[]
}

const known = new WeakMap<HerdBook['records'], HerdPedigree>()

/**
 * The pedigree of a herd book. A loop or an impossible parent is named and left out, so that one wrong entry does not
 * take the figures of the whole herd. Read once for the records of a book and kept.
 *
 * @example herdPedigree(book).problems[0]?.code // 'pedigree-loop'
 */
export function herdPedigree(book: HerdBook): HerdPedigree {
  const found = known.get(book.records)
  if (found) return found
  const parents = parentsIn(book)
  const problems: Problem[] = []
  const shown = (id: string): string => book.animals.get(id)?.number ?? id.slice(outside.length)
  for (;;) {
    const impossible = impossibleIn(parents)
    if (impossible.length === 0) break
    const inBothRoles = new Set<string>()
    for (const one of impossible) {
      const problem: Problem = { ...problemOf(one, shown), severity: 'notice' }
      if (!problems.some(({ code, animal }) => code === problem.code && animal === problem.animal))
        problems.push(problem)
      if (one.code === 'pedigree-both-roles') inBothRoles.add(one.parent)
      for (const id of one.animals) parents.set(id, unknown)
    }
    // Whatever the order of the file, none of its offspring is believed.
    for (const [id, { sire = '', dam = '' }] of parents)
      if (inBothRoles.has(sire) || inBothRoles.has(dam)) parents.set(id, unknown)
  }
  const read: HerdPedigree = { pedigree: pedigreeOf(parents), problems }
  known.set(book.records, read)
  return read
}

/** Inbreeding of the calf of a dam and a sire, 0 to below 1, and the generations of its ancestors known in full. */
export type Kinship = (
  dam: AnimalRecord,
  sire: string,
) => { readonly inbreeding: number; readonly generations: number }

/**
 * Kinship in a herd. The sire is named by his code as written on a straw.
 *
 * @example kinshipOf(book)(cow, 'S17') // { inbreeding: 0.125, generations: 2 }
 */
export function kinshipOf(book: HerdBook): Kinship {
  const bySire = new Map<string, { readonly id: string; readonly inbreeding: (dam: string) => number }>()
  return (dam, sire) => {
    const { pedigree } = herdPedigree(book)
    let kin = bySire.get(sire)
    if (kin === undefined) {
      const id = nameIn(book, sire) ?? sire
      kin = { id, inbreeding: calfInbreeding(pedigree, id) }
      bySire.set(sire, kin)
    }
    return { inbreeding: kin.inbreeding(dam.id), generations: calfGenerations(pedigree, dam.id, kin.id) }
  }
}
