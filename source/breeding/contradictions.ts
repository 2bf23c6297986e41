/** Facts about an animal that cannot all be right. They are shown until corrected; the herd works as usual. */
import { animalNamed, type Happening, type HerdBook } from './book.ts'
import { type Calving, isSeen } from './cycle.ts'
import { dayIso, isoDay } from './day.ts'
import type { FactKind } from './facts.ts'
import { notice, type Problem } from './problem.ts'
import type { Standing } from './standing.ts'

/** Calvings closer than this cannot both be hers; 0-1 day apart are one. */
const CALVINGS_APART = 200
const YOUNGEST_CALVING = 540

const breedingKinds: ReadonlySet<FactKind> = new Set(['heat', 'service', 'check', 'calving', 'loss'])

/** Her breeding facts, where some of them may be out of place: after she left, before her birth, or on a male. */
function factsOutOfPlace({ animal, leftOn, female, today }: Standing): readonly Happening[] {
  const first = animal.happenings[0]
  const early = first !== undefined && animal.born !== undefined && first.day < animal.born
  if (leftOn === undefined && female && !early) return []
  return animal.happenings.filter(
    (happening) => breedingKinds.has(happening.fact.kind) && isSeen(happening, today),
  )
}

/**
 * The contradictions that the list of the standing's day knows of.
 *
 * @returns notices with the animal's number and the dates that clash; empty where all fits
 * @example contradictionsOf(book, standing)[0]?.code // 'calvings-too-close'
 */
export function contradictionsOf(book: HerdBook, standing: Standing): readonly Problem[] {
  const { animal, calvings } = standing
  const problems: Problem[] = []
  const found = (code: string, values?: Problem['values']): void => {
    problems.push(notice(code, '', values, animal.number))
  }
  let before: Calving | undefined
  for (const after of calvings) {
    if (before !== undefined && after.day - before.lastDay < CALVINGS_APART) {
      const days = after.day - before.lastDay
      found('calvings-too-close', { first: dayIso(before.day), second: dayIso(after.day), days })
    }
    before = after
  }
  const first = calvings[0]
  if (first !== undefined && animal.born !== undefined && first.day - animal.born < YOUNGEST_CALVING) {
    found('calving-too-young', { date: dayIso(first.day), days: first.day - animal.born })
  }
  for (const { fact } of factsOutOfPlace(standing)) {
    if (standing.leftOn !== undefined && isoDay(fact.date) > standing.leftOn) {
      found('fact-after-leaving', { kind: fact.kind, date: fact.date, left: dayIso(standing.leftOn) })
    }
    if (animal.born !== undefined && isoDay(fact.date) < animal.born) {
      found('fact-before-birth', { kind: fact.kind, date: fact.date, born: dayIso(animal.born) })
    }
    if (!standing.female) found('fact-on-male', { kind: fact.kind, date: fact.date })
  }
  const { sire, dam } = animal.record
  if (animalNamed(book, sire)?.record.sex === 'F') found('sire-is-female', { parent: sire ?? '' })
  if (animalNamed(book, dam)?.record.sex === 'M') found('dam-is-male', { parent: dam ?? '' })
  return problems
}
