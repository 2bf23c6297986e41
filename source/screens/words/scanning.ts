/** Words of the scanning visit. */
import type { CheckDoubt, CheckRemark } from '../../breeding/check-result.ts'
import type { CheckMethod, CheckResult } from '../../breeding/facts.ts'
import type { Unexpected } from '../../morning/scanning/judged.ts'
import { safeText } from '../../words/safe.ts'

const methods: Readonly<Record<CheckMethod, string>> = {
  ultrasound: 'by ultrasound',
  hand: 'by hand',
  milk: 'by milk test',
  blood: 'by blood test',
}

export const resultNames: Readonly<Record<CheckResult, string>> = {
  pregnant: 'in calf',
  empty: 'empty',
  unsure: 'unsure',
}

export const scanningWords = {
  title: (day: string): string => `Scanning visit, ${day}`,
  method: (method: CheckMethod): string => methods[method],
  block: (block: string): string => (block === '' ? 'no block' : safeText(block)),
  toCome: 'to come',
  toComeNumbers: (count: number): string => `To come (${count})`,
  noneToCome: 'Nobody is awaited any more.',
  nothingDue: 'Nobody is due for a check on this day.',
  number: 'Number',
  resultFirst: 'P in calf, E empty, U unsure',
  ageOrEnter: 'days of age, or Enter',
  enter: 'Enter records',
  ageUnit: 'days',
  age: (age: string): string => `${age} days`,
  twins: 'twins',
  settle: 'settle it',
  correct: 'correct it',
  /** Under the last results and the kept ones. */
  keptTitle: (count: number): string => `To settle (${count})`,
  lastTitle: (shown: number, all: number): string =>
    shown === all ? `Results (${all})` : `Last ${shown} of ${all}`,
  keptHint: 'Enter takes it up, X drops it',
  noResults: 'No result yet.',
  /** What the line is about. */
  before: {
    inCalf: (since: string): string => `in calf since ${since}`,
    inCalfUnknown: 'found in calf before',
    served: (when: string, age: number, sire: string): string =>
      `served ${when}, day ${age}${sire === '' ? '' : `, ${sire}`}`,
    servedByBull: (when: string, age: number): string => `served by the bull ${when}, day ${age}`,
    open: 'not served since she calved',
    checked: (result: string): string => `read today already: ${result}`,
  },
  /** What the result comes to. */
  toAi: (when: string, sire: string): string => `AI of ${when}${sire === '' ? '' : `, ${sire}`}`,
  toAiOrBull: (when: string): string => `AI ${when} or bull`,
  toBull: (when: string): string => `the bull, about ${when}`,
  byAge: (when: string): string => `by its age about ${when}`,
  due: (when: string): string => `due ${when}`,
} as const

/** What speaks against a result: said as soon as it is typed. */
export const doubtWords: Readonly<Record<CheckDoubt, string>> = {
  'no-service-fits': 'No service and no time with the bull fits this result.',
  'too-young': 'Her last service is too young for this check.',
  'empty-in-calf': 'She is recorded in calf: if she lost her calf, record the loss as well.',
}

export const remarkWords: Readonly<Record<CheckRemark, string>> = {
  'earlier-stands': 'Age near enough: the earlier result stands.',
  'ai-or-bull': 'The calf may be by AI or the bull’s.',
  'no-service-known': 'No service is on record: the age alone tells when she conceived.',
  'heat-since': 'A heat was seen three weeks after that service.',
  'bull-too-lately': 'The bull was with her less than 42 days ago: empty means no calf by AI.',
}

/** Why a number is kept. */
export const keptWords: Readonly<Record<Unexpected | 'by-hand', string>> = {
  'no-such-number': 'no animal has this number',
  'many-such-tags': 'several ear tags end so',
  left: 'has left the herd',
  male: 'a male',
  'other-block': 'of a block that is not visited today',
  'not-due': 'no check of hers is due',
  'by-hand': 'kept for later',
}
