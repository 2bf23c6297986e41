import { isDeepStrictEqual } from 'node:util'
import type { Fact } from '../breeding/facts.ts'
import { fault } from '../breeding/problem.ts'
import { inSlices } from './breathe.ts'
import { type HerdFile, Refusal } from './herd-file.ts'

const slice = 2000

/** Whether facts begin with the very facts of an earlier list of the same herd, so that only their end is new. */
export const beginsWith = (facts: readonly Fact[], before: readonly Fact[]): boolean =>
  before.length === 0 ||
  (facts.length >= before.length && facts[0] === before[0] && facts[before.length - 1] === before.at(-1))

const tookBy = (fact: Fact): readonly string[] => (fact.kind === 'archive' ? fact.took : [])

/**
 * What a file lacks of the facts that this program knows; with them behind its own, the file holds the union. What
 * went to an archive, as either of the two tells, is not lacking: it stands there.
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
  const grew = beginsWith(disk.facts, known.facts)
  const mine = grew ? unsaved : [...known.facts, ...unsaved]
  const onDisk = new Map<string, Fact>()
  await inSlices(grew ? disk.facts.slice(known.facts.length) : disk.facts, slice, (fact) =>
    onDisk.set(fact.id, fact),
  )
  const archived = grew ? new Set() : new Set([...disk.facts, ...mine].flatMap(tookBy))
  const missing: Fact[] = []
  await inSlices(mine, slice, (fact) => {
    const there = onDisk.get(fact.id)
    if (there === undefined) {
      if (!archived.has(fact.id)) missing.push(fact)
    } else if (there !== fact && !isDeepStrictEqual(there, fact)) {
      throw new Refusal(fault('fact-differs', path, { id: fact.id, kind: fact.kind, date: fact.date }))
    }
  })
  return missing
}
