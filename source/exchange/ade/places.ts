/** The place of an animal's facts among each other, as far as events tell of it. */
import type { AnimalRecord } from '../../breeding/book.ts'
import { cyclesOn } from '../../breeding/cycle.ts'
import { type Day, plusDays } from '../../breeding/day.ts'
import type { FromBullFact, WithBullFact } from '../../breeding/facts.ts'
import type { Place } from './events.ts'

/**
 * Rank of each AI within its cycle, parity at each calving, and the end of each time with the bull.
 *
 * @param today the last day that counts
 * @returns by fact id; and the ids of what ended a time with the bull, which has no event of its own
 */
export function placesOf(
  animal: AnimalRecord,
  today: Day,
): { readonly places: ReadonlyMap<string, Place>; readonly ends: ReadonlySet<string> } {
  const places = new Map<string, Place>()
  const { cycles, calvings } = cyclesOn(animal, plusDays(today, 1))
  for (const { services } of cycles) {
    const byAi = services.flatMap(({ facts }) => facts).filter(({ natural }) => natural !== true)
    for (const [index, { id }] of byAi.entries()) places.set(id, { rank: index + 1 })
  }
  for (const [index, { facts }] of calvings.entries())
    for (const { id } of facts) places.set(id, { parity: (animal.record.lactation ?? 0) + index + 1 })
  const ends = new Set<string>()
  for (const [began, ended] of runsWithBull(animal)) {
    places.set(began.id, { end: ended })
    ends.add(ended.id)
  }
  return { places, ends }
}

/**
 * Each time with a bull that has an end, with what ended it: an end without a bull ends all open times, with one his
 * and those of no known bull.
 */
function runsWithBull({ happenings }: AnimalRecord): [WithBullFact, FromBullFact][] {
  const runs: [WithBullFact, FromBullFact][] = []
  let open: WithBullFact[] = []
  for (const { fact } of happenings) {
    if (fact.kind === 'with-bull') open.push(fact)
    if (fact.kind !== 'from-bull') continue
    const isEnded = ({ bull }: WithBullFact): boolean =>
      fact.bull === undefined || bull === undefined || bull === fact.bull
    runs.push(...open.filter(isEnded).map((began): [WithBullFact, FromBullFact] => [began, fact]))
    open = open.filter((began) => !isEnded(began))
  }
  return runs
}
