import { isDeepStrictEqual } from 'node:util'
import type { Fact } from '../breeding/facts.ts'
import { fault } from '../breeding/problem.ts'
import { inSlices } from './breathe.ts'
import { type HerdFile, Refusal } from './herd-file.ts'

const slice = 2000

/** Whether a revision begins with the very facts of one read before, so that only its end is new. */
const grewFrom = (herd: HerdFile, known: HerdFile): boolean =>
  herd.facts.length >= known.facts.length &&
  herd.facts[0] === known.facts[0] &&
  herd.facts[known.facts.length - 1] === known.facts.at(-1)

/**
 * What a file lacks of the facts that this program knows; with them behind its own, the file holds the union.
 *
 * @param disk what the file holds
 * @param known the revision read or saved before
 * @param unsaved facts that are in no file yet
 * @returns facts in the order of recording
 * @throws Refusal with `fact-differs` where a fact of the same id says something else
 */
export async function missingFrom(
  disk: HerdFile,
  known: HerdFile,
  unsaved: readonly Fact[],
  path: string,
): Promise<Fact[]> {
  const grew = grewFrom(disk, known)
  const mine = grew ? unsaved : [...known.facts, ...unsaved]
  const onDisk = new Map<string, Fact>()
  await inSlices(grew ? disk.facts.slice(known.facts.length) : disk.facts, slice, (fact) =>
    onDisk.set(fact.id, fact),
  )
  const missing: Fact[] = []
  await inSlices(mine, slice, (fact) => {
    const there = onDisk.get(fact.id)
    if (there === undefined) missing.push(fact)
    else if (there !== fact && !isDeepStrictEqual(there, fact)) {
      throw new Refusal(fault('fact-differs', path, { id: fact.id, kind: fact.kind, date: fact.date }))
    }
  })
  return missing
}
