/** One tick on a large herd, in process: the list brought up to date beside the list made anew. */
import { openBook } from '../source/breeding/book.ts'
import { withFacts } from '../source/breeding/book-with.ts'
import type { Fact } from '../source/breeding/facts.ts'
import { listAt, morningList } from '../source/breeding/morning-list.ts'
import { placesOn } from '../source/breeding/places.ts'
import { benchDay, benchHerd } from './herd.ts'
import { type Finding, inTurn, ms, time } from './measure.ts'

/** A heat recorded, and its undoing, in a herd of 5,000 cows. */
export async function factsAdded(): Promise<Finding[]> {
  const facts = benchHerd(5000)
  const heat = facts.findLast((fact) => fact.kind === 'heat') as Fact
  const tick: Fact = { ...heat, id: 'tick' }
  const undoing: Fact = { ...heat, kind: 'correction', id: 'undoing', voids: heat.id }
  const book = openBook(facts)
  const places = placesOn(book, benchDay)
  const findings: Finding[] = []
  for (const [what, added] of [
    ['a tick', tick],
    ['its undoing', undoing],
  ] as const) {
    let seen = 0
    const { one, other, ratio } = await inTurn(
      15,
      3,
      () => time(() => (seen += listAt(placesOn(withFacts(book, [added]), benchDay, places)).rows.length)),
      () => time(() => (seen -= morningList(openBook([...facts, added]), benchDay).rows.length)),
    )
    if (seen !== 0) throw new Error('the two lists differ')
    findings.push({
      what: `the list after ${what}, 5,000 cows, ${facts.length.toLocaleString('en')} facts, in process`,
      value: ms(one),
      against: `made anew: ${ms(other)}`,
      ratio,
    })
  }
  return findings
}
