/** What happened to each animal, in order. */
import { type Day, isoDay } from './day.ts'
import type { AnimalFact, AnimalRecordFact } from './facts.ts'
import { type Clock, kindRank, type Minute } from './moment.ts'

/** A fact with its day and its minute counted once. */
export interface Happening<F extends AnimalFact = AnimalFact> {
  readonly fact: F
  readonly day: Day
  readonly minute: Minute
  /** Place among her facts: day, minute, kind. */
  readonly order: number
}

export interface AnimalRecord {
  readonly id: string
  readonly number: string
  readonly record: AnimalRecordFact
  readonly born: Day | undefined
  /** What happened to her, in order of day, minute and kind; voided facts are not among it. */
  readonly happenings: readonly Happening[]
}

/** The record of an animal with what happened to her, still in the order of recording. */
export function animalRecord(
  record: AnimalRecordFact,
  facts: readonly AnimalFact[],
  clock: Clock,
): AnimalRecord {
  const happenings: Happening[] = []
  let sorted = true
  let before = Number.NEGATIVE_INFINITY
  for (const fact of facts) {
    const day = isoDay(fact.date)
    const minute = clock.minute(fact.time)
    const order = (day * 1440 + minute) * 32 + kindRank(fact.kind)
    if (before > order) sorted = false
    before = order
    happenings.push({ fact, day, minute, order })
  }
  if (!sorted) happenings.sort((a, b) => a.order - b.order)
  return {
    id: record.about,
    number: record.number,
    record,
    born: record.born === undefined ? undefined : isoDay(record.born),
    happenings,
  }
}
