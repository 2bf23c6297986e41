/**
 * A pedigree in the order that kinship is reckoned in: parents before their offspring.
 */
import type { Outcome } from '../problem.ts'
import { impossibleIn, type Parents, problemOf } from './impossible.ts'

/** Ancestors first. Numbers stand for animals; -1 is an unknown parent. */
export interface Pedigree {
  readonly numbers: ReadonlyMap<string, number>
  readonly sires: Int32Array
  readonly dams: Int32Array
}

/** Parents, then the animal itself; no recursion, for a wrong file can hold a very long line. */
function inOrder(parents: ReadonlyMap<string, Parents>): Map<string, number> {
  const numbers = new Map<string, number>()
  for (const id of parents.keys()) {
    const waiting = [id]
    for (let next: string | undefined = id; next !== undefined; next = waiting.at(-1)) {
      const { sire, dam } = parents.get(next) ?? {}
      const sireWaits = sire !== undefined && !numbers.has(sire)
      const damWaits = dam !== undefined && !numbers.has(dam)
      if (sireWaits) waiting.push(sire)
      if (damWaits) waiting.push(dam)
      if (sireWaits || damWaits) continue
      waiting.pop()
      if (!numbers.has(next)) numbers.set(next, numbers.size)
    }
  }
  return numbers
}

/**
 * Reads a pedigree.
 *
 * @param parents sire and dam by animal; a parent that is no key of its own is a founder, as is an unknown one
 * @returns the pedigree, or what is impossible in it: `pedigree-loop`, `pedigree-same-parents`, `pedigree-both-roles`
 * @example readPedigree(new Map([['412', { sire: 'S17', dam: '305' }]])).ok // true
 */
export function readPedigree(parents: ReadonlyMap<string, Parents>): Outcome<Pedigree> {
  const impossible = impossibleIn(parents)
  if (impossible.length > 0) return { ok: false, problems: impossible.map((one) => problemOf(one)) }
  return { ok: true, value: pedigreeOf(parents) }
}

/**
 * The pedigree of parents in which nothing impossible was found.
 *
 * @param parents as for readPedigree; a loop among them never ends
 */
export function pedigreeOf(parents: ReadonlyMap<string, Parents>): Pedigree {
  const numbers = inOrder(parents)
  const sires = new Int32Array(numbers.size).fill(-1)
  const dams = new Int32Array(numbers.size).fill(-1)
  const known: ReadonlyMap<string | undefined, number> = numbers
  for (const [id, { sire, dam }] of parents) {
    const number = numbers.get(id) as number
    sires[number] = known.get(sire) ?? -1
    dams[number] = known.get(dam) ?? -1
  }
  return { numbers, sires, dams }
}
