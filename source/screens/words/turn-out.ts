/** Words of the move to the bull weeks and out of them. */

import type { KeptReason } from '../../breeding/ahead/turn-out.ts'
import type { Day } from '../../breeding/day.ts'
import { counted } from '../../words/counted.ts'
import { dateInWords, shortDate } from '../../words/dates.ts'
import { safeText } from '../../words/safe.ts'
import type { Sentences, Values } from '../../words/sentences.ts'

const block = (name: string): string => `${safeText(name)} block`

export const keptReasons: Readonly<Record<KeptReason, string>> = {
  hold: 'on health hold',
  'ready-after-bull': 'calved too lately for his weeks: the other block, or cull',
  barred: 'not to be bred',
  'maiden-not-ready': 'a maiden, not ready yet',
}

export const turnOutWords = {
  title: { in: 'The bull goes in', out: 'The bull comes out' },
  oneOut: (bull: string): string => `${safeText(bull)} comes out`,
  ofBlock: (name: string, closes: Day): string => `${block(name)}, AI ends ${shortDate(closes)}`,
  outOfBlock: (name: string): string => block(name),
  noBullWeeks: 'No block has bull weeks: Set-up holds the seasons.',
  day: 'Day',
  dayHint: 'D, Left, Right',
  asPlanned: 'as planned',
  inUntil: (last: Day): string => `he comes out ${shortDate(last)}`,
  later: (days: number): string => `${counted(days, 'day')} later than planned`,
  earlier: (days: number): string => `${counted(days, 'day')} earlier than planned`,
  /** Effects of another day. */
  unserved: (heats: number, left: number, longer: boolean): string =>
    `About ${counted(heats, 'heat')} ${heats === 1 ? 'goes' : 'go'} unserved between the last straw and the bull, and ${counted(left, 'day')} with him ${left === 1 ? 'is' : 'are'} left. The plan of the season stays${longer ? '; W lets AI go on for a week in their place' : ''}.`,
  early: (closes: Day): string =>
    `AI goes on until ${shortDate(closes)}: of a calf conceived in these days nobody can tell the sire. A shorter AI is planned in Set-up.`,
  outLate: (end: Day): string => `The last calves then come about ${dateInWords(end)}.`,
  notYet: 'Still to come: nothing is recorded for a day after tomorrow.',
  longer: (weekEnd: Day, empty: number, emptyNow: number, straws: number): string =>
    `W: AI a week longer, to ${shortDate(weekEnd)}. Forecast: ${Math.round(empty)} empty at the end in the place of ${Math.round(emptyNow)}, ${counted(Math.max(0, Math.round(straws)), 'straw')} more.`,
  /** How many bulls. */
  need: (low: number, high: number, needed: number, young: number): string =>
    `${low} to ${high} open at turn-out, at least 8 times in 10: for ${high} it takes ${counted(needed, 'bull')} of two years or more, or ${young} younger.`,
  needRests: 'Twice as many as work at a time, since half of them rest.',
  reckoning: 'How many bulls it takes is being reckoned.',
  bullsTitle: (chosen: number, serve: number): string =>
    chosen === 0 ? 'Bulls on hand' : `Bulls on hand: ${chosen} chosen, for ${serve} open`,
  enough: 'enough',
  short: (count: number): string => `too few for ${count} open`,
  alone: 'two at least: one may go lame',
  noBulls: 'No bull of the farm is on record: mark him ready in Set-up. Without one the move names no bull.',
  age: (years: number): string => `${counted(years, 'year')} old`,
  young: (serves: number): string => `under two years: ${serves} open at most`,
  ageUnknown: 'birth not known',
  goesTitle: {
    in: (count: number) => `Go with him: ${count}`,
    out: (count: number) => `Taken from him: ${count}`,
  },
  off: {
    in: (count: number): string => `${count} left out`,
    out: (count: number): string => `${count} ${count === 1 ? 'stays' : 'stay'} with him`,
  },
  nobodyGoes: 'Nobody is left to put with him.',
  nobodyWith: 'No animal of this block is with a bull.',
  already: (count: number): string =>
    `${counted(count, 'animal')} ${count === 1 ? 'is' : 'are'} with him already.`,
  keptTitle: (count: number): string => `Kept from him: ${count}`,
  inCalfTitle: (count: number): string => `In calf, need no bull: ${count}`,
  /** About one animal. */
  served: (days: number): string => `served ${days} d ago`,
  servedByBull: (days: number): string => `bull’s service ${days} d ago`,
  open: 'not served',
  empty: 'checked empty',
  returned: 'came back',
  inCalf: (chance: number): string => `${Math.round(chance * 100)} % in calf`,
  chances: (used: number, all: number): string => `${used} of ${all} chances`,
  since: (day: Day, bulls: readonly string[]): string =>
    `since ${shortDate(day)}${bulls.length === 0 ? '' : `, ${bulls.map(safeText).join(', ')}`}`,
} as const

const of = ({ block: name = '' }: Values): string => block(String(name))
const dayOf = ({ day = 0 }: Values): Day => Number(day) as Day
const animals = ({ count = 0 }: Values): string => counted(Number(count), 'animal')
const withBulls = ({ bulls = '' }: Values): string =>
  bulls === '' ? 'the bull' : safeText(String(bulls)).replace(/, ([^,]*)$/, ' and $1')
const perDay = ({ heats = 0 }: Values): string => `about ${Number(heats).toFixed(1)} heats a day`

/** What is said once it is done, or why it is not. */
export const turnOutMessages: Sentences = {
  'moved-in': (values) => `${animals(values)} with ${withBulls(values)} from ${dateInWords(dayOf(values))}.`,
  'moved-out': (values) => `${animals(values)} without a bull from ${dateInWords(dayOf(values))}.`,
  'moved-one-out': (values) =>
    `${animals(values)} without ${withBulls(values)} from ${dateInWords(dayOf(values))}. Tab puts another in.`,
  'ai-longer': (values) =>
    `The ${of(values)} has ${Number(values.weeks)} weeks of AI now, to ${dateInWords(dayOf(values))}; the bull comes out on the same day as before.`,
  'no-bull-weeks': 'This block has no bull weeks: Set-up holds the seasons.',
  'nobody-goes': 'Nobody is left to put with the bull.',
  'nobody-with-bull': 'No animal of this block is with a bull.',
  'kept-from-him': ({ number = '', why = '' }) =>
    `${safeText(String(number))} is kept from him: ${keptReasons[why as KeptReason]}. W on her page puts her with him all the same.`,
  'in-calf-no-bull': 'They are in calf: they need no bull.',
  'not-of-the-move': '{number} does not stand on this list.',
  'move-outside-season': 'That day lies outside the season.',
  'ai-is-over': 'AI is over in this block: it can no longer be made longer.',
  'no-bull-week-left': 'No week with the bull is left to give to AI.',
  'move-in-later': (values) =>
    `Nothing recorded: ${dateInWords(dayOf(values))} is still to come. About ${counted(Number(values.unserved), 'heat')} go unserved until then. The step stays on the morning list.`,
  'move-out-later': (values) =>
    `Nothing recorded: ${dateInWords(dayOf(values))} is still to come. The step stays on the morning list from the planned day on.`,
  'put-off-in': (values) =>
    `Put off: the bull of the ${of(values)} is to go in on ${shortDate(dayOf(values))}. Each day later leaves ${perDay(values)} unserved.`,
  'put-off-out': (values) =>
    `Put off: the bull of the ${of(values)} was to come out on ${shortDate(dayOf(values))}. Each day longer, calving goes on a day longer.`,
}

export const turnOutQuestions: Sentences = {
  'move-in': (values) =>
    `Record ${animals(values)} with ${withBulls(values)} from ${dateInWords(dayOf(values))}? No bull is safe: never alone, know your way out, tell someone.`,
  'move-out': (values) =>
    `Record ${animals(values)} taken from the bull on ${dateInWords(dayOf(values))}? No bull is safe: never alone, know your way out, tell someone.`,
  'move-one-out': (values) =>
    `Record ${animals(values)} taken from ${withBulls(values)} on ${dateInWords(dayOf(values))}? No bull is safe, a lame one least: never alone, know your way out, tell someone.`,
  'ai-longer': (values) =>
    `Let AI of the ${of(values)} go on to ${dateInWords(dayOf(values))}, ${Number(values.weeks)} weeks? The bull goes in the day after and comes out as planned. One key takes it back.`,
}
