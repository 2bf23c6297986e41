/** Sentences about files that are read and written. */
import { plainDate } from './plain-date.ts'
import { safeText } from './safe.ts'
import type { Sentences, Values } from './sentences.ts'

const text = (values: Values, name: string): string => safeText(String(values[name] ?? ''))
const day = (values: Values, name: string): string => plainDate(text(values, name))

const steps = {
  reading: (done: number, all: number) => `reading: ${done} of ${all} rows`,
  comparing: (done: number, all: number) => `held against the herd: ${done} of ${all} rows`,
  saving: (_done: number, all: number) => `saving ${all} facts`,
} as const

/**
 * How far an import has got.
 *
 * @example importProgress('reading', 4000, 100_000) // 'reading: 4000 of 100000 rows'
 */
export const importProgress = (step: keyof typeof steps, done: number, all: number): string =>
  steps[step](done, all)

/** What a date in another form would mean, for each form that makes it a date. */
function offers(values: Values): string {
  const forms = [
    ['dayFirst', 'day-first'],
    ['monthFirst', 'month-first'],
  ] as const
  return forms
    .filter(([name]) => values[name] !== '')
    .map(([name, form]) => `--dates ${form} reads it as ${day(values, name)}`)
    .join(', ')
}

/** Sentences about one cell or one row of a table. */
export const rowSentences: Sentences = {
  'cell-missing': 'column {column} is empty, and every row needs it.',
  'cell-needed': 'column {column} is empty; {fact} needs it.',
  'cell-long': 'column {column} is longer than {limit} characters.',
  'cell-choice': 'column {column}: "{value}" is none of: {choices}.',
  'cell-whole': 'column {column}: "{value}" is not a whole number from {from} to {to}.',
  'cell-decimal': 'column {column}: "{value}" is not a number from {from} to {to}.',
  'cell-steps': 'column {column}: "{value}" is not a number from {from} to {to} in steps of {step}.',
  'cell-yes-no': 'column {column}: "{value}" is neither yes nor no.',
  'cell-date': 'column {column}: "{value}" is not a date of the calendar. Write it as 2026-05-28.',
  'cell-date-form': (values) =>
    `column ${text(values, 'column')}: "${text(values, 'value')}" is written in another form than 2026-05-28; ${offers(values)}.`,
  'cell-time': 'column {column}: "{value}" is no time. Write it as 05:30, morning or evening.',
  'cell-calf-sex': 'column {column}: "{value}" is not a letter a calf, F or M (twins: FM).',
  'row-header': 'this is the header row once more.',
  'row-long': 'the row has {cells} cells, the header {columns}. Is there a comma in a text without quotes?',
  'row-twice': '{key} stands in the file twice with different values, here and in {other}. Keep one.',
  'row-contradicts': 'this contradicts {other}: it can happen only once a day. Keep one.',
  'row-id-twice': 'column {column}: {id} stands here and in {other}. Keep one.',
  'row-taken-back': 'fact {id} was taken back in this herd and is not recorded again.',
  'row-corrected-since':
    'fact {id} was corrected in this herd since; the row tells the old values and is left out.',
  'id-form':
    'column {column}: "{value}" cannot be an id: letters, digits, and . : _ - after the first, at most 100.',
  'id-taken': 'column {column}: {id} is the id of something else in this herd. Leave the cell empty.',
  'column-not-for-fact':
    'column {column} says nothing about {fact}. Empty the cell, or correct the kind of row.',
  'date-future': (values) => `${day(values, 'date')} is still to come. Correct the date.`,
  'date-before-birth': (values) =>
    `${day(values, 'date')} is before the birth on ${day(values, 'born')}. Correct one of the two dates.`,
  'date-order': (values) =>
    `${text(values, 'first')} (${day(values, 'early')}) is after ${text(values, 'second')} (${day(values, 'late')}). Correct one of them.`,
  'animal-male': '{fact} of a male. Correct the number, or the sex in animals.csv.',
  'animal-own-parent': 'column {column} names the animal itself.',
  'animal-id-shared': 'column {column}: {id} is the ID of animal {other} too. Correct one of them.',
  'calving-dead': 'column {column}: {dead} dead of {calves} born. Give the number of calves.',
  'calving-sexes':
    'column {column}: "{sexes}" for {calves} born. Give a letter a calf, and the number of calves.',
  'fact-animal-unknown': 'no animal of the herd or of animals.csv has this number. Add her there first.',
  'fact-animal-refused': 'her row ({other}) was refused. Correct that first.',
  'fact-number-shared': 'two animals of the herd have this number. Give one of them another number first.',
  'straw-dates-mixed':
    'the row has no date, but other rows of the same straws have one ({other}). Give every count its date.',
  'setting-unknown': 'there is no setting "{key}".',
  'setting-value': 'setting {key}: "{value}" is not among: {range}.',
}

/** Sentences about a whole table. */
export const fileSentences: Sentences = {
  'csv-empty': 'the file is empty. It needs a header row with the names of the columns.',
  'csv-not-text':
    'this is not a CSV file: it holds bytes that are no text. In a spreadsheet, save it as CSV.',
  'csv-too-large': 'the file is larger than {limit} MB. Split it, with the header row in each part.',
  'csv-tabs': 'the columns are separated by tabs. Save the file as CSV, with commas or semicolons.',
  'csv-quote-open':
    'a quote opens here and never closes. Close it, or double it ("") where it is part of the text.',
  'csv-quote':
    'a quote stands inside a text. Put the whole text in quotes, and double each quote (") within it.',
  'csv-column-twice': 'column {column} is there twice. Rename or remove one.',
  'csv-column-missing': 'column {column} is missing. The columns of this table are: {columns}.',
  'csv-encoding':
    'the file is not written in UTF-8; it was read as {encoding}. Look whether the names are right.',
  'column-unknown': 'column "{column}" is not known and was left out.',
  'cell-matched': (values) =>
    `column ${text(values, 'column')}: "${text(values, 'word')}" was read as ${text(values, 'read')}, ${values.count === 1 ? 'once' : `${text(values, 'count')} times`}.`,
  'column-matched': 'column "{found}" was read as {column}.',
  'dates-read': (values) =>
    `dates were read ${text(values, 'form')}: "${text(values, 'value')}" is ${day(values, 'date')}.`,
  'dates-offered': (values) => {
    const forms = ['day-first', 'month-first'].map((form) => {
      const example = text(values, `${form} value`)
      const shown = example === '' ? '' : ` ("${example}" is ${day(values, `${form} date`)})`
      return `${form} makes dates of ${text(values, `${form} fits`)}${shown}`
    })
    return `dates written in another form than 2026-05-28: ${text(values, 'count')}. Say how with --dates: ${forms.join(', ')}.`
  },
  'export-number-shared':
    'two animals have this number, and the tables could not tell their facts apart. Give one of them another number first.',
}

/** Sentences about events of the ICAR ADE standard. */
export const adeSentences: Sentences = {
  'ade-too-large': 'the file is larger than {limit} MB. Ask for it in parts.',
  'ade-not-json': 'this is no JSON. A file of ICAR ADE events is JSON in UTF-8.',
  'ade-nothing': 'there is no animal and no breeding event of the ICAR ADE standard in it.',
  'ade-left-out': '{count} resources of the type {type} are no breeding events and were left out.',
  'ade-gone':
    '{animals} animals had left before this herd knew them; they and {events} events of theirs were left out.',
  'ade-no-animal': 'the event does not say which animal it is about.',
  'ade-no-date': '{field} is missing: the event has no date.',
  'ade-date': '{field}: "{value}" is not a date and time of the calendar.',
  'ade-word': '{field}: "{value}" says nothing that the herd file knows.',
  'ade-long': '{field} is longer than {limit} characters.',
  'ade-number': '{field}: {value} is not from {from} to {to}.',
  'ade-species': '{specie}: the herd is of cattle.',
  'ade-embryo': 'an embryo was implanted, which the herd file does not keep. Note it by hand.',
}

export const exchangeSentences: Sentences = { ...rowSentences, ...fileSentences, ...adeSentences }
