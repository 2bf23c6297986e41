/** A fact of the herd as a whole, or the record of an animal, in words on one line. */

import { isoDay } from '../breeding/day.ts'
import type { ArchiveFact, HerdFact, NewFact, StrawLot } from '../breeding/facts.ts'
import { counted } from './counted.ts'
import { dateInWords } from './dates.ts'
import { factWords, strawNames } from './facts.ts'
import { safeText } from './safe.ts'

const straws = (count: number, { sire, straw }: StrawLot): string =>
  `${counted(count, 'straw')} of ${safeText(sire)} ${strawNames[straw]}`

const place = ({ batch, flask, canister }: StrawLot): string =>
  [
    batch === undefined ? '' : `, batch ${safeText(batch)}`,
    flask === undefined ? '' : `, flask ${safeText(flask)}`,
    canister === undefined ? '' : `, canister ${safeText(canister)}`,
  ].join('')

/**
 * What a fact of the herd says, without its date. Harmless for a terminal.
 *
 * @example herdFactWords(delivery) // '20 straws of S17 sexed delivered, batch 4'
 */
export function herdFactWords(fact: NewFact<HerdFact>): string {
  switch (fact.kind) {
    case 'farm':
      return `farm ${safeText(fact.name)}, milkings ${fact.milkings.join(' and ')}`
    case 'policy':
      return `policy: ${Object.entries(fact.set)
        .map(([key, value]) => `${safeText(key)} ${safeText(String(value))}`)
        .join(', ')}`
    case 'season':
      return `${safeText(fact.block)} season from ${dateInWords(isoDay(fact.matingStart))}, ${fact.aiWeeks} weeks of AI, ${fact.bullWeeks} of the bull`
    case 'animal':
      return `record of ${safeText(fact.number)}`
    case 'stock-take':
      return `${straws(fact.count, fact)} counted${place(fact)}`
    case 'delivery':
      return `${straws(fact.count, fact)} delivered${place(fact)}`
    case 'spoiled':
      return `${straws(fact.count, fact)} spoiled${place(fact)}`
    case 'archive':
      return `${fact.took.length} facts from before ${dateInWords(isoDay(fact.before))} archived in ${safeText(fact.file)}`
    case 'kept-result':
      return `result of ${safeText(fact.number)} kept to be settled: ${factWords({ ...fact, kind: 'check' })}`
    case 'nitrogen':
      return `nitrogen ${fact.depthCm} cm${fact.flask === undefined ? '' : ` in flask ${safeText(fact.flask)}`}`
  }
}

/**
 * Where earlier seasons are. Harmless for a terminal.
 *
 * @example archivedWords(archive) // 'Earlier seasons are in herd.archive-2026-05-28.json.'
 */
export const archivedWords = ({ file }: ArchiveFact): string => `Earlier seasons are in ${safeText(file)}.`
