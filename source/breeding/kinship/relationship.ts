/**
 * How much two animals are related, and how inbred their calf would be.
 */
import type { Pedigree } from './pedigree.ts'

/** What an animal gets by chance beyond the mean of its parents, as a share of a founder's. */
function mendelian(pedigree: Pedigree, inbreeding: Float64Array, animal: number): number {
  const of = (parent: number): number => (parent < 0 ? -1 : (inbreeding[parent] as number))
  return 0.5 - 0.25 * (of(pedigree.sires[animal] as number) + of(pedigree.dams[animal] as number))
}

/** Inbreeding by number; NaN where nobody has asked yet. */
const known = new WeakMap<Pedigree, Float64Array>()

/** An animal and its ancestors, each once, youngest first. */
function lineOf({ sires, dams }: Pedigree, animal: number): Int32Array {
  const line = new Set([animal])
  for (const one of line) {
    const [sire, dam] = [sires[one] as number, dams[one] as number]
    if (sire >= 0) line.add(sire)
    if (dam >= 0) line.add(dam)
  }
  return Int32Array.from(line).sort().reverse()
}

/** Inbreeding of an animal whose ancestors' is known: its own relationship is traced through its ancestors. */
function traced(pedigree: Pedigree, inbreeding: Float64Array, animal: number): number {
  const { sires, dams } = pedigree
  if ((sires[animal] as number) < 0 || (dams[animal] as number) < 0) return 0
  const shares = new Map([[animal, 1]])
  let own = -1
  for (const ancestor of lineOf(pedigree, animal)) {
    const share = shares.get(ancestor) ?? 0
    for (const parent of [sires[ancestor] as number, dams[ancestor] as number])
      if (parent >= 0) shares.set(parent, (shares.get(parent) ?? 0) + share / 2)
    own += share * share * mendelian(pedigree, inbreeding, ancestor)
  }
  return own
}

/**
 * Inbreeding of an animal and all its ancestors, by number; of the others only where it was asked for before. The
 * work of each is done once for a pedigree and kept.
 *
 * @returns 0 (parents unrelated or unknown) to below 1
 * @source Meuwissen and Luo, Computing inbreeding coefficients in large populations, Genetics Selection Evolution 24, 1992
 */
function inbreedingOfLine(pedigree: Pedigree, animal: number): Float64Array {
  let inbreeding = known.get(pedigree)
  if (inbreeding === undefined) {
    inbreeding = new Float64Array(pedigree.sires.length).fill(Number.NaN)
    known.set(pedigree, inbreeding)
  }
  for (const one of lineOf(pedigree, animal).reverse()) {
    if (Number.isNaN(inbreeding[one])) inbreeding[one] = traced(pedigree, inbreeding, one)
  }
  return inbreeding
}

/**
 * Relationship of one animal to every animal of the pedigree, by number: once up through its ancestors, once down
 * through all animals.
 *
 * @source Colleau, An indirect approach to the extensive calculation of relationship coefficients, Genetics Selection
 *   Evolution 34, 2002
 */
function relationshipsOf(pedigree: Pedigree, animal: number): Float64Array {
  const { sires, dams } = pedigree
  const inbreeding = inbreedingOfLine(pedigree, animal)
  const up = new Float64Array(sires.length)
  up[animal] = 1
  for (let i = animal; i >= 0; i -= 1) {
    const part = (up[i] as number) / 2
    if (part === 0) continue
    const [sire, dam] = [sires[i] as number, dams[i] as number]
    if (sire >= 0) up[sire] = (up[sire] as number) + part
    if (dam >= 0) up[dam] = (up[dam] as number) + part
  }
  for (let i = 0; i < up.length; i += 1) {
    const [sire, dam] = [sires[i] as number, dams[i] as number]
    const parents = (sire < 0 ? 0 : (up[sire] as number)) + (dam < 0 ? 0 : (up[dam] as number))
    const own = up[i] === 0 ? 0 : (up[i] as number) * mendelian(pedigree, inbreeding, i)
    up[i] = own + parents / 2
  }
  return up
}

/**
 * Relationship of one animal to any other: twice the chance that two genes drawn from the two are copies of one gene of
 * a founder. Ask once for each sire and keep the answer: the work is done here.
 *
 * @param animal who; one that the pedigree does not hold is related to none but itself
 * @returns a function of the other animal: 0 unrelated, 0.5 parent and offspring, 1 the animal itself, more when inbred
 * @example relationshipTo(pedigree, 'S17')('412') // 0.5
 */
export function relationshipTo(pedigree: Pedigree, animal: string): (other: string) => number {
  const number = pedigree.numbers.get(animal)
  if (number === undefined) return (other) => (other === animal ? 1 : 0)
  const relationships = relationshipsOf(pedigree, number)
  return (other) => {
    const at = pedigree.numbers.get(other)
    return at === undefined ? 0 : (relationships[at] as number)
  }
}

/**
 * Inbreeding of the calf of a sire and any dam: half the relationship of the parents. Unknown parents count as
 * unrelated; say beside it how many generations were known.
 *
 * @returns a function of the dam: 0 to below 1
 * @source Boggess, table of inbreeding by relationship (full sibs 0.25, half sibs 0.125, first cousins 0.0625)
 * @example calfInbreeding(pedigree, 'S17')('412') // 0.25
 */
export function calfInbreeding(pedigree: Pedigree, sire: string): (dam: string) => number {
  const relationship = relationshipTo(pedigree, sire)
  return (dam) => relationship(dam) / 2
}

/** Inbreeding of an animal, 0 where the pedigree does not hold it. */
export function inbreedingOf(pedigree: Pedigree, animal: string): number {
  const number = pedigree.numbers.get(animal)
  return number === undefined ? 0 : (inbreedingOfLine(pedigree, number)[number] as number)
}
