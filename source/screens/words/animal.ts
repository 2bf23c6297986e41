/** Words about one animal: where she belongs, why she is on the list, her cycle. */

import { plusDays } from '../../breeding/day.ts'
import type { AnimalFact } from '../../breeding/facts.ts'
import type { ServiceEnd } from '../../breeding/figures/service-results.ts'
import type { Row } from '../../breeding/list.ts'
import type { Standing } from '../../breeding/standing.ts'
import { counted } from '../../words/counted.ts'
import { shortDate } from '../../words/dates.ts'
import { factWords } from '../../words/facts.ts'
import { safeText } from '../../words/safe.ts'

const days = (count: number): string => counted(count, 'day')

export const animalWords = {
  belongs: (standing: Standing): string =>
    [
      standing.female ? (standing.maiden ? 'maiden' : `lactation ${standing.parity}`) : 'bull',
      standing.block === undefined ? '' : `${safeText(standing.block)} block`,
      standing.leftOn === undefined ? '' : `left the herd ${shortDate(standing.leftOn)}`,
      standing.barred ? 'not to be bred' : '',
      standing.onHold ? 'on health hold' : '',
      standing.leftToBull ? 'left to the sweep bull' : '',
    ]
      .filter((part) => part !== '')
      .join(', '),
  tags: (tags: readonly string[]): string => `tag ${tags.join(', ')}`,
  notOnList: 'Not on this list.',
  /** What her days count from, with its date. */
  since: (row: Row, standing: Standing): string => {
    if (row.since === undefined || row.days === undefined) return ''
    const on = shortDate(plusDays(standing.today, -row.days))
    if (row.since === 'heat') return row.days === 0 ? 'Heat seen today.' : `Heat of ${on}.`
    const what = { service: 'her service', calving: 'she calved', loss: 'her loss' }[row.since]
    return row.since === 'calving'
      ? `${days(row.days)} since ${what}, ${on}.`
      : `${days(row.days)} since ${what} of ${on}.`
  },
  otherwise: (section: string): string => `Without it she would stand under ${section}.`,
  calved: (count: number): string => `Calved ${days(count)}`,
  chances: (used: number, all: number): string => `${used} of ${all} chances used`,
  inCalf: 'In calf',
  inCalfSince: (count: number): string => `In calf for ${days(count)}`,
  chanceInCalf: (chance: number): string =>
    chance === 0 ? 'not in calf' : `${Math.round(chance * 100)} in 100 that she is in calf`,
  nextReturn: (from: string, to: string): string => `If she is open she comes back ${from} to ${to}.`,
  nextHeat: (from: string, to: string): string => `Her next heat is likely ${from} to ${to}.`,
  due: (date: string, from: string, to: string, dryOff: string | undefined): string =>
    `Due ${date} (19 in 20: ${from} to ${to})${dryOff === undefined ? '' : `, dry off ${dryOff}`}.`,
  straw: 'Straw ',
  cycle: 'This cycle, days since calving',
  record: 'On record',
  more: (count: number): string => `and ${count} before`,
  served: 'served',
  heat: 'heat',
  checkFrom: (day: number): string => `check ${day}`,
  day: (count: number): string => `day ${count}`,
  recorded: (who: string): string => `recorded ${who}`,
  inPlaceOf: (was: AnimalFact, who: string): string =>
    `in the place of: ${factWords(was)} (${was.date}), recorded ${who}`,
  takenBack: 'Struck out or taken back',
  recordedAndStruck: (recorded: string, undone: boolean, struck: string): string =>
    `recorded ${recorded}; ${undone ? 'taken back' : 'struck out'} ${struck}`,
  nothing: 'Nothing is on record about her.',
  /** What her facts come to. */
  services: 'Services, the last first',
  noServices: 'No service is on record.',
  interval: (count: number): string => `${count} d after`,
  ends: { held: 'held', failed: 'did not hold', unknown: 'not known yet' } satisfies Record<
    ServiceEnd,
    string
  >,
  bullServed: (bull: string): string => (bull === '' ? 'a bull' : `bull ${bull}`),
  checks: 'Checks and what each counts for',
  noChecks: 'No check is on record.',
  noneFits: 'fits no service and no time with the bull',
  countsFor: (when: string): string => `counts for the service of ${when}`,
  countsForNone: 'counts for no service: it came too soon after it',
  noServiceBefore: 'no service was before it',
  parents: 'Parents and theirs',
  sire: 'sire',
  dam: 'dam',
  herSire: 'by',
  herDam: 'out of',
  theirsNotKnown: 'parents not known',
  notKnown: 'not known',
  straws: 'Straws for her today, the best first',
  strawLeft: (left: number): string => `${left} left`,
  inbred: (share: number, wide: boolean): string =>
    `${wide ? 'calf ' : ''}inbred ${(100 * share).toFixed(1)} %`,
  generations: (count: number): string => `${counted(count, 'generation')} known`,
  confirm: 'close relative',
} as const
