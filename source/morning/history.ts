/**
 * What can be taken back, and what can be put back. Both are derived from the facts alone, so they are the same
 * after a restart: facts recorded by one action carry one action id; taking an action back is a correction of each
 * of its facts, marked as such; putting it back corrects those corrections.
 */
import type { CorrectionFact, Fact, NewFact } from '../breeding/facts.ts'
import { voidedBy } from '../breeding/voided.ts'

/** Reasons by which the file tells taking back and putting back from a correction made for its own sake. */
export const TAKEN_BACK = 'taken back'
const PUT_BACK = 'put back'

/** The facts of one action of the user, in order of recording. */
export interface Deed {
  readonly action: string
  readonly facts: readonly Fact[]
}

export interface History {
  /** What `undo` takes back next. */
  readonly last: Deed | undefined
  /** What `redo` puts back next: the deed, and the corrections that took it back. */
  readonly takenBack: { readonly deed: Deed; readonly by: Deed } | undefined
}

/**
 * The history that a log of facts tells.
 *
 * @param log every fact in order of recording, voided ones and corrections too; facts without an action (read from
 * a file of another program) and the closing of old seasons cannot be taken back here
 * @example historyOf(log).last?.facts.length // 1
 */
export function historyOf(log: readonly Fact[]): History {
  const voided = voidedBy(log)
  const done: Deed[] = []
  let back: { deed: Deed; by: Deed }[] = []
  for (const deed of deedsOf(log)) {
    const way = wayOf(deed)
    if (way === TAKEN_BACK) {
      const index = done.findLastIndex((one) => concerns(deed, one))
      const [taken] = index < 0 ? [] : done.splice(index, 1)
      if (taken !== undefined) back.push({ deed: taken, by: deed })
    } else if (way === PUT_BACK) {
      const index = back.findLastIndex((one) => concerns(deed, one.by))
      const [put] = index < 0 ? [] : back.splice(index, 1)
      if (put !== undefined) done.push(put.deed)
    } else {
      back = []
      done.push(deed)
    }
  }
  // A deed whose facts were all struck out since has nothing left to take back.
  const last = done.findLast((deed) => deed.facts.some((fact) => !voided.has(fact.id)))
  return { last, takenBack: back.at(-1) }
}

function deedsOf(log: readonly Fact[]): Iterable<Deed> {
  const deeds = new Map<string, { action: string; facts: Fact[] }>()
  for (const fact of log) {
    if (fact.action === undefined || fact.kind === 'archive') continue
    const deed = deeds.get(fact.action)
    if (deed === undefined) deeds.set(fact.action, { action: fact.action, facts: [fact] })
    else deed.facts.push(fact)
  }
  return deeds.values()
}

function wayOf(deed: Deed): string | undefined {
  const [first] = deed.facts
  return first?.kind === 'correction' && (first.reason === TAKEN_BACK || first.reason === PUT_BACK)
    ? first.reason
    : undefined
}

const concerns = (corrections: Deed, deed: Deed): boolean =>
  corrections.facts.some(
    (fact) => fact.kind === 'correction' && deed.facts.some((one) => one.id === fact.voids),
  )

const correction = (fact: Fact, reason: string): NewFact<CorrectionFact> => ({
  kind: 'correction',
  about: fact.about,
  date: fact.date,
  voids: fact.id,
  reason,
})

/** Corrections that take a deed back whole. Each carries the date of the fact it voids. */
export const takeBack = (deed: Deed): readonly NewFact[] =>
  deed.facts.map((fact) => correction(fact, TAKEN_BACK))

/** Corrections of the corrections: the deed counts again. */
export const putBack = (by: Deed): readonly NewFact[] => by.facts.map((fact) => correction(fact, PUT_BACK))

/** A correction that voids one fact for its own sake. */
export const voiding = (fact: Fact, reason: string): NewFact => correction(fact, reason)
