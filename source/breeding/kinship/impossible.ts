/**
 * What cannot be in a pedigree.
 */
import { fault, type Problem } from '../problem.ts'

/** Sire and dam of an animal, where they are known. */
export interface Parents {
  readonly sire?: string | undefined
  readonly dam?: string | undefined
}

type State = 'waiting' | 'in line' | 'done'

/** Animals that are their own ancestors, one list for each loop. */
function loops(parents: ReadonlyMap<string, Parents>): string[][] {
  const ids = [...parents.keys()]
  const numbers = new Map<string | undefined, number>(ids.map((id, number) => [id, number]))
  const lines = [...parents.values()].flatMap(({ sire, dam }) => [numbers.get(sire), numbers.get(dam)])
  const state = ids.map((): State => 'waiting')
  const asked = new Uint8Array(ids.length)
  const found: string[][] = []
  for (const start of ids.keys()) {
    const line = [start]
    state[start] = 'in line'
    for (let animal: number | undefined = start; animal !== undefined; animal = line.at(-1)) {
      const next = asked[animal] as number
      if (next === 2) {
        line.pop()
        state[animal] = 'done'
        continue
      }
      asked[animal] = next + 1
      const parent = lines[2 * animal + next]
      if (parent === undefined || state[parent] === 'done') continue
      if (state[parent] === 'in line') {
        found.push(line.slice(line.indexOf(parent)).map((number) => ids[number] as string))
        continue
      }
      state[parent] = 'in line'
      line.push(parent)
    }
  }
  return found
}

/** Something impossible, with the ids of the animals whose recorded parents cannot all be right. */
type Impossible =
  /** Each is a parent of the one before, the first of the last. */
  | { readonly code: 'pedigree-loop'; readonly animals: readonly string[] }
  | { readonly code: 'pedigree-same-parents'; readonly animals: readonly [string]; readonly parent: string }
  /** `parent` is the sire of the first and the dam of the second. */
  | {
      readonly code: 'pedigree-both-roles'
      readonly animals: readonly [string, string]
      readonly parent: string
    }

/**
 * What is impossible in a pedigree: an animal that is its own ancestor, one that stands as sire and dam of the same
 * animal, one that is the sire of one and the dam of another.
 *
 * @returns empty where nothing is
 * @example impossibleIn(new Map([['7', { sire: '7' }]])) // [{ code: 'pedigree-loop', animals: ['7'] }]
 */
export function impossibleIn(parents: ReadonlyMap<string, Parents>): Impossible[] {
  const found: Impossible[] = loops(parents).map((animals) => ({ code: 'pedigree-loop', animals }))
  const sireOf = new Map<string, string>()
  const damOf = new Map<string, string>()
  for (const [id, { sire, dam }] of parents) {
    if (sire !== undefined && sire === dam) {
      found.push({ code: 'pedigree-same-parents', animals: [id], parent: sire })
      continue
    }
    if (sire !== undefined && !sireOf.has(sire)) sireOf.set(sire, id)
    if (dam !== undefined && !damOf.has(dam)) damOf.set(dam, id)
  }
  for (const [parent, first] of sireOf) {
    const second = damOf.get(parent)
    if (second !== undefined) found.push({ code: 'pedigree-both-roles', animals: [first, second], parent })
  }
  return found
}

/**
 * The problem to show: `pedigree-loop` (animals), `pedigree-same-parents` (parent), `pedigree-both-roles` (sireOf,
 * damOf). Its animal is the first of the loop, the offspring, the parent of both roles.
 *
 * @param name how an id is shown
 * @example problemOf({ code: 'pedigree-loop', animals: ['7'] }).values // { animals: '7' }
 */
export function problemOf(impossible: Impossible, name: (id: string) => string = (id) => id): Problem {
  const [first = '', second = ''] = impossible.animals.map(name)
  if (impossible.code === 'pedigree-loop')
    return fault(impossible.code, '', { animals: impossible.animals.map(name).join(', ') }, first)
  const parent = name(impossible.parent)
  if (impossible.code === 'pedigree-same-parents') return fault(impossible.code, '', { parent }, first)
  return fault(impossible.code, '', { sireOf: first, damOf: second }, parent)
}
