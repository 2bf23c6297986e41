/** What the result of a pregnancy check would come to, and what it would contradict: asked before it is recorded. */
import { animalRecord } from './animal-record.ts'
import type { AnimalRecord, HerdBook } from './book.ts'
import { type Day, isoDay, plusDays } from './day.ts'
import type { AnimalFact, CheckFact, NewFact } from './facts.ts'
import { Clock } from './moment.ts'
import { checkCountsFrom, type Pregnancy } from './pregnancy.ts'
import { returned } from './questions.ts'
import { type Standing, standingOn } from './standing.ts'

/** What speaks against a result: better asked while she is still in the crush. */
export type CheckDoubt = 'no-service-fits' | 'too-young' | 'empty-in-calf'
/** What is worth knowing with a result and speaks not against it. */
export type CheckRemark =
  | 'earlier-stands'
  | 'ai-or-bull'
  | 'no-service-known'
  | 'heat-since'
  | 'bull-too-lately'

export interface CheckResultOf {
  /** Her standing on the morning of the check. */
  readonly before: Standing
  /** The pregnancy that she would have from the next morning on. */
  readonly pregnancy: Pregnancy | undefined
  readonly due: Day | undefined
  /** The first doubt. */
  readonly doubt: CheckDoubt | undefined
  readonly remark: CheckRemark | undefined
}

/** An empty result fewer days after she was with a bull says nothing of his calf. */
const BULL_TOO_LATELY = 42

/**
 * What a result would come to.
 *
 * @param animal who was checked, @param check its result; its date is the day of the check
 * @param replaces id of a check of hers that it takes the place of
 * @example resultOf(book, cow, { kind: 'check', about: cow.id, date: '2026-06-10', method: 'ultrasound', result: 'empty' }).doubt
 *   // 'empty-in-calf', where she was found in calf before
 */
export function resultOf(
  book: HerdBook,
  animal: AnimalRecord,
  check: NewFact<CheckFact>,
  replaces?: string,
): CheckResultOf {
  const day = isoDay(check.date)
  const kept = animal.happenings.map(({ fact }) => fact).filter(({ id }) => id !== replaces)
  const clock = new Clock(book.farm.milkings)
  const without = replaces === undefined ? animal : animalRecord(animal.record, kept, clock)
  const fact = { id: '', at: '', ...check } as AnimalFact
  const before = standingOn(book, without, day)
  const after = standingOn(book, animalRecord(animal.record, [...kept, fact], clock), plusDays(day, 1))
  return {
    before,
    pregnancy: after.pregnancy,
    due: after.due,
    doubt: doubtOf(book, before, after, check),
    remark: remarkOf(book, before, after, check),
  }
}

function doubtOf(
  book: HerdBook,
  before: Standing,
  after: Standing,
  check: NewFact<CheckFact>,
): CheckDoubt | undefined {
  if (
    check.result === 'pregnant' &&
    after.pregnancy !== undefined &&
    after.pregnancy.conception === undefined
  )
    return 'no-service-fits'
  if (check.result === 'empty' && before.inCalf) return 'empty-in-calf'
  const service = before.lastService
  const tooYoung =
    service !== undefined &&
    before.today - service.day < checkCountsFrom(check.method, before.maiden, book.policy)
  // An age says itself which service it was.
  return tooYoung && check.foetalAge === undefined && !confirms(before, after) ? 'too-young' : undefined
}

/** In calf as before, to the same service. */
const confirms = (before: Standing, after: Standing): boolean =>
  before.pregnancy?.conception !== undefined &&
  before.pregnancy.conception.day === after.pregnancy?.conception?.day

/** An age as far off as this from what stands is worth a word; ages up to it are read every day. */
const AGE_OFF = 8

/** Her earlier result keeps its conception, though the age of this one points elsewhere. */
function earlierStands(before: Standing, after: Standing, { foetalAge }: NewFact<CheckFact>): boolean {
  const { pregnancy } = after
  if (foetalAge === undefined || pregnancy?.conception === undefined) return false
  const off = Math.abs(before.today - foetalAge - pregnancy.conception.day)
  return pregnancy.check.fact.id === before.pregnancy?.check.fact.id && off >= AGE_OFF
}

function remarkOf(
  book: HerdBook,
  before: Standing,
  after: Standing,
  check: NewFact<CheckFact>,
): CheckRemark | undefined {
  const conception = after.pregnancy?.conception
  if (check.result === 'pregnant') {
    if (earlierStands(before, after, check)) return 'earlier-stands'
    if (conception?.basis === 'age-alone') return 'no-service-known'
    const toLast = conception?.service !== undefined && conception.service.day === before.lastService?.day
    if (returned(before, book.policy.watchFrom) && toLast) return 'heat-since'
    return conception?.aiOrBull === true ? 'ai-or-bull' : undefined
  }
  const withBull = before.lastWithBull
  return check.result === 'empty' && withBull !== undefined && before.today - withBull < BULL_TOO_LATELY
    ? 'bull-too-lately'
    : undefined
}
