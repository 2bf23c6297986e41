/** What the entry of a scanning visit means: which animal, what it comes to, and what stands against recording it. */
import type { AnimalRecord, HerdBook } from '../../breeding/book.ts'
import { type CheckResultOf, resultOf } from '../../breeding/check-result.ts'
import { dayIso } from '../../breeding/day.ts'
import type { CheckFact, NewFact } from '../../breeding/facts.ts'
import { type Standing, standingOn } from '../../breeding/standing.ts'
import { foundByNumber } from '../find.ts'
import { known } from '../forms/reader.ts'
import type { ScanEntry, ScanningPlace } from '../place.ts'
import { checksOf, type VisitSoFar } from './awaited.ts'
import { AGE } from './typing.ts'

/** Why a number was not expected at the visit. */
export type Unexpected = 'no-such-number' | 'many-such-tags' | 'left' | 'male' | 'other-block' | 'not-due'

/** Nothing can be recorded about such an animal, or it is not known which one is meant. */
export const neverRecorded: readonly Unexpected[] = ['no-such-number', 'many-such-tags', 'left', 'male']

export interface Judged {
  readonly animal: AnimalRecord | undefined
  /** Her check of the same day that this one would take the place of. */
  readonly replaces: CheckFact | undefined
  readonly unexpected: Unexpected | undefined
  /** Her standing on the morning of the visit. */
  readonly before: Standing | undefined
  /** What it comes to; undefined without an animal or a result. */
  readonly outcome: CheckResultOf | undefined
  readonly check: NewFact<CheckFact> | undefined
}

/** Whether a foetal age was typed that no calf has. */
export const ageIsOdd = ({ age }: ScanEntry): boolean =>
  age !== '' && (Number(age) < AGE.least || Number(age) > AGE.most)

/** The check that an entry tells of. */
function checkOf(entry: ScanEntry, about: string, place: ScanningPlace): NewFact<CheckFact> | undefined {
  const { result, age, twins } = entry
  if (result === undefined) return undefined
  const foetalAge = age === '' || ageIsOdd(entry) ? undefined : Number(age)
  return {
    kind: 'check',
    about,
    date: dayIso(place.day),
    method: place.method,
    result,
    ...known({ foetalAge, foetuses: twins ? 2 : undefined }),
  }
}

/**
 * What an entry means.
 *
 * @param entry what was typed
 * @example judged(book, place, visit, { typed: '412', result: 'empty', age: '', twins: false }).outcome?.doubt
 */
export function judged(
  book: HerdBook,
  place: ScanningPlace,
  visit: VisitSoFar,
  entry: ScanEntry = place.entry,
): Judged {
  const found = foundByNumber(book, entry.typed)
  const { animal } = found
  if (animal === undefined) {
    const unexpected = found.many > 1 ? 'many-such-tags' : 'no-such-number'
    return {
      animal,
      replaces: undefined,
      unexpected,
      before: undefined,
      outcome: undefined,
      check: undefined,
    }
  }
  const replaces = checksOf(book, place.day).find((check) => check.about === animal.id)
  const check = checkOf(entry, animal.id, place)
  const outcome = check === undefined ? undefined : resultOf(book, animal, check, replaces?.id)
  const before = outcome?.before ?? standingOn(book, animal, place.day)
  return { animal, replaces, before, check, outcome, unexpected: unexpectedOf(animal, place, visit, outcome) }
}

function unexpectedOf(
  animal: AnimalRecord,
  place: ScanningPlace,
  { plannedFor, due, blockOf }: VisitSoFar,
  outcome: CheckResultOf | undefined,
): Unexpected | undefined {
  if (animal.record.sex === 'M') return 'male'
  const gone = animal.happenings.some(({ fact, day }) => fact.kind === 'left' && day <= place.day)
  if (gone) return 'left'
  if (plannedFor.length > 0 && !plannedFor.includes(blockOf(animal))) return 'other-block'
  if (due.has(animal.id) || outcome === undefined) return undefined
  // Found in calf once more: nothing new, and nothing odd.
  return outcome.before.inCalf && outcome.pregnancy !== undefined ? undefined : 'not-due'
}
