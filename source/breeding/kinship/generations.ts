import type { Pedigree } from './pedigree.ts'

const known = new WeakMap<Pedigree, Int32Array>()

/** Generations of ancestors known in full, by number: 0 where a parent is unknown. */
function completeOfAll(pedigree: Pedigree): Int32Array {
  const found = known.get(pedigree)
  if (found) return found
  const { sires, dams } = pedigree
  const complete = new Int32Array(sires.length)
  sires.forEach((sire, i) => {
    const dam = dams[i] as number
    if (sire >= 0 && dam >= 0) complete[i] = 1 + Math.min(complete[sire] as number, complete[dam] as number)
  })
  known.set(pedigree, complete)
  return complete
}

/**
 * Generations of ancestors of an animal that are known in full: 1 both parents, 2 all grandparents too.
 *
 * @returns 0 or more
 * @example generationsKnown(pedigree, '412') // 1
 */
export function generationsKnown(pedigree: Pedigree, animal: string): number {
  const number = pedigree.numbers.get(animal)
  return number === undefined ? 0 : (completeOfAll(pedigree)[number] as number)
}

/**
 * The same for the calf of two animals: its parents are known, and beyond them what is known of both.
 *
 * @returns 1 or more
 * @example calfGenerations(pedigree, '412', 'S17') // 2
 */
export const calfGenerations = (pedigree: Pedigree, dam: string, sire: string): number =>
  1 + Math.min(generationsKnown(pedigree, dam), generationsKnown(pedigree, sire))
