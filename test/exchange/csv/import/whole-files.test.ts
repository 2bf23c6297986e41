import { describe, expect, test } from 'vitest'
import { cow, herd, imported, refusals } from '../support/herd.ts'

describe('whole files', () => {
  test.each([
    ['a column is missing', 'number,date\n1,2026-05-01\n', ['csv-column-missing facts.csv:1 fact']],
    [
      'a column is there twice',
      'number,date,fact,Date\n1,2026-05-01,heat,\n',
      ['csv-column-twice facts.csv:1 date'],
    ],
    [
      'a quote never closes',
      'number,date,fact\n1,2026-05-01,heat\n"1,2026-05-02,heat\n',
      ['csv-quote-open facts.csv:3'],
    ],
    ['it is empty', '', ['csv-empty facts.csv']],
  ])('%s: nothing of any table is recorded', (_what, text, problems) => {
    const result = imported(herd(cow('1')), { facts: text, animals: 'number\n2\n' })
    expect(refusals(result)).toEqual(problems)
    expect(result.facts).toEqual([])
  })

  test('unknown columns are named and left out, other spellings are read and shown, order is free', () => {
    const result = imported(herd(cow('1')), {
      facts: 'Fact;Foetal Age;NUMBER;weather;date;Method;result\ncheck;35;1;fine;2026-05-01;hand;pregnant\n',
    })
    expect(result.facts).toEqual([
      { about: '1', date: '2026-05-01', kind: 'check', method: 'hand', result: 'pregnant', foetalAge: 35 },
    ])
    expect(
      result.tables[0]?.notices.map(({ code, values }) => [code, values?.found ?? values?.column]),
    ).toEqual([
      ['column-matched', 'Foetal Age'],
      ['column-unknown', 'weather'],
    ])
  })

  test('dates in another form are offered with what they would mean, and read only as said', () => {
    const file = { facts: 'number,date,fact\n1,01/05/2026,heat\n1,28/05/2026,heat\n' }
    expect(imported(herd(cow('1')), file).tables[0]?.notices[0]?.values).toEqual({
      count: 2,
      'day-first fits': 2,
      'day-first value': '01/05/2026',
      'day-first date': '2026-05-01',
      'month-first fits': 1,
      'month-first value': '01/05/2026',
      'month-first date': '2026-01-05',
    })
    const dates = (form: 'day-first' | 'month-first') =>
      imported(herd(cow('1')), file, form).facts.map(({ date }) => date)
    expect(dates('day-first')).toEqual(['2026-05-01', '2026-05-28'])
    expect(dates('month-first')).toEqual(['2026-01-05'])
  })
})
