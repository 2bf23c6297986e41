/** What an import is held against. */
import { type HerdBook, openBook } from '../../../breeding/book.ts'
import type { Day } from '../../../breeding/day.ts'
import type { AnimalRecordFact, Fact } from '../../../breeding/facts.ts'
import { voidedBy } from '../../../breeding/voided.ts'

export interface Herd {
  readonly book: HerdBook
  /** Every fact by id, voided ones too. */
  readonly byId: ReadonlyMap<string, Fact>
  /** Ids of the facts that went to an archive. */
  readonly archived: ReadonlySet<string>
  /** The day of recording. */
  readonly today: Day
  /** A new random id. */
  readonly newId: () => string
  /**
   * The live fact that stands where a fact was recorded: itself, or what it was corrected to.
   *
   * @returns undefined where it was taken back
   */
  readonly standing: (id: string) => Fact | undefined
}

/** The herd of some facts. */
export function herdOf(facts: readonly Fact[], today: Day, newId: () => string): Herd {
  const book = openBook(facts)
  const byId = new Map(facts.map((fact) => [fact.id, fact]))
  const voided = voidedBy(facts)
  const replacement = new Map<string, string | undefined>()
  for (const fact of facts)
    if (fact.kind === 'correction' && !voided.has(fact.id)) replacement.set(fact.voids, fact.with)
  const standing = (id: string): Fact | undefined => {
    const seen = new Set<string>()
    let now: string | undefined = id
    while (now !== undefined && voided.has(now) && !seen.has(now)) {
      seen.add(now)
      now = replacement.get(now)
    }
    return now === undefined || voided.has(now) ? undefined : byId.get(now)
  }
  const archived = new Set(book.archives.flatMap(({ took }) => took))
  return { book, byId, archived, today, newId, standing }
}

/** An animal as she is after the import: on record, or about to be. */
export type PlannedAnimal = Pick<AnimalRecordFact, 'number' | 'sex' | 'born'> & { readonly id: string }

/** The animals that a number can name once the animals of the import are recorded. */
export interface PlannedAnimals {
  readonly byNumber: ReadonlyMap<string, PlannedAnimal>
  /** Numbers that two animals of the herd share. */
  readonly shared: ReadonlySet<string>
  /** Numbers of new animals whose own row was refused, with the place of that row. */
  readonly refused: ReadonlyMap<string, string>
}
