/**
 * Every form, field by field: what is typed into it, and the sentence that refuses it. All else on the form stands as
 * it opened, with what it must have.
 */
import { describe, expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { isoDay } from '../../source/breeding/day.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import { accept, type OpenForm, openForm, openHerdForm, typeInto } from '../../source/morning/forms/edit.ts'
import {
  type AnyFormName,
  type FormName,
  formNames,
  type HerdFormName,
  type HerdSetting,
  herdFormNames,
  type Setting,
  type Values,
} from '../../source/morning/forms/form.ts'
import { herdForms } from '../../source/morning/forms/forms.ts'
import { wrap } from '../../source/screens/width.ts'
import { wrongWord } from '../../source/screens/words/forms.ts'
import { at, DAY, herd } from '../terminal/support/herd.ts'

const book = openBook(herd())
const day = isoDay(DAY)
const { rows } = morningList(book, day)
const setting: HerdSetting = { book, now: at('05:15'), by: 'MK', date: DAY }
const settingFor = (number: string): Setting => {
  const animal = book.byNumber.get(number)
  if (animal === undefined) throw new Error(`no ${number}`)
  const row = rows.find((one) => one.animal === animal.id)
  return { ...setting, animal, row, rows, standing: standingOn(book, animal, day) }
}

/** What a form must have besides the field that is tried. */
const needed: Partial<Record<AnyFormName, Values>> = {
  note: { note: 'x' },
  score: { condition: '3' },
  delivery: { sire: 'S17', count: '5' },
  'stock-take': { sire: 'S17', count: '5' },
  spoiled: { sire: 'S17', count: '1' },
  nitrogen: { depth: '20' },
  season: { block: 'winter', 'mating-start': '2026-10-23' },
  record: { number: '9001' },
  'new-herd': { 'farm-name': 'Long Acre', zone: 'Europe/Dublin' },
  'new-from-tables': { 'farm-name': 'Long Acre', zone: 'Europe/Dublin', 'table-animals': 'animals.csv' },
}

const isHerdForm = (name: AnyFormName): name is HerdFormName => name in herdForms

function opened(name: AnyFormName, more: Values, field?: string, number = '61'): OpenForm {
  const values = { ...needed[name], ...more }
  if (!isHerdForm(name)) return openForm(name, settingFor(number), values, field)
  const about = name === 'setting' ? (more.about ?? 'calvedToServe') : more.about
  return openHerdForm(name, about === undefined ? setting : { ...setting, about }, values, field)
}

/** The sentence below the field; undefined where it is taken. */
function refused(name: AnyFormName, field: string, typed: string, more: Values = {}): string | undefined {
  const form = opened(name, more, field)
  expect(form.fields[form.at]?.name).toBe(field)
  const blank: OpenForm = { ...form, values: { ...form.values, [field]: '' } }
  const outcome = accept(typed === '' ? blank : typeInto(blank, typed))
  if ('facts' in outcome) return undefined
  const problem = outcome.form.wrong[field]
  // A danger that is asked about is no refusal.
  if (outcome.form.danger !== undefined) return undefined
  expect(problem, JSON.stringify(outcome.form.wrong)).toBeDefined()
  return problem === undefined ? undefined : wrongWord(problem)
}

/** Field, typed text, sentence; `taken` where it fits. Other values where they decide. */
type Table = readonly (readonly [field: string, typed: string, sentence: string, more?: Values])[]
const taken = ''
const empty = 'This cannot stay empty: type something here.'
const future = 'That day is still to come: only what has happened can be recorded. Type an earlier day.'
const early = 'That is more than 50 years ago: check the year.'
const far = 'That is more than 5 years ahead: check the year.'
const notDate = (typed: string): string =>
  `"${typed}" is not a date. Write 28 May, or 2026-05-28, or use Left and Right.`
const notTime = (typed: string): string =>
  `"${typed}" is not a time. Write 0541, morning or evening, or leave it empty.`
const notNumber = (typed: string, min: number, max: number): string =>
  `"${typed}" is not a number: type digits, ${min} to ${max}.`
const outside = (typed: string, min: number, max: number): string =>
  `${typed} does not fit: type ${min} to ${max}.`
const whole = (typed: string): string => `${typed} does not fit: type a whole number.`

/** A day that has come, of anything. */
const someDay: Table = [
  ['date', '', empty],
  ['date', '30 feb', notDate('30 feb')],
  ['date', '2026-02-30', notDate('2026-02-30')],
  ['date', '29 feb 2026', notDate('29 feb 2026')],
  ['date', '0 may', notDate('0 may')],
  ['date', '5 mayday', notDate('5 mayday')],
  ['date', '28/05/2026', notDate('28/05/2026')],
  ['date', '2100-01-01', future],
  ['date', '29 may 2026', future],
  ['date', '28 May', taken],
  ['date', 'yesterday', taken],
]
const herDay: Table = [
  ...someDay,
  ['date', '1900-01-01', 'The animal was born on 20 Feb 2021, after that day: check the date.'],
]
const herdDay: Table = [...someDay, ['date', '1900-01-01', early]]
const someTime: Table = [
  ['time', '25:00', notTime('25:00')],
  ['time', '0560', notTime('0560')],
  ['time', 'noon', notTime('noon')],
  ['time', '0516', 'It is only 05:15: 05:16 is still to come. Type an earlier time.'],
  ['time', '0515', taken],
  ['time', 'evening', taken],
  ['time', '', taken],
]
const lot: Table = [
  ['sire', '', empty],
  ['sire', 'S99', taken],
  ['count', '', empty],
  ['count', 'ten', notNumber('ten', 1, 100_000)],
  ['count', '0x10', notNumber('0x10', 1, 100_000)],
  ['count', '1e3', notNumber('1e3', 1, 100_000)],
  ['count', '0', outside('0', 1, 100_000)],
  ['count', '-5', outside('-5', 1, 100_000)],
  ['count', '100001', outside('100001', 1, 100_000)],
  ['count', '2.5', whole('2.5')],
  ['count', '100000', taken],
  ...herdDay,
  ...someTime,
]
const farm: Table = [
  ['farm-name', '', empty],
  ['farm-name', '  ', empty],
  ['zone', '', empty],
  ['zone', 'Dublin', '"Dublin" is not a time zone. Write one like Europe/Dublin or Pacific/Auckland.'],
  ['zone', 'Pacific/Auckland', taken],
  ['milkings', '', empty],
  ['milkings', '25:00', '"25:00" is not one or two times in order. Write 05:30 15:30.'],
  ['milkings', '15:30 05:30', '"15:30 05:30" is not one or two times in order. Write 05:30 15:30.'],
  ['milkings', '05:30 05:30', '"05:30 05:30" is not one or two times in order. Write 05:30 15:30.'],
  ['milkings', '5 12 19', '"5 12 19" is not one or two times in order. Write 05:30 15:30.'],
  ['milkings', '0530', taken],
  ['milkings', '530, 1530', taken],
]

const tables: Readonly<Record<AnyFormName, Table>> = {
  heat: [...herDay, ...someTime],
  service: [['sire', '', empty], ['sire', 'S99', taken], ...herDay, ...someTime],
  check: [
    ['age', '19', outside('19', 20, 290)],
    ['age', '291', outside('291', 20, 290)],
    ['age', '30.5', whole('30.5')],
    ['age', 'five weeks', notNumber('five weeks', 20, 290)],
    ['age', '40', 'Only for a result that says in calf: leave this empty.', { result: 'empty' }],
    ['age', '32', taken],
    ['foetuses', '0', outside('0', 1, 5)],
    ['foetuses', '6', outside('6', 1, 5)],
    ['foetuses', '2', 'Only for a result that says in calf: leave this empty.', { result: 'unsure' }],
    ['foetuses', '2', taken],
    ['service-date', '', taken, { result: 'empty' }],
    ...herDay,
  ],
  examined: [
    ['serve-on', '30 feb', notDate('30 feb')],
    ['serve-on', '2026-05-27', 'That lies before 28 May 2026: type a later day.'],
    ['serve-on', '2100-01-01', far],
    ['serve-on', '', 'A milking needs the day of the planned service: type it here.', { session: 'morning' }],
    ['serve-on', '30 may', taken],
    ...herDay,
  ],
  hold: [
    ['until', '30 feb', notDate('30 feb')],
    ['until', '2026-05-27', 'That lies before 28 May 2026: type a later day.'],
    ['until', '2100-01-01', far],
    ['until', '9999-12-31', far],
    ['until', '10 june', taken],
    ...herDay,
  ],
  'to-bull': herDay,
  note: [['note', '', empty], ['note', '   ', empty], ...herDay],
  block: [
    ['block', '', empty],
    ['block', 'summer', 'There is no summer block. Left and Right show those there are.'],
    ['block', 'spring', taken],
    ...herDay,
  ],
  bar: herDay,
  unbar: herDay,
  calving: [
    ['calf-sex', 'H', 'One letter a calf, F or M: F, FM.'],
    ['calf-sex', 'FF', 'One letter a calf: type 1 in all.'],
    ['calf-sex', 'f m', taken, { calves: '2' }],
    ['calves', '0', outside('0', 1, 5)],
    ['calves', '6', outside('6', 1, 5)],
    ['calves', 'twins', notNumber('twins', 1, 5)],
    ['dead', '6', outside('6', 0, 5)],
    ['dead', '2', '2 dead of 1 cannot be: type 1 or less.'],
    ['dead', '1', taken],
    ...herDay,
    ...someTime,
  ],
  loss: herDay,
  left: herDay,
  score: [
    ['condition', '', empty],
    ['condition', 'fat', notNumber('fat', 1, 5)],
    ['condition', '0.75', outside('0.75', 1, 5)],
    ['condition', '5.25', outside('5.25', 1, 5)],
    ['condition', '2.6', '2.6 does not fit: type a number in steps of 0.25.'],
    ['condition', '2,75', taken],
    ...herDay,
  ],
  dry: herDay,
  'with-bull': herDay,
  'from-bull': herDay,
  'bull-service': [...herDay, ...someTime],
  delivery: lot,
  spoiled: lot,
  'stock-take': [
    ...lot.filter(([field, typed]) => field !== 'count' || typed === '' || typed === '100000'),
    ['count', '0', taken],
    ['count', '-1', outside('-1', 0, 100_000)],
    ['gestation', '259', outside('259', 260, 300)],
    ['gestation', '301', outside('301', 260, 300)],
    ['gestation', '280.5', whole('280.5')],
    ['gestation', '279', taken],
  ],
  nitrogen: [
    ['depth', '', empty],
    ['depth', 'full', notNumber('full', 0, 200)],
    ['depth', '-1', outside('-1', 0, 200)],
    ['depth', '201', outside('201', 0, 200)],
    ['depth', '20.3', '20.3 does not fit: type a number in steps of 0.5.'],
    ['depth', '27,5', taken],
    ...herdDay,
    ...someTime,
  ],
  farm,
  season: [
    ['block', '', empty],
    ['mating-start', '', 'Give the mating start, or the day calving should begin.'],
    ['mating-start', '30 feb', notDate('30 feb')],
    ['mating-start', '1900-01-01', early],
    ['mating-start', '2100-01-01', far],
    ['mating-start', '9999-12-31', far],
    [
      'mating-start',
      '2026-05-20',
      'The season of this block from 1 May 2026 is not over by then: begin later.',
      { block: 'spring' },
    ],
    ['calving-start', '30 feb', notDate('30 feb')],
    ['calving-start', '2100-01-01', far],
    ['calving-start', '2027-08-01', taken],
    ['ai-weeks', '', empty],
    ['ai-weeks', '0', outside('0', 1, 20)],
    ['ai-weeks', '40', outside('40', 1, 20)],
    ['ai-weeks', '6.5', whole('6.5')],
    ['ai-weeks', 'six', notNumber('six', 1, 20)],
    ['ai-weeks', '6', taken],
    ['bull-weeks', '', empty],
    ['bull-weeks', '-1', outside('-1', 0, 20)],
    ['bull-weeks', '21', outside('21', 0, 20)],
    ['bull-weeks', '0', taken],
    ['scan-dates', '30 feb', '"30 feb" is not a date. Write 10 June or 2026-06-10, a space between two.'],
    [
      'scan-dates',
      '2026-12-01 soon',
      '"2026-12-01 soon" is not a date. Write 10 June or 2026-06-10, a space between two.',
    ],
    [
      'scan-dates',
      '2100-01-01',
      '1 Jan 2100 is not of this season: give a day from 18 Sep 2026 to 23 Oct 2027.',
    ],
    [
      'scan-dates',
      '2026-06-01',
      '1 Jun 2026 is not of this season: give a day from 18 Sep 2026 to 23 Oct 2027.',
    ],
    ['scan-dates', '2026-12-01, 4 jan', taken],
  ],
  setting: [
    ['value', '', empty],
    ['value', '19', outside('19', 20, 120)],
    ['value', '500', outside('500', 20, 120)],
    ['value', 'soon', notNumber('soon', 20, 120)],
    ['value', '42.5', whole('42.5')],
    ['value', '45', taken],
    ['value', '200', outside('200', 5, 95), { about: 'cowConception' }],
  ],
  record: [
    ['number', '', empty],
    ['number', '412', '412 is the number of another animal: give one that is free.'],
    ['number', '9002', taken],
    ['born', '30 feb', notDate('30 feb')],
    ['born', '1900-01-01', early],
    ['born', '2100-01-01', future],
    ['born', '1 march 2024', taken],
    [
      'born',
      '1 march 2026',
      'She has a fact of 17 Feb 2026: give a birth before that day, or leave it empty.',
      { about: 'cow-61', number: '61' },
    ],
    ['lactation', '-1', outside('-1', 0, 25)],
    ['lactation', '26', outside('26', 0, 25)],
    ['lactation', '1.5', whole('1.5')],
    ['lactation', 'heifer', notNumber('heifer', 0, 25)],
    ['sire-of', '9001', 'That is her own number: give the number of her parent, or leave it empty.'],
    ['dam-of', '9001', 'That is her own number: give the number of her parent, or leave it empty.'],
    ['dam-of', '412', taken],
    ['official-id', 'UK123450700412', '412 has this tag already: read the tag again.'],
    ['gestation', '259', outside('259', 260, 300)],
  ],
  'new-herd': [['herd-file', '', empty], ...farm],
  'new-from-tables': [
    ['herd-file', '', empty],
    ...farm,
    ['table-animals', '', 'Name at least one file to read.'],
    ['table-animals', 'herd/animals.csv', taken],
  ],
}

for (const name of [...formNames, ...herdFormNames])
  describe(name, () => {
    for (const [field, typed, sentence, more] of tables[name])
      test(`${field}: "${typed}"`, () => {
        expect(refused(name, field, typed, more) ?? taken).toBe(sentence)
      })

    test('a text without end, and signs that a terminal would act on, are refused where text can be typed', () => {
      const form = opened(name, {})
      for (const { name: field, input } of form.fields) {
        if (input === 'choice') continue
        expect(refused(name, field, `a${'b'.repeat(9_999)}`)).toMatch(
          input === 'text' || input === 'pick'
            ? /^That is 10000 characters, and 500 fit: shorten it\.$/
            : /./,
        )
        expect(refused(name, field, 'a\u001b[2Jb')).toBe(
          'There are hidden signs in it, shown like <001B>: take them out with Backspace.',
        )
      }
    })
  })

test('each sentence says what to do, and fits below its field on the smallest screen', () => {
  const sentences = Object.values(tables).flatMap((table) => table.map(([, , sentence]) => sentence))
  for (const sentence of new Set(sentences.filter((one) => one !== taken))) {
    expect(sentence).toMatch(
      /(type|write|give|check|leave|read|name|shorten|choose|begin|use|show|one letter)\b/i,
    )
    expect(wrap(sentence, 40, 9, '…').length).toBeLessThanOrEqual(3)
  }
})

test('what is typed is said again with its beginning only', () => {
  expect(refused('hold', 'until', 'as soon as her foot is better again')).toBe(
    '"as soon as her foot is b…" is not a date. Write 28 May, or 2026-05-28, or use Left and Right.',
  )
})

test('her form takes no name of a form that is not hers', () => {
  const names: readonly FormName[] = formNames
  expect(names.filter((name) => isHerdForm(name))).toEqual([])
})
