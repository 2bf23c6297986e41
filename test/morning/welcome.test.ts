import { expect, test } from 'vitest'
import { isoDay } from '../../source/breeding/day.ts'
import { actWelcome, openWelcome, type Welcome, type WelcomeAction } from '../../source/morning/welcome.ts'

const first = openWelcome({ day: isoDay('2026-05-28'), time: '05:15' }, 'Europe/Dublin')
const after = (welcome: Welcome, ...actions: readonly WelcomeAction[]): Welcome =>
  actions.reduce((state, action) => actWelcome(state, action).welcome, welcome)
const down: WelcomeAction = { do: 'move', by: 1, most: 0 }
const choose: WelcomeAction = { do: 'choose' }
const type = (text: string): WelcomeAction => ({ do: 'put', text })
const next: WelcomeAction = { do: 'field', by: 1 }

test('the sample herd is the first choice', () => {
  expect(actWelcome(first, choose).wish).toEqual({ is: 'sample' })
})

test('a new herd: the form begins with the zone of the computer, and says what is missing', () => {
  const form = after(first, down, choose)
  expect(form.form?.values).toMatchObject({
    'herd-file': 'herd.json',
    zone: 'Europe/Dublin',
    milkings: '05:30 15:30',
  })
  const refused = actWelcome(form, choose)
  expect(refused.wish).toBeUndefined()
  expect(refused.welcome.form?.wrong['farm-name']?.code).toBe('form-missing')
})

test('a new herd: the farm is read', () => {
  const named = after(first, down, choose, type('Long Acre'))
  expect(actWelcome(named, choose).wish).toMatchObject({
    is: 'herd',
    tables: false,
    farm: {
      kind: 'farm',
      name: 'Long Acre',
      zone: 'Europe/Dublin',
      milkings: ['05:30', '15:30'],
      date: '2026-05-28',
    },
  })
})

test.each([
  ['Atlantis/Deep', '05:30', 'zone', 'form-zone'],
  ['Europe/Dublin', '15:30 05:30', 'milkings', 'form-milkings'],
  ['Europe/Dublin', '05:30 10:00 15:30', 'milkings', 'form-milkings'],
  ['Europe/Dublin', 'noon', 'milkings', 'form-milkings'],
])('a new herd: zone %s, milkings %s is refused at the %s', (zone, milkings, field, code) => {
  const typed = after(first, down, choose, type('Long Acre'), next, type(zone), next, type(milkings))
  const refused = actWelcome(typed, choose)
  expect(refused.wish).toBeUndefined()
  expect(refused.welcome.form?.wrong[field]?.code).toBe(code)
})

test('from tables: one must be named; the report is shown, agreed to or left', () => {
  const form = after(first, down, down, choose, type('Long Acre'))
  expect(actWelcome(form, choose).welcome.form?.wrong['table-animals']?.code).toBe('form-no-table')
  const named = after(form, next, next, next, type('animals.csv'))
  expect(actWelcome(named, choose).wish).toMatchObject({
    tables: true,
    values: { 'table-animals': 'animals.csv' },
  })
  const report = after(named, { do: 'report', lines: ['animals.csv: 3 new', 'a', 'b'] })
  expect(actWelcome(report, choose).record).toBe(true)
  expect(after(report, { do: 'move', by: 5, most: 2 }).top).toBe(2)
  const back = after(report, { do: 'cancel' })
  expect(back.report).toBeUndefined()
  expect(back.form?.values['table-animals']).toBe('animals.csv')
  expect(after(back, { do: 'cancel' }).form).toBeUndefined()
})

test('what went wrong is shown until something is typed', () => {
  const failed = after(first, down, choose, { do: 'wrong', sentences: ['herd.json is there already.'] })
  expect(failed.wrong).toEqual(['herd.json is there already.'])
  expect(after(failed, type('x')).wrong).toEqual([])
})

test('tables of the usual names that lie in the folder stand in the form', () => {
  const found = openWelcome(first.now, 'Europe/Dublin', { 'table-animals': 'animals.csv' })
  const values = after(found, down, down, choose).form?.values
  expect(values).toMatchObject({ 'table-animals': 'animals.csv', 'table-facts': '' })
  expect(after(found, down, choose).form?.values).not.toHaveProperty('table-animals')
})
