/** What became of the facts of an animal: what each stands in the place of, and what was taken back. */
import type { HerdBook } from '../breeding/book.ts'
import type { AnimalFact, CorrectionFact, Fact } from '../breeding/facts.ts'

/** A fact that counts no more, and the correction that says so. */
export interface Struck {
  readonly fact: AnimalFact
  readonly by: CorrectionFact
}

interface Corrections {
  /** Facts that count no more, by the id of the fact that took their place. */
  readonly before: ReadonlyMap<string, readonly Struck[]>
  /** Those in whose place nothing stands, by animal. */
  readonly takenBack: ReadonlyMap<string, readonly Struck[]>
}

const known = new WeakMap<HerdBook, Corrections>()

/** Found once for a book, and kept. */
function correctionsOf(book: HerdBook): Corrections {
  const found = known.get(book)
  if (found !== undefined) return found
  const byId = new Map(book.facts.map((fact) => [fact.id, fact]))
  const struck = book.facts.flatMap((by): readonly Struck[] => {
    if (by.kind !== 'correction' || book.voided.has(by.id)) return []
    const fact = byId.get(by.voids)
    return fact !== undefined && isOfAnimal(fact) ? [{ fact, by }] : []
  })
  const replacing = new Map(struck.map((one) => [one, replacementOf(one, book, byId)]))
  const made = {
    before: Map.groupBy(
      struck.filter((one) => replacing.get(one) !== undefined),
      (one) => replacing.get(one) ?? '',
    ),
    takenBack: Map.groupBy(
      struck.filter((one) => replacing.get(one) === undefined),
      ({ fact }) => fact.about,
    ),
  }
  known.set(book, made)
  return made
}

/** The fact in the place of another: the one that the correction names, else the one of its kind recorded with it. */
function replacementOf(
  { fact, by }: Struck,
  book: HerdBook,
  byId: ReadonlyMap<string, Fact>,
): string | undefined {
  if (by.with !== undefined) return byId.get(by.with)?.id
  if (by.action === undefined) return undefined
  return book.facts.find(
    (one) => one.action === by.action && one.kind === fact.kind && one.about === fact.about,
  )?.id
}

const isOfAnimal = (fact: Fact): fact is AnimalFact =>
  fact.kind !== 'correction' && fact.kind !== 'animal' && fact.about !== 'herd'

/** What a fact stands in the place of, the latest first. */
export function placeOfWhat(book: HerdBook, fact: AnimalFact): readonly Struck[] {
  const { before } = correctionsOf(book)
  const all: Struck[] = []
  for (let ids = [fact.id]; ids.length > 0; ) {
    const earlier = ids.flatMap((id) => before.get(id) ?? []).filter((one) => !all.includes(one))
    all.push(...earlier)
    ids = earlier.map((one) => one.fact.id)
  }
  return all
}

/** Facts of an animal that were taken back, the latest first. */
export const takenBackOf = (book: HerdBook, animal: string): readonly Struck[] =>
  (correctionsOf(book).takenBack.get(animal) ?? []).toSorted((a, b) =>
    a.fact.date < b.fact.date ? 1 : a.fact.date > b.fact.date ? -1 : 0,
  )
