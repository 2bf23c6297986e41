/**
 * A herd as resources of the ICAR ADE standard. What the standard cannot carry stays in the herd file: looked and none
 * seen, examined, left to the bull, holds, scores, dry, block, left, notes, seasons and stock.
 */
import type { HerdBook } from '../../breeding/book.ts'
import type { Day } from '../../breeding/day.ts'
import type { AnimalFact, CorrectionFact, Fact } from '../../breeding/facts.ts'
import { compareNumbers } from '../../breeding/order.ts'
import { animalResource } from './animal-resource.ts'
import type { ResourceName } from './codes.ts'
import { type Event, eventOf, type Writing } from './events.ts'
import { placesOf } from './places.ts'

interface Collection {
  /** `heats.json` */
  readonly file: string
  readonly members: readonly object[]
}

interface AdeExport {
  readonly collections: readonly Collection[]
  /** Kinds of live facts that the standard cannot carry, with their number. */
  readonly leftOut: ReadonlyMap<AnimalFact['kind'], number>
}

const files: readonly (readonly [ResourceName, string])[] = [
  ['animal', 'animals.json'],
  ['heat', 'heats.json'],
  ['insemination', 'inseminations.json'],
  ['check', 'pregnancy-checks.json'],
  ['parturition', 'parturitions.json'],
  ['abortion', 'abortions.json'],
  ['doNotBreed', 'do-not-breed.json'],
]

/**
 * The collections of a herd, one a kind of resource. Facts that were voided are there too, marked as deleted, so that
 * a program which read them before learns of it.
 *
 * @param facts of the herd, in the order they were recorded, and @param book of the same
 * @param herdId tells the receiver which herd an event is of
 * @param today the state of the animals is that of this day
 * @example adeExport(facts, book, 'k2m9', today).collections[1].members.length // 412 heats
 */
export function adeExport(facts: readonly Fact[], book: HerdBook, herdId: string, today: Day): AdeExport {
  const writing: Writing = { book, herdId }
  const events: Event[] = []
  const leftOut = new Map<AnimalFact['kind'], number>()
  for (const animal of [...book.animals.values()].sort((a, b) => compareNumbers(a.number, b.number))) {
    events.push(animalResource(animal, writing, today))
    const { places, ends } = placesOf(animal, today)
    for (const { fact } of animal.happenings) {
      const event = eventOf(fact, animal, writing, places.get(fact.id))
      if (event !== undefined) events.push(event)
      else if (!ends.has(fact.id)) leftOut.set(fact.kind, (leftOut.get(fact.kind) ?? 0) + 1)
    }
  }
  events.push(...deleted(facts, writing))
  const members = Map.groupBy(events, ({ name }) => name)
  const collections = files.map(([name, file]) => ({
    file,
    members: (members.get(name) ?? []).map(({ resource }) => resource),
  }))
  return { collections, leftOut }
}

/** Events of facts that a live correction voids, marked as deleted at the time of the correction. */
function deleted(facts: readonly Fact[], writing: Writing): Event[] {
  const { book } = writing
  const correctedAt = new Map(
    facts
      .filter((fact): fact is CorrectionFact => fact.kind === 'correction' && !book.voided.has(fact.id))
      .map((fact) => [fact.voids, fact.at]),
  )
  return facts.flatMap((fact) => {
    const at = correctedAt.get(fact.id)
    const animal = book.animals.get(fact.about)
    if (at === undefined || animal === undefined || fact.kind === 'animal') return []
    const event = eventOf(fact as AnimalFact, animal, writing, {}, at)
    return event === undefined ? [] : [event]
  })
}

/**
 * A collection as the text of its file, one member a line.
 *
 * @param asJson a value as JSON in one line
 */
export const collectionText = ({ members }: Collection, asJson: (value: unknown) => string): string =>
  `{"member":[${members.map((member) => `\n${asJson(member)}`).join(',')}\n]}\n`
