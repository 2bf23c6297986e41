/** Three other ways to the same relationships, to check the one in use: slow, plain, and each by its own idea. */
import type { Parents } from '../../../source/breeding/kinship/impossible.ts'

/** Random pedigree: animal i has parents among those before it, some unknown. Even numbers are male, odd female. */
export function randomPedigree(
  random: () => number,
  animals: number,
  founders: number,
): ReadonlyMap<string, Parents> {
  const pick = (sex: number, below: number): string | undefined => {
    if (random() < 0.1) return undefined
    const number = 2 * Math.floor((random() * below) / 2) + sex
    return number < below ? String(number) : undefined
  }
  return new Map(
    Array.from({ length: animals }, (_, i): [string, Parents] => {
      if (i < founders) return [String(i), {}]
      const [sire, dam] = [pick(0, i), pick(1, i)]
      return [String(i), { ...(sire === undefined ? {} : { sire }), ...(dam === undefined ? {} : { dam }) }]
    }),
  )
}

/** The tabular method: the whole table, animals in order of birth. */
export function table(parents: ReadonlyMap<string, Parents>): number[][] {
  const ids = [...parents.keys()]
  const place = new Map(ids.map((id, i) => [id, i]))
  const rows: number[][] = ids.map(() => [])
  for (const [i, id] of ids.entries()) {
    const { sire, dam } = parents.get(id) ?? {}
    const [s, d] = [
      sire === undefined ? undefined : place.get(sire),
      dam === undefined ? undefined : place.get(dam),
    ]
    const at = (a: number | undefined, b: number): number =>
      a === undefined ? 0 : (rows[a]?.[b] ?? Number.NaN)
    for (let j = 0; j < i; j += 1) {
      const value = (at(s, j) + at(d, j)) / 2
      const [row, other] = [rows[i], rows[j]]
      if (row && other) {
        row[j] = value
        other[i] = value
      }
    }
    const row = rows[i]
    if (row) row[i] = 1 + (s === undefined || d === undefined ? 0 : at(s, d) / 2)
  }
  return rows
}

/** A fraction over a power of two: exact. */
interface Fraction {
  readonly top: bigint
  readonly halvings: number
}
const half = ({ top, halvings }: Fraction): Fraction => ({ top, halvings: halvings + 1 })
const plus = (a: Fraction, b: Fraction): Fraction => {
  const halvings = Math.max(a.halvings, b.halvings)
  return {
    top: (a.top << BigInt(halvings - a.halvings)) + (b.top << BigInt(halvings - b.halvings)),
    halvings,
  }
}
export const asNumber = ({ top, halvings }: Fraction): number => Number(top) / 2 ** halvings

/** Recursion on the younger of the two, in exact fractions: chance that two genes drawn are copies of one. */
export function recursive(parents: ReadonlyMap<string, Parents>): (a: string, b: string) => Fraction {
  const born = new Map([...parents.keys()].map((id, i) => [id, i]))
  const kept = new Map<string, Fraction>()
  const none: Fraction = { top: 0n, halvings: 0 }
  const one: Fraction = { top: 1n, halvings: 0 }
  const kinship = (a: string | undefined, b: string | undefined): Fraction => {
    if (a === undefined || b === undefined) return none
    const [older, younger] = (born.get(a) ?? 0) <= (born.get(b) ?? 0) ? [a, b] : [b, a]
    const key = `${older} ${younger}`
    const found = kept.get(key)
    if (found) return found
    const { sire, dam } = parents.get(younger) ?? {}
    const value =
      older === younger
        ? half(plus(one, kinship(sire, dam)))
        : half(plus(kinship(older, sire), kinship(older, dam)))
    kept.set(key, value)
    return value
  }
  return kinship
}

/** Drops the founders' genes through the pedigree once: each animal's two genes. */
export function dropGenes(
  parents: ReadonlyMap<string, Parents>,
  random: () => number,
): Map<string, [number, number]> {
  const genes = new Map<string, [number, number]>()
  let next = 0
  const from = (parent: string | undefined): number => {
    const pair = parent === undefined ? undefined : genes.get(parent)
    if (pair) return random() < 0.5 ? pair[0] : pair[1]
    next += 1
    return next
  }
  for (const [id, { sire, dam }] of parents) genes.set(id, [from(sire), from(dam)])
  return genes
}
