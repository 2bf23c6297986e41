/** A fact in words, on one line. */
import type { AnimalFact, NewFact, StrawKind } from '../breeding/facts.ts'
import { plainDate } from './plain-date.ts'
import { safeText } from './safe.ts'

export const strawNames: Readonly<Record<StrawKind, string>> = {
  conventional: 'conventional',
  sexed: 'sexed',
  beef: 'beef',
}

const said = (parts: readonly (string | undefined)[]): string =>
  parts.filter((part) => part !== undefined && part !== '').join(', ')

const because = (reason: string | undefined): string | undefined =>
  reason === undefined ? undefined : safeText(reason)

/**
 * What a fact says, without its date. Harmless for a terminal.
 *
 * @example factWords(serviceFact) // 'served by AI, S17 sexed, batch 4'
 */
export function factWords(fact: NewFact<AnimalFact>): string {
  switch (fact.kind) {
    case 'heat':
      return said([
        `${fact.certainty === 'sure' ? 'heat' : 'suspect heat'} seen (${fact.how})`,
        because(fact.signs),
      ])
    case 'looked':
      return 'looked for a return, none seen'
    case 'service':
      return said([
        fact.natural === true ? 'served by a bull' : 'served by AI',
        safeText(strawWords(fact.sire, fact.straw)),
        fact.batch === undefined ? undefined : `batch ${safeText(fact.batch)}`,
        fact.inseminator === undefined ? undefined : `by ${safeText(fact.inseminator)}`,
      ])
    case 'check':
      return said([
        `${fact.result === 'pregnant' ? 'in calf' : fact.result} by ${fact.method}`,
        fact.foetalAge === undefined ? undefined : `${fact.foetalAge} days along`,
        (fact.foetuses ?? 1) > 1 ? `${fact.foetuses} calves` : undefined,
        fact.serviceDate === undefined ? undefined : `to the service of ${plainDate(fact.serviceDate)}`,
      ])
    case 'examined':
      return said([
        'examined by the vet',
        because(fact.finding),
        because(fact.treatment),
        fact.serveOn === undefined
          ? undefined
          : `serve on ${plainDate(fact.serveOn)} ${fact.session ?? ''}`.trimEnd(),
      ])
    case 'calving':
      return said([
        (fact.calves ?? 1) > 1 ? `calved, ${fact.calves} calves` : 'calved',
        fact.ease === undefined ? undefined : `ease ${fact.ease}`,
        fact.calfSex === undefined ? undefined : safeText(fact.calfSex),
        (fact.dead ?? 0) > 0 ? `${fact.dead} dead` : undefined,
      ])
    case 'loss':
      return 'lost her calf'
    case 'bar':
      return said(['not to be bred', because(fact.reason)])
    case 'unbar':
      return said(['may be bred again', because(fact.reason)])
    case 'to-bull':
      return 'left to the sweep bull'
    case 'with-bull':
      return said(['put with the bull', because(fact.bull)])
    case 'from-bull':
      return said(['taken from the bull', because(fact.bull)])
    case 'hold':
      return said([
        'health hold',
        fact.until === undefined ? undefined : `until ${plainDate(fact.until)}`,
        because(fact.reason),
      ])
    case 'score':
      return `body condition ${fact.condition}`
    case 'dry':
      return 'dried off'
    case 'block':
      return `moved to the ${safeText(fact.block)} block`
    case 'left':
      return said(['left the herd', because(fact.reason)])
    case 'note':
      return `note: ${safeText(fact.note)}`
  }
}

export const strawWords = (sire: string | undefined, straw: StrawKind | undefined): string =>
  [sire, straw === undefined ? undefined : strawNames[straw]].filter((part) => part !== undefined).join(' ')
