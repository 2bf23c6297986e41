/** A book to which facts were added: what they do not concern is kept, object for object. */
import { type AnimalRecord, animalRecord } from './animal-record.ts'
import { type HerdBook, openBook } from './book.ts'
import { type AnimalFact, type Fact, HERD, type ServiceFact } from './facts.ts'
import { Clock } from './moment.ts'
import { voidedBy } from './voided.ts'

/**
 * The book after some facts were recorded: the same as opening all of them anew, in the time of the animals that they
 * are about. Records of the other animals are kept; a fact of the herd as a whole, an animal's own record, or a
 * correction of one opens the book anew, since everything rests on it.
 *
 * @param added in the order they were recorded, after all facts of the book
 * @example withFacts(book, [heat]).byNumber.get('412')?.happenings.length // 16, where it was 15
 */
export function withFacts(book: HerdBook, added: readonly Fact[]): HerdBook {
  const change = added.some((fact) => fact.kind === 'correction')
    ? corrected(book, added)
    : appended(book, added)
  if (!change.changed.every(isOfOneAnimal)) return openBook(change.facts)
  const { facts, live, services, voided } = change
  return { ...book, ...animalsAfter(book, change), facts, live, services, voided }
}

/**
 * The book of a log of facts: the book before with what was added to it, where the log goes on from there; else opened
 * anew.
 *
 * @param log every fact in order of recording
 */
export function bookAfter(before: HerdBook, log: readonly Fact[]): HerdBook {
  const goesOn = before.facts.every((fact, place) => fact === log[place] || fact.id === log[place]?.id)
  return goesOn ? withFacts(before, log.slice(before.facts.length)) : openBook(log)
}

interface Change extends Pick<HerdBook, 'facts' | 'live' | 'services' | 'voided'> {
  /** Facts that count and did not before, or the other way round. */
  readonly changed: readonly Fact[]
  /** Her live facts after the change, in an order that her record can be made from. */
  readonly factsOf: (animal: AnimalRecord) => readonly AnimalFact[]
}

function appended(book: HerdBook, added: readonly Fact[]): Change {
  const changed = added.filter((fact) => !book.voided.has(fact.id))
  const byAnimal = Map.groupBy(changed.filter(isOfOneAnimal), (fact) => fact.about)
  return {
    changed,
    facts: book.facts.concat(added),
    live: book.live.concat(changed),
    services: book.services.concat(changed.filter(isService)),
    voided: book.voided,
    factsOf: ({ id, happenings }) => [...happenings.map(({ fact }) => fact), ...(byAnimal.get(id) ?? [])],
  }
}

function corrected(book: HerdBook, added: readonly Fact[]): Change {
  const facts = book.facts.concat(added)
  const voided = voidedBy(facts)
  const changed: Fact[] = []
  const live: Fact[] = []
  const services: ServiceFact[] = []
  for (const [place, fact] of facts.entries()) {
    if (fact.kind === 'correction') continue
    const counts = !voided.has(fact.id)
    const counted = place < book.facts.length && !book.voided.has(fact.id)
    if (counts !== counted) changed.push(fact)
    if (!counts) continue
    live.push(fact)
    if (fact.kind === 'service') services.push(fact)
  }
  const concerned = new Set(changed.map((fact) => fact.about))
  const theirs = live.filter((fact) => concerned.has(fact.about)).filter(isOfOneAnimal)
  const byAnimal = Map.groupBy(theirs, (fact) => fact.about)
  return { changed, facts, live, services, voided, factsOf: ({ id }) => byAnimal.get(id) ?? [] }
}

function animalsAfter(
  book: HerdBook,
  { changed, factsOf }: Change,
): Pick<HerdBook, 'animals' | 'byNumber' | 'byInternationalId'> {
  const clock = new Clock(book.farm.milkings)
  const animals = new Map(book.animals)
  const byNumber = new Map(book.byNumber)
  const byInternationalId = new Map(book.byInternationalId)
  for (const id of new Set(changed.map((fact) => fact.about))) {
    const before = book.animals.get(id)
    if (before === undefined) continue
    const after = animalRecord(before.record, factsOf(before), clock)
    animals.set(id, after)
    replace(byNumber, before.number, before, after)
    replace(byInternationalId, before.record.internationalId, before, after)
  }
  return { animals, byNumber, byInternationalId }
}

/** Puts her new record in the place of the old one; of two with one name the later in the file holds it. */
function replace(
  names: Map<string, AnimalRecord>,
  name: string | undefined,
  before: AnimalRecord,
  after: AnimalRecord,
): void {
  if (name !== undefined && names.get(name) === before) names.set(name, after)
}

const isOfOneAnimal = (fact: Fact): fact is AnimalFact => fact.about !== HERD && fact.kind !== 'animal'
const isService = (fact: Fact): fact is ServiceFact => fact.kind === 'service'
