/**
 * How much two animals are related, and how inbred their calf would be.
 */
import type { Pedigree } from './pedigree.ts'

/** What an animal gets by chance beyond the mean of its parents, as a share of a founder's. */
function mendelian(pedigree: Pedigree, inbreeding: Float64Array, animal: number): number {
  const of = (parent: number): number => (parent < 0 ? -1 : (inbreeding[parent] as number))
  return 0.5 - 0.25 * (of(pedigree.sires[animal] as number) + of(pedigree.dams[animal] as number))
}

const known = new WeakMap<Pedigree, Float64Array>()

/**
 * Inbreeding of every animal of a pedigree, by its number. Each animal's own relationship is traced through its
 * ancestors, youngest first. Computed once for a pedigree and kept.
 *
 * @returns 0 (parents unrelated or unknown) to below 1
 * @source Meuwissen and Luo, Computing inbreeding coefficients in large populations, Genetics Selection Evolution 24, 1992
 * @example inbreedingOfAll(pedigree)[0] // 0
 */
export function inbreedingOfAll(pedigree: Pedigree): Float64Array {
  const found = known.get(pedigree)
  if (found) return found
  const { sires, dams } = pedigree
  const inbreeding = new Float64Array(sires.length)
  const share = new Float64Array(sires.length)
  for (let animal = 0; animal < sires.length; animal += 1) {
    if ((sires[animal] as number) < 0 || (dams[animal] as number) < 0) continue
    let own = -1
    share[animal] = 1
    for (let ancestor = animal; ancestor >= 0; ancestor -= 1) {
      const part = share[ancestor] as number
      if (part === 0) continue
      share[ancestor] = 0
      const [sire, dam] = [sires[ancestor] as number, dams[ancestor] as number]
      if (sire >= 0) share[sire] = (share[sire] as number) + part / 2
      if (dam >= 0) share[dam] = (share[dam] as number) + part / 2
      own += part * part * mendelian(pedigree, inbreeding, ancestor)
    }
    inbreeding[animal] = own
  }
  known.set(pedigree, inbreeding)
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
  const inbreeding = inbreedingOfAll(pedigree)
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
    return at === undefined ? 0 : (relationships[at] ?? 0)
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
  return number === undefined ? 0 : (inbreedingOfAll(pedigree)[number] ?? 0)
}
