/** Words of the forms: titles, fields, choices, what is wrong with a field. */
import type { Problem } from '../../breeding/problem.ts'
import type { AnyFormName } from '../../morning/forms/form.ts'
import { plainDate } from '../../words/plain-date.ts'
import { filled, type Sentences, type Values } from '../../words/sentences.ts'
import { aheadQuestions } from './ahead.ts'
import { turnOutQuestions } from './turn-out.ts'

export const formTitles: Readonly<Record<AnyFormName, string>> = {
  heat: 'Heat seen',
  service: 'Served by AI',
  check: 'Pregnancy check',
  examined: 'Examined by the vet',
  hold: 'Health hold',
  'to-bull': 'Left to the sweep bull',
  note: 'Note',
  block: 'Moved to another block',
  bar: 'Do not breed',
  unbar: 'May be bred again',
  calving: 'Calved',
  loss: 'Pregnancy lost',
  left: 'Left the herd',
  score: 'Body condition',
  dry: 'Dried off',
  'with-bull': 'Put with the bull',
  'from-bull': 'Taken from the bull',
  'bull-service': 'Served by a bull',
  delivery: 'Straws delivered',
  'stock-take': 'Straws counted',
  spoiled: 'Straws spoiled',
  nitrogen: 'Nitrogen measured',
  farm: 'Farm',
  season: 'Season',
  setting: 'Policy',
  record: 'Record of an animal',
  'new-herd': 'A new herd',
  'new-from-tables': 'A new herd from CSV tables',
}

export const fieldNames: Readonly<Record<string, string>> = {
  certainty: 'How sure',
  how: 'Seen by',
  time: 'Time',
  date: 'Date',
  signs: 'Signs',
  sire: 'Straw of',
  kind: 'Kind',
  batch: 'Batch',
  inseminator: 'Inseminator',
  session: 'Milking',
  result: 'Result',
  age: 'Days of age',
  foetuses: 'Calves',
  'service-date': 'To service of',
  method: 'Method',
  finding: 'Finding',
  treatment: 'Treatment',
  'serve-on': 'Serve on',
  until: 'Until',
  reason: 'Reason',
  note: 'Note',
  ease: 'Ease 1-5',
  'calf-sex': 'Sex, F or M',
  calves: 'Calves',
  dead: 'Of them dead',
  condition: 'Condition',
  bull: 'Bull',
  flask: 'Flask',
  canister: 'Canister',
  count: 'Straws',
  'sire-name': 'Sire’s name',
  breed: 'Breed',
  volume: 'Straw, ml',
  'easy-calving': 'Easy calving',
  gestation: 'Gestation',
  depth: 'Depth, cm',
  'herd-file': 'Herd file',
  'table-animals': 'animals.csv',
  'table-facts': 'facts.csv',
  'table-seasons': 'seasons.csv',
  'table-straws': 'straws.csv',
  'table-stock': 'stock.csv',
  'farm-name': 'Farm',
  zone: 'Time zone',
  milkings: 'Milkings',
  block: 'Block',
  'mating-start': 'Mating start',
  'calving-start': 'Calving from',
  'ai-weeks': 'Weeks of AI',
  'bull-weeks': 'Weeks of bull',
  'scan-dates': 'Scan visits',
  value: 'Value',
  number: 'Number',
  name: 'Name',
  sex: 'Sex',
  born: 'Born',
  lactation: 'Calved before',
  ready: 'Ready',
  plan: 'Calves for',
  'animal-breed': 'Breed',
  'sire-of': 'Sire',
  'dam-of': 'Dam',
  'official-id': 'Official tag',
  'electronic-id': 'Electronic',
  'international-id': 'International',
}

/** A choice on the screen; an empty one is "not known". */
export const choiceNames: Readonly<Record<string, string>> = {
  '': 'not said',
  pregnant: 'in calf',
  empty: 'empty',
  unsure: 'unsure',
  sure: 'sure',
  suspect: 'suspect',
  standing: 'standing to be mounted',
  activity: 'activity record',
  paint: 'paint or patch rubbed',
  mucus: 'mucus',
  other: 'other signs',
  conventional: 'conventional',
  sexed: 'sexed',
  beef: 'beef',
  morning: 'morning',
  evening: 'evening',
  ultrasound: 'ultrasound',
  hand: 'hand',
  milk: 'milk test',
  blood: 'blood test',
  F: 'female',
  M: 'male',
  dairy: 'dairy',
  'at-next-milking': 'at the next milking',
  'by-the-hour': 'by the hour',
  yes: 'yes',
  no: 'no',
}

export const formWords = {
  was: (words: string, day: string): string => `On record: ${words}, ${day}`,
  left: (count: number): string => `${count} left`,
  inbreeding: (share: number): string =>
    share === 0 ? 'not related to her' : `calf inbred ${(share * 100).toFixed(1)} %`,
  notInFlask: 'not in the flask by the book',
  endless: 'until further notice',
  programFinds: 'the program finds it',
} as const

/** What is wrong with a field, in a sentence that says what would be right. */
export const wrongWords: Sentences = {
  'form-no-table': 'Name at least one file to read.',
  'form-zone': '"{value}" is not a time zone. Write one like Europe/Dublin or Pacific/Auckland.',
  'form-milkings': '"{value}" is not one or two times in order. Write 05:30 15:30.',
  'form-mating-start': 'Give the mating start, or the day calving should begin.',
  'form-season-overlaps': 'The season of this block from {start} is not over by then: begin later.',
  'form-not-a-visit': '"{value}" is not a date. Write 10 June or 2026-06-10, a space between two.',
  'form-visit-outside': '{date} is not of this season: give a day from {from} to {to}.',
  'form-number-taken': '{number} is the number of another animal: give one that is free.',
  'form-tag-taken': '{number} has this tag already: read the tag again.',
  'form-own-parent': 'That is her own number: give the number of her parent, or leave it empty.',
  'form-born-after': 'She has a fact of {date}: give a birth before that day, or leave it empty.',
  'form-missing': 'This cannot stay empty: type something here.',
  'form-too-long': 'That is {have} characters, and {most} fit: shorten it.',
  'form-hidden': 'There are hidden signs in it, shown like <001B>: take them out with Backspace.',
  'form-not-a-number': '"{value}" is not a number: type digits, {min} to {max}.',
  'form-out-of-range': '{value} does not fit: type {min} to {max}.',
  'form-whole': '{value} does not fit: type a whole number.',
  'form-no-such-block': 'There is no {block} block. Left and Right show those there are.',
  'form-step': '{value} does not fit: type a number in steps of {step}.',
  'form-not-a-date': '"{value}" is not a date. Write 28 May, or 2026-05-28, or use Left and Right.',
  'form-future': 'That day is still to come: only what has happened can be recorded. Type an earlier day.',
  'form-too-early': 'That is more than {years} years ago: check the year.',
  'form-too-far': 'That is more than {years} years ahead: check the year.',
  'form-before-birth': 'The animal was born on {born}, after that day: check the date.',
  'form-before': 'That lies before {from}: type a later day.',
  'form-not-a-time': '"{value}" is not a time. Write 0541, morning or evening, or leave it empty.',
  'form-time-ahead': 'It is only {now}: {value} is still to come. Type an earlier time.',
  'form-not-a-choice': '"{value}" is none of: {choices}. Left and Right go through them.',
  'form-only-in-calf': 'Only for a result that says in calf: leave this empty.',
  'form-only-in-calf-service': 'Only for a result that says in calf: Backspace takes the service out.',
  'form-service-after': 'That service was after the check: choose another with Left and Right.',
  'form-session-without-date': 'A milking needs the day of the planned service: type it here.',
  'form-more-dead': '{dead} dead of {calves} cannot be: type {calves} or less.',
  'form-calf-sex': 'One letter a calf, F or M: F, FM.',
  'form-calf-count': 'One letter a calf: type {calves} in all.',
}

/** So much of what was typed is said again. */
const MOST_SAID = 24
const short = (text: string): string =>
  text.length <= MOST_SAID ? text : `${[...text].slice(0, MOST_SAID).join('')}…`

/** @example wrongWord(fault('form-missing', 'note')) // 'This cannot stay empty: type something here.' */
export function wrongWord(problem: Problem): string {
  const known = wrongWords[problem.code]
  return typeof known === 'string' ? filled(known, withDatesInWords(problem.values ?? {})) : problem.code
}

/** Dates of the program with the month in words; what was typed stays as it was typed, its beginning. */
const withDatesInWords = (values: Values): Values =>
  Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      typeof value !== 'string'
        ? value
        : name === 'value' || name === 'number'
          ? short(value)
          : plainDate(value),
    ]),
  )

/** Every code that has a sentence here. */
export const wrongCodes: readonly string[] = Object.keys(wrongWords)

/** What is asked before something is recorded. `{count}` animals, `{number}` the animal. */
const questions: Sentences = {
  'danger-in-calf':
    '{number} is recorded in calf. A service can end the pregnancy: check her again first. Served all the same?',
  'danger-calved': '{number} calved less than 30 days ago: do not serve. Served all the same?',
  'danger-hold': '{number} is on health hold. Served all the same?',
  'danger-barred': '{number} is not to be bred. Served all the same?',
  'danger-chances': '{number} has used her chances by AI this season. Served all the same?',
  'danger-short-interval':
    '{number} was served a few days ago: one of the two was no heat. See her stand first. Served all the same?',
  'danger-related': 'Her calf by this sire would be inbred 12.5 % or more. Served with it all the same?',
  'danger-late-return':
    '{number} came back late and is unchecked: one in five such cows is in calf, and a service can end it. Scan first if you can. Served all the same?',
  'danger-unsure':
    'The last check of {number} was unsure: a service can end a pregnancy. Scan first if you can. Served all the same?',
  'danger-bull-in-calf': '{number} is recorded in calf. With the bull all the same?',
  'danger-keep-from-bull': '{number} is to be kept from the bull. With him all the same?',
  ...aheadQuestions,
  ...turnOutQuestions,
  'scan-no-service-fits':
    'No service of {number} and no time with the bull fits this result. Right number, right animal? Record it all the same?',
  'scan-too-young':
    'The last service of {number} is too young for this check: the result does not count for it. Record it all the same?',
  'scan-empty-in-calf':
    '{number} is recorded in calf, and is called empty. Right number, right animal? If she lost her calf record the loss too: gloves, ring the vet. Record empty all the same?',
  'scan-again': '{number} has a result of this day already. Put this one in its place?',
  'scan-other-block': '{number} is of a block that is not visited on this day. Record it all the same?',
  'scan-not-due': 'No check of {number} is due. Record it all the same?',
  'look-all': 'Looked at {count} animals of the watch, and none is in heat?',
  void: 'Strike this out? It will no longer count, and stays on record as struck out.',
  'undo-old': 'This is not of today. Take it back?',
  'redo-old': 'This is not of today. Put it back?',
  'undo-many': 'Take back {count} facts at once?',
  'redo-many': 'Put back {count} facts at once?',
}

export function questionWords(
  code: string,
  values: { readonly number: string; readonly count: number } & NonNullable<Problem['values']>,
): string {
  const known = questions[code]
  return typeof known === 'function' ? known(values) : filled(known ?? code, values)
}
export const questionCodes: readonly string[] = Object.keys(questions)
