import { expect, test } from 'vitest'
import { openBook } from '../../source/breeding/book.ts'
import { accept, openHerdForm, toField, turn, typeInto } from '../../source/morning/forms/edit.ts'
import type { HerdSetting, Values } from '../../source/morning/forms/form.ts'
import { herdForms } from '../../source/morning/forms/forms.ts'
import { ago, at, DAY } from '../terminal/support/herd.ts'
import { seasonHerd } from '../terminal/support/season-herd.ts'

const setting: HerdSetting = { book: openBook(seasonHerd()), now: at('05:15'), by: 'MK', date: DAY }
type Name = 'delivery' | 'stock-take' | 'spoiled' | 'nitrogen'

const read = (name: Name, values: Values) => {
  const form = herdForms[name]
  return form.read({ ...form.begin(setting), ...values }, setting)
}
const wrong = (name: Name, values: Values): Record<string, string> =>
  Object.fromEntries(
    Object.entries(read(name, values).wrong ?? {}).map(([field, problem]) => [field, problem.code]),
  )
const fact = (name: Name, values: Values) => {
  const reading = read(name, values)
  if (reading.wrong !== undefined) throw new Error(JSON.stringify(reading.wrong))
  expect(reading.facts).toHaveLength(1)
  return reading.facts[0]
}

const lot = { sire: 'S40', kind: 'sexed', batch: '7', flask: 'house', canister: '3', count: '25' }
const whole: Readonly<Record<Name, { values: Values; fact: Record<string, unknown> }>> = {
  delivery: {
    values: { ...lot, time: '0430' },
    fact: {
      kind: 'delivery',
      time: '04:30',
      sire: 'S40',
      straw: 'sexed',
      batch: '7',
      flask: 'house',
      canister: '3',
      count: 25,
    },
  },
  'stock-take': {
    values: {
      ...lot,
      'sire-name': 'Fennel',
      breed: 'Jersey',
      volume: '0.25',
      'easy-calving': 'no',
      gestation: '279',
      time: '0500',
    },
    fact: {
      kind: 'stock-take',
      time: '05:00',
      sire: 'S40',
      straw: 'sexed',
      count: 25,
      sireName: 'Fennel',
      breed: 'Jersey',
      volumeMl: 0.25,
      easyCalving: false,
      gestationDays: 279,
    },
  },
  spoiled: { values: { ...lot, count: '2' }, fact: { kind: 'spoiled', sire: 'S40', count: 2 } },
  nitrogen: {
    values: { depth: '27,5', flask: 'van', time: '0510' },
    fact: { kind: 'nitrogen', depthCm: 27.5, flask: 'van', time: '05:10' },
  },
}

for (const name of ['delivery', 'stock-take', 'spoiled', 'nitrogen'] as const) {
  test(`${name}: everything that it can hold becomes the fact, about the herd`, () => {
    expect(fact(name, whole[name].values)).toMatchObject({ about: 'herd', date: DAY, ...whole[name].fact })
  })

  test(`${name}: what is left empty is left out of the fact`, () => {
    const least: Values =
      name === 'nitrogen'
        ? { depth: '20', flask: '', time: '' }
        : { sire: 'S40', kind: 'beef', batch: '', flask: '', canister: '', count: '4', time: '' }
    const made = fact(name, least) as object
    expect(Object.values(made)).not.toContain('')
    expect(Object.keys(made)).not.toContain('batch')
    expect(Object.keys(made)).not.toContain('flask')
    expect(Object.keys(made)).not.toContain('time')
  })

  test(`${name}: a date that is none or to come is refused, and so is what must stand there`, () => {
    expect(wrong(name, { ...whole[name].values, date: '30 Feb' })).toEqual({ date: 'form-not-a-date' })
    expect(wrong(name, { ...whole[name].values, date: '2026-05-29' })).toEqual({ date: 'form-future' })
    expect(wrong(name, { ...whole[name].values, time: '0516' })).toEqual({ time: 'form-time-ahead' })
    expect(wrong(name, { ...whole[name].values, date: ago(1), time: '2300' })).toEqual({})
    const counted = name === 'nitrogen' ? 'depth' : 'count'
    expect(wrong(name, { ...whole[name].values, [counted]: '' })).toEqual({ [counted]: 'form-missing' })
  })
}

test('counts are whole and within the file’s limits: a count may be none, a delivery not', () => {
  expect(wrong('stock-take', { count: '0' })).toEqual({})
  expect(wrong('delivery', { count: '0' })).toEqual({ count: 'form-out-of-range' })
  expect(wrong('spoiled', { count: '100001' })).toEqual({ count: 'form-out-of-range' })
  expect(wrong('delivery', { count: '1.5' })).toEqual({ count: 'form-whole' })
  expect(wrong('nitrogen', { depth: '201' })).toEqual({ depth: 'form-out-of-range' })
  expect(wrong('nitrogen', { depth: '20.3' })).toEqual({ depth: 'form-step' })
  expect(wrong('stock-take', { count: '5', gestation: '259' })).toEqual({ gestation: 'form-out-of-range' })
  expect(wrong('delivery', { sire: ' ', count: '5' })).toEqual({ sire: 'form-missing' })
  expect(wrong('delivery', { kind: 'frozen', count: '5' })).toEqual({ kind: 'form-not-a-choice' })
})

test('a new sire is taken as he is typed, though another begins so', () => {
  const form = typeInto(openHerdForm('delivery', setting, { count: '5' }, 'sire'), 'S3')
  const outcome = accept(form)
  expect('facts' in outcome && outcome.facts[0]).toMatchObject({ sire: 'S3' })
})

test('a sire typed whole is known, in whatever case; Left and Right go through the lots', () => {
  const typed = typeInto(openHerdForm('stock-take', setting, {}, 'sire'), 's30')
  expect(typed.values).toMatchObject({ kind: 'sexed', batch: '12', flask: 'house', canister: '2' })
  const outcome = accept(typeInto(toField({ ...typed, at: 4 }, 1), '8'))
  expect('facts' in outcome && outcome.facts[0]).toMatchObject({ sire: 'S30', straw: 'sexed', count: 8 })
  const first = openHerdForm('stock-take', setting, {}, 'sire')
  const seen = new Set<string>()
  let form = first
  for (let i = 0; i < 10; i += 1) {
    seen.add(`${form.values.sire} ${form.values.kind}`)
    form = turn(form, 1)
  }
  expect(seen).toContain('S30 sexed')
  expect(seen).toContain('S9 conventional')
  expect(turn(turn(first, 1), -1).values).toEqual(first.values)
})

test('another kind keeps where the straws are', () => {
  const form = openHerdForm('delivery', setting, { sire: 'S40', flask: 'van', canister: '4' }, 'kind')
  expect(typeInto(form, 's').values).toMatchObject({ kind: 'sexed', flask: 'van', canister: '4' })
})
