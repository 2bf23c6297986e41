/** Words of the morning list: its sections, and a phrase and a sentence for each reason and warning. */

import type { MoveDue } from '../breeding/ahead/moves-due.ts'
import type { Policy } from '../breeding/policy.ts'
import type { Phase } from '../breeding/season.ts'
import type { Reason, Section, Since, Warning } from '../breeding/sections.ts'
import type { ServingSession } from '../breeding/session.ts'
import { capital } from './capital.ts'
import { counted } from './counted.ts'
import { shortDate } from './dates.ts'
import { safeText } from './safe.ts'

export const sectionNames: Readonly<Record<Section, string>> = {
  'take-care': 'Take care',
  serve: 'Serve',
  'second-service': 'Second service',
  'repeat-heat-watch': 'Repeat-heat watch',
  'pregnancy-check': 'Pregnancy check',
  'sweep-bull': 'Leave to the sweep bull',
  'no-heat-seen': 'No heat seen',
  'heat-record': 'Heat record',
}

/**
 * The move to the bull weeks, or out of them, while it is to be made.
 *
 * @example moveWords(movesDue(book, list)[0]) // 'Spring block: the bull goes in Fri 12 Jun, 61 animals'
 */
export const moveWords = ({ block, what, day, count }: MoveDue): string => {
  const name = safeText(block)
  const animals = counted(count, 'animal')
  const does = what === 'in' ? 'goes in' : 'comes out'
  return `${capital(name)} block: the bull ${does} ${shortDate(day)}, ${animals}`
}

export const sessionNames: Readonly<Record<ServingSession, string>> = {
  morning: 'this morning',
  evening: 'this evening',
  'next-morning': 'tomorrow morning',
  'next-evening': 'tomorrow evening',
}

export const sinceNames: Readonly<Record<Since, string>> = {
  service: 'service',
  heat: 'heat',
  calving: 'calving',
  loss: 'loss',
}

/** What one code says: a phrase for the row, a sentence with the rule's numbers for who asks why. */
interface CodeWords {
  readonly phrase: string
  readonly sentence: (policy: Policy) => string
}

/** Every reason of the list, one entry a code. `served-in-calf` stands in two sections and says the same in both. */
export const reasonWords: Readonly<Record<Reason, CodeWords>> = {
  'in-calf-heat': {
    phrase: 'in calf, and on heat',
    sentence: () =>
      'She was found in calf and is on heat. About 6 in 100 cows in calf show heat, and a service can end the pregnancy: check her again before anything else.',
  },
  'served-in-calf': {
    phrase: 'served after she conceived',
    sentence: () =>
      'Her last service came two days or more after she conceived, and no check counts for it yet: have her checked again.',
  },
  overdue: {
    phrase: 'past her due date',
    sentence: (policy) =>
      `She is more than ${policy.overdueDays} days past due: record the calving, or the loss.`,
  },
  'calving-unknown': {
    phrase: 'on heat, calving date unknown',
    sentence: () => 'She is on heat, and the file has no calving date for her: record it before you serve.',
  },
  'calved-under-30': {
    phrase: 'on heat, calved too lately',
    sentence: (policy) => `She is on heat, calved less than ${policy.calvedNever} days ago: do not serve.`,
  },
  'calved-30-41': {
    phrase: 'on heat, calved lately',
    sentence: (policy) =>
      `She is on heat, calved ${policy.calvedNever}-${policy.calvedToServe - 1} days ago: you may serve, the chance is lower.`,
  },
  'short-interval': {
    phrase: 'on heat too soon after a service',
    sentence: (policy) =>
      `Her last service is only ${policy.shortIntervalFrom}-${policy.watchFrom - 1} days back: one of the two was no heat, or the cycle was short. See her stand before you use a second straw; twice in a row, ask the vet.`,
  },
  hold: {
    phrase: 'on heat, on health hold',
    sentence: () => 'She is on heat and on health hold: the hold comes first.',
  },
  'unserved-heat': {
    phrase: 'no service on record',
    sentence: () =>
      'A heat of two or three days ago, or a planned service, has no service on record: record it if it was done, void the heat if it was none.',
  },
  'no-service-fits': {
    phrase: 'in calf, to no known service',
    sentence: () =>
      'She was found in calf, and no service and no time with the bull fits: record what is missing, or correct the check.',
  },
  loss: {
    phrase: 'lost her calf',
    sentence: () =>
      'A loss within the past 7 days. Treat it as catching: gloves, keep her apart, ring the vet, report it where the law says so.',
  },
  contradiction: {
    phrase: 'facts that cannot all be right',
    sentence: () => 'Two of her facts cannot both be right: open her page and correct one.',
  },
  'on-heat': {
    phrase: 'on heat',
    sentence: () => 'She is on heat, seen today or yesterday, and not yet served.',
  },
  'fixed-time': {
    phrase: 'fixed-time service',
    sentence: () => 'The vet planned a fixed-time service for today.',
  },
  'since-service': {
    phrase: 'may come back',
    sentence: (policy) =>
      `Served ${policy.watchFrom}-${policy.watchTo} days ago and not seen again: if she is open, she comes back now.`,
  },
  'since-heat': {
    phrase: 'next heat is near',
    sentence: (policy) =>
      `Her last heat was not served and was ${policy.watchFrom}-${policy.watchTo} days ago: the next is near.`,
  },
  due: {
    phrase: 'old enough to check',
    sentence: () =>
      'Her last service, or her time with a bull, is old enough for a check, and she was not seen on heat since.',
  },
  unsure: {
    phrase: 'last check unsure',
    sentence: (policy) =>
      `Her last check was unsure, ${policy.unsureRecheckDays} days ago or more: check again.`,
  },
  'heat-in-calf': {
    phrase: 'in calf, heat seen since',
    sentence: () => 'She was found in calf, and a sure heat was seen since: check again.',
  },
  confirm: {
    phrase: 'confirm',
    sentence: (policy) =>
      `In calf for ${policy.confirmDays} days or more and not checked since: about one in ten is lost before that.`,
  },
  final: {
    phrase: 'last check of the season',
    sentence: (policy) =>
      `The bull went out ${policy.finalCheckDays} days ago or more, and she is not known to be in calf: this check finds the empty ones.`,
  },
  chances: {
    phrase: 'chances used',
    sentence: (policy) =>
      `Her ${policy.chances} chances by AI are used and she is not in calf: the sweep bull is next. Where none is planned: another block, cull, or more chances in Set-up.`,
  },
  'by-hand': { phrase: 'left to the bull', sentence: () => 'You left her to the bull this season.' },
  late: {
    phrase: 'ready in the bull weeks',
    sentence: (policy) =>
      `She has calved ${policy.calvedToServe} days only after the AI weeks: the sweep bull serves her.`,
  },
  window: { phrase: 'with the bull', sentence: () => 'The AI weeks are over: she runs with the sweep bull.' },
  'keep-from-bull': {
    phrase: 'keep from the bull',
    sentence: (policy) =>
      `She is on hold, under 11 months old, or has calved ${policy.calvedToServe} days only after the bull is out: keep her away; the other block, or cull.`,
  },
  'cycling-not-seen': {
    phrase: 'no heat seen yet',
    sentence: () =>
      'No sure heat was seen since she calved: for the vet’s eye. Most such cows are missed heats.',
  },
  'no-heat-24-days': {
    phrase: 'no heat for 24 days',
    sentence: () => 'Three weeks of AI are over, and no sure heat was seen in the past 24 days.',
  },
  empty: {
    phrase: 'empty, no heat since',
    sentence: () => 'She was checked empty, and no sure heat was seen since.',
  },
  'at-risk': {
    phrase: 'hard calving, not examined',
    sentence: () => 'A hard calving, twins, a dead calf or a loss, and nobody examined her since.',
  },
  'none-seen': {
    phrase: 'no heat on record',
    sentence: () => 'No heat is on record before the mating start: watch her, and write it down.',
  },
}

/** Every warning of a row. */
export const warningWords: Readonly<Record<Warning, CodeWords>> = {
  suspect: { phrase: 'suspect', sentence: () => 'The heat is suspect: look again before you serve.' },
  'second-round': {
    phrase: 'second round',
    sentence: () => 'The second round of returns is due (days 36-48): look for heat as well.',
  },
  'late-return': {
    phrase: 'late return',
    sentence: () =>
      'She was served before, or was with a bull, and nobody has checked her. Of cows that come back 25 days or more after a service one in five is in calf: scan first if it can be had.',
  },
  unsure: {
    phrase: 'check unsure',
    sentence: () => 'Her last check was unsure: scan first if it can be had, a service can end a pregnancy.',
  },
  'bull-return': {
    phrase: 'back after the bull',
    sentence: () => 'She came back 18-24 days after a bull’s service: watch whether he is failing.',
  },
  'outside-hours': {
    phrase: 'outside the hours',
    sentence: () => 'This milking lies outside the 7-24 hours after the heat began.',
  },
  'no-straw': { phrase: 'no straw fits', sentence: () => 'No straw in stock may be used for her.' },
  'straw-out': {
    phrase: 'other kind, hers is out',
    sentence: () => 'The kind of straw that she should have is used up by the book: count the flask.',
  },
  'related-6': { phrase: 'related', sentence: () => 'The calf would be inbred above 6.25 %.' },
  'related-12': {
    phrase: 'closely related',
    sentence: () => 'The calf would be inbred 12.5 % or more: not without your say.',
  },
  'parents-unknown': {
    phrase: 'parents unknown',
    sentence: () => 'Her sire or her dam is not known, and counts as unrelated to him.',
  },
  'not-easy-calving': {
    phrase: 'not easy calving',
    sentence: () => 'The sire is not marked easy calving, and she is a maiden.',
  },
}

const phaseNames: Readonly<Record<Phase, string>> = {
  before: 'before mating',
  ai: 'AI',
  bull: 'sweep bull',
  closing: 'closing weeks',
  closed: 'closed',
}

/**
 * A block's day in words, without the date it closes on.
 *
 * @param day season day, @param aiEnd @param bullEnd last season days of AI and of the bull
 * @example phaseWords('ai', 27, 41, 62) // 'AI day 28 of 42'
 */
export function phaseWords(phase: Phase, day: number, aiEnd: number, bullEnd: number): string {
  switch (phase) {
    case 'before':
      return `${-day} ${day === -1 ? 'day' : 'days'} to the mating start`
    case 'ai':
      return `${phaseNames.ai} day ${day + 1} of ${aiEnd + 1}`
    case 'bull':
      return `${phaseNames.bull} day ${day - aiEnd} of ${bullEnd - aiEnd}`
    case 'closing':
      return `${phaseNames.closing}, day ${day - bullEnd} of 84`
    case 'closed':
      return day < 0 ? `opens in ${-35 - day} ${day === -36 ? 'day' : 'days'}` : phaseNames.closed
  }
}
