import { expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { dayIso, isoDay } from '../../source/breeding/day.ts'
import type { Fact } from '../../source/breeding/facts.ts'
import { morningList } from '../../source/breeding/morning-list.ts'
import { standingOn } from '../../source/breeding/standing.ts'
import { accept, openForm, rubIn, toField, turn, typeInto } from '../../source/morning/forms/edit.ts'
import type { FormName, Setting, Values } from '../../source/morning/forms/form.ts'
import { formNames } from '../../source/morning/forms/form.ts'
import { forms } from '../../source/morning/forms/forms.ts'
import { readTypedDay, readTypedTime } from '../../source/morning/forms/reader.ts'
import { ago, at, DAY, herd } from '../terminal/support/herd.ts'

const settingFor = (number: string, facts: readonly Fact[] = herd()): Setting => {
  const book = openBook(facts)
  const animal = book.byNumber.get(number)
  if (animal === undefined) throw new Error(`no ${number}`)
  const day = isoDay(DAY)
  const { rows } = morningList(book, day)
  const row = rows.find((one) => one.animal === animal.id)
  return {
    book,
    now: at('05:15'),
    by: 'MK',
    animal,
    row,
    rows,
    standing: standingOn(book, animal, day),
    date: DAY,
  }
}

/** What a form makes of values put in the place of what stands there when it opens. */
const read = (name: FormName, values: Values, number = '412') => {
  const setting = settingFor(number)
  const form = forms[name]
  return form.read({ ...form.begin(setting), ...values }, setting)
}
const wrong = (name: FormName, values: Values, number?: string): Record<string, string> =>
  Object.fromEntries(
    Object.entries(read(name, values, number).wrong ?? {}).map(([field, problem]) => [field, problem.code]),
  )
const fact = (name: FormName, values: Values, number?: string) => {
  const reading = read(name, values, number)
  if (reading.wrong !== undefined) throw new Error(JSON.stringify(reading.wrong))
  return reading.facts[0]
}

/** Each form with everything in it that it can hold. */
const whole: Readonly<Record<FormName, { values: Values; fact: Record<string, unknown> }>> = {
  heat: {
    values: { certainty: 'suspect', how: 'paint', time: '0430', signs: 'bulling others' },
    fact: { kind: 'heat', certainty: 'suspect', how: 'paint', time: '04:30', signs: 'bulling others' },
  },
  service: {
    values: { sire: 'B3', kind: 'beef', batch: '1', inseminator: 'JO', session: 'morning', time: '5:05' },
    fact: {
      kind: 'service',
      sire: 'B3',
      straw: 'beef',
      batch: '1',
      inseminator: 'JO',
      session: 'morning',
      time: '05:05',
    },
  },
  check: {
    values: { result: 'pregnant', age: '31', foetuses: '2', method: 'hand' },
    fact: { kind: 'check', result: 'pregnant', foetalAge: 31, foetuses: 2, method: 'hand' },
  },
  examined: {
    values: { finding: 'cyst', treatment: 'as prescribed', 'serve-on': '7 June', session: 'evening' },
    fact: {
      kind: 'examined',
      finding: 'cyst',
      treatment: 'as prescribed',
      serveOn: '2026-06-07',
      session: 'evening',
    },
  },
  hold: {
    values: { until: '2026-06-10', reason: 'lame' },
    fact: { kind: 'hold', until: '2026-06-10', reason: 'lame' },
  },
  block: { values: { block: 'spring' }, fact: { kind: 'block', block: 'spring' } },
  'to-bull': { values: {}, fact: { kind: 'to-bull' } },
  note: { values: { note: ' kicks ' }, fact: { kind: 'note', note: 'kicks' } },
  bar: { values: { reason: 'cull' }, fact: { kind: 'bar', reason: 'cull' } },
  unbar: { values: { reason: 'kept after all' }, fact: { kind: 'unbar', reason: 'kept after all' } },
  calving: {
    values: { ease: '3', 'calf-sex': 'f m', calves: '2', dead: '1', time: 'morning' },
    fact: { kind: 'calving', ease: 3, calfSex: 'FM', calves: 2, dead: 1, time: 'morning' },
  },
  loss: { values: { date: ago(2) }, fact: { kind: 'loss', date: ago(2) } },
  left: { values: { reason: 'sold' }, fact: { kind: 'left', reason: 'sold' } },
  score: { values: { condition: '2,75' }, fact: { kind: 'score', condition: 2.75 } },
  dry: { values: {}, fact: { kind: 'dry' } },
  'with-bull': { values: { bull: 'Otto' }, fact: { kind: 'with-bull', bull: 'Otto' } },
  'from-bull': { values: { bull: 'Otto' }, fact: { kind: 'from-bull', bull: 'Otto' } },
  'bull-service': {
    values: { bull: 'Otto', time: '0510' },
    fact: { kind: 'service', natural: true, sire: 'Otto', time: '05:10' },
  },
}

for (const name of formNames) {
  test(`${name}: everything that it can hold becomes the fact`, () => {
    expect(fact(name, whole[name].values)).toMatchObject({ about: 'cow-412', date: DAY, ...whole[name].fact })
  })

  test(`${name}: as it opens it records as few fields as it can, and today's date`, () => {
    const reading = read(name, name === 'note' ? { note: 'x' } : name === 'score' ? { condition: '3' } : {})
    expect(reading.wrong).toBeUndefined()
    for (const value of Object.values((reading as { facts: readonly object[] }).facts[0] ?? {}))
      expect(value).not.toBe('')
  })

  test(`${name}: a date that is none, to come, or before her birth is refused`, () => {
    expect(wrong(name, { ...whole[name].values, date: '30 Feb' })).toMatchObject({ date: 'form-not-a-date' })
    expect(wrong(name, { ...whole[name].values, date: '2026-05-29' })).toMatchObject({ date: 'form-future' })
    expect(wrong(name, { ...whole[name].values, date: '2019-01-01' })).toMatchObject({
      date: 'form-before-birth',
    })
    expect(wrong(name, { ...whole[name].values, date: '' })).toMatchObject({ date: 'form-missing' })
  })
}

test('what must stand there is asked for', () => {
  expect(wrong('note', { note: '  ' })).toEqual({ note: 'form-missing' })
  expect(wrong('score', { condition: '' })).toEqual({ condition: 'form-missing' })
  expect(wrong('service', { sire: '' })).toEqual({ sire: 'form-missing' })
})

test('a time that is none or still to come is refused; on an earlier day any time will do', () => {
  for (const name of ['heat', 'service', 'bull-service'] as const) {
    expect(wrong(name, { time: '25:00' })).toEqual({ time: 'form-not-a-time' })
    expect(wrong(name, { time: '0516' })).toEqual({ time: 'form-time-ahead' })
    expect(wrong(name, { time: '2359', date: ago(1) })).toEqual({})
    expect(wrong(name, { time: '' })).toEqual({})
  }
})

test('numbers are held to their range and steps', () => {
  expect(wrong('check', { age: '19' })).toEqual({ age: 'form-out-of-range' })
  expect(wrong('check', { age: '291' })).toEqual({ age: 'form-out-of-range' })
  expect(wrong('check', { age: '30.5' })).toEqual({ age: 'form-whole' })
  expect(wrong('check', { age: 'x' })).toEqual({ age: 'form-not-a-number' })
  expect(wrong('check', { foetuses: '6' })).toEqual({ foetuses: 'form-out-of-range' })
  expect(wrong('score', { condition: '5.25' })).toEqual({ condition: 'form-out-of-range' })
  expect(wrong('score', { condition: '2.6' })).toEqual({ condition: 'form-step' })
  expect(wrong('calving', { calves: '0', 'calf-sex': '' })).toMatchObject({ calves: 'form-out-of-range' })
})

test('a result that is not in calf takes neither age nor calves nor a service', () => {
  expect(wrong('check', { result: 'empty', age: '40', foetuses: '1' })).toEqual({
    age: 'form-only-in-calf',
    foetuses: 'form-only-in-calf',
  })
  expect(wrong('check', { result: 'empty', 'service-date': ago(32) }, '61')).toEqual({
    'service-date': 'form-only-in-calf-service',
  })
})

test('a check may name a service of hers, not one after it', () => {
  expect(fact('check', { 'service-date': ago(32) }, '61')).toMatchObject({ serviceDate: ago(32) })
  expect(wrong('check', { 'service-date': ago(32), date: ago(40) }, '61')).toEqual({
    'service-date': 'form-service-after',
  })
  expect(wrong('check', { 'service-date': ago(31) }, '61')).toEqual({ 'service-date': 'form-not-a-choice' })
})

test('calves, their sex and the dead must agree', () => {
  expect(wrong('calving', { calves: '1', dead: '2' })).toEqual({ dead: 'form-more-dead' })
  expect(wrong('calving', { calves: '2', 'calf-sex': 'F' })).toEqual({ 'calf-sex': 'form-calf-count' })
  expect(wrong('calving', { 'calf-sex': 'H' })).toEqual({ 'calf-sex': 'form-calf-sex' })
})

test('a day ahead is from the date of the fact on', () => {
  expect(wrong('hold', { until: ago(1) })).toEqual({ until: 'form-before' })
  expect(wrong('hold', { until: 'soon' })).toEqual({ until: 'form-not-a-date' })
  expect(wrong('examined', { 'serve-on': ago(3) })).toEqual({ 'serve-on': 'form-before' })
  expect(wrong('examined', { session: 'morning' })).toEqual({ 'serve-on': 'form-session-without-date' })
})

test('a text is not endless', () => {
  expect(wrong('note', { note: 'x'.repeat(501) })).toEqual({ note: 'form-too-long' })
  expect(wrong('note', { note: 'x'.repeat(500) })).toEqual({})
})

test('dates as people type them', () => {
  const today = isoDay('2026-05-28')
  const typed = (text: string, ahead = false): string | undefined => {
    const day = readTypedDay(text, today, ahead)
    return day === undefined ? undefined : dayIso(day)
  }
  expect(typed('2026-05-01')).toBe('2026-05-01')
  expect(typed('1 May')).toBe('2026-05-01')
  expect(typed('1 may 2025')).toBe('2025-05-01')
  expect(typed('30 Dec')).toBe('2025-12-30')
  expect(typed('30 Dec', true)).toBe('2026-12-30')
  expect(typed('28 May', true)).toBe('2026-05-28')
  expect(typed('29 Feb 2024')).toBe('2024-02-29')
  expect(typed('29 Feb 2026')).toBeUndefined()
  expect(typed('Today')).toBe('2026-05-28')
  expect(typed('yesterday')).toBe('2026-05-27')
  expect(typed('tomorrow')).toBe('2026-05-29')
  // Day and month could be either: not guessed.
  expect(typed('5/6')).toBeUndefined()
  expect(typed('05/06/2026')).toBeUndefined()
  expect(typed('1 Ma')).toBeUndefined()
})

test('times as people type them', () => {
  expect(['541', '0541', '5:41', '05.41'].map(readTypedTime)).toEqual(['05:41', '05:41', '05:41', '05:41'])
  expect(['m', 'morning', 'ev', '2400', '0560', 'noon', ''].map(readTypedTime)).toEqual([
    'morning',
    'morning',
    'evening',
    undefined,
    undefined,
    undefined,
    undefined,
  ])
})

test('the first character typed replaces what stands in a field, the next are added, the last is taken away', () => {
  let form = openForm('heat', settingFor('412'), {}, 'time')
  expect(form.values.time).toBe('05:15')
  form = typeInto(form, '0')
  form = typeInto(form, '44')
  expect(form.values.time).toBe('044')
  form = rubIn(form)
  expect(form.values.time).toBe('04')
  form = toField(form, 1)
  expect(form.fields[form.at]?.name).toBe('date')
  form = toField(toField(form, -1), -1)
  expect(form.fields[form.at]?.name).toBe('how')
})

test('a choice turns round, and a letter takes the next choice that begins so', () => {
  let form = openForm('heat', settingFor('412'), {}, 'how')
  form = turn(form, -1)
  expect(form.values.how).toBe('other')
  form = turn(form, 1)
  expect(form.values.how).toBe('standing')
  form = typeInto(form, 'p')
  expect(form.values.how).toBe('paint')
  form = typeInto(form, 'z')
  expect(form.values.how).toBe('paint')
})

test('a date turns by a day', () => {
  let form = openForm('heat', settingFor('412'), {}, 'date')
  form = turn(turn(form, -1), -1)
  expect(form.values.date).toBe(ago(2))
})

test('the straw that turns up fills kind and batch; another kind of the same sire has its own batch', () => {
  let form = openForm('service', settingFor('412'))
  expect(form.values).toMatchObject({ sire: 'S21', kind: 'conventional', batch: '9' })
  form = turn(form, 1)
  expect(form.values).toMatchObject({ sire: 'S17', kind: 'conventional', batch: '4' })
  form = turn(toField(form, 1), 1)
  expect(form.values).toMatchObject({ sire: 'S17', kind: 'sexed', batch: '' })
})

test('pasted lines become one line', () => {
  const form = typeInto(openForm('note', settingFor('412')), 'one\r\ntwo\tthree')
  expect(form.values.note).toBe('one two three')
})

test('a wrong form goes to its first wrong field and records nothing', () => {
  let form = openForm('check', settingFor('61'), { age: '500', foetuses: '9' }, 'method')
  const outcome = accept(form)
  if (!('form' in outcome)) throw new Error('it was accepted')
  form = outcome.form
  expect(form.fields[form.at]?.name).toBe('age')
  expect(Object.keys(form.wrong)).toEqual(['age', 'foetuses'])
  form = typeInto(form, '40')
  expect(Object.keys(form.wrong)).toEqual(['foetuses'])
})

test('a danger is shown first, and recording once more confirms it; a change asks anew', () => {
  const form = openForm('service', settingFor('90'))
  const asked = accept(form)
  if (!('form' in asked)) throw new Error('it was accepted')
  expect(asked.form.danger).toBe('danger-in-calf')
  expect('facts' in accept(asked.form)).toBe(true)
  const changed = typeInto(toField(asked.form, 3), 'J')
  expect(changed.danger).toBeUndefined()
  expect('form' in accept(changed)).toBe(true)
})

test('what speaks against a service is known', () => {
  const danger = (number: string): string | undefined => {
    const setting = settingFor(number)
    return forms.service.danger?.(forms.service.begin(setting), setting)
  }
  expect(danger('288')).toBe('danger-in-calf')
  expect(danger('319')).toBe('danger-calved')
  expect(danger('71')).toBe('danger-chances')
  expect(danger('412')).toBeUndefined()
})
