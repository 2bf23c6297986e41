import { expect, test } from 'vitest'
import {
  type Cell,
  calfSexes,
  choice,
  date,
  dates,
  decimal,
  text,
  timeOfDay,
  whole,
  word,
  yesNo,
} from '../../../source/exchange/csv/cells.ts'
import type { DateForm } from '../../../source/exchange/csv/date-forms.ts'

const read = (cell: Cell, typed: string, form?: DateForm): unknown => {
  const found = cell.read(typed, form)
  return 'value' in found ? found.value : found.refused
}

test.each<[string, Cell, string, unknown]>([
  ['a text keeps its spaces', text, ' x ', ' x '],
  ['a word does not', word, ' x ', 'x'],
  ['a choice in capitals and with a space', choice(['to-bull', 'F']), 'To Bull', 'to-bull'],
  ['a choice in small letters', choice(['to-bull', 'F']), 'f', 'F'],
  ['no choice', choice(['to-bull']), 'bull', 'cell-choice'],
  ['a whole number', whole(0, 30), ' 12 ', 12],
  ['one too many', whole(0, 30), '31', 'cell-whole'],
  ['half a number', whole(0, 30), '1.5', 'cell-whole'],
  ['a number that is not written out', whole(0, 30), '1e1', 'cell-whole'],
  ['a quarter', decimal(1, 5, 0.25), '3.25', 3.25],
  ['a comma', decimal(1, 5, 0.25), '3,25', 3.25],
  ['a tenth of a score', decimal(1, 5, 0.25), '3.1', 'cell-steps'],
  ['two commas', decimal(0, 200), '1,2,3', 'cell-decimal'],
  ['yes', yesNo, 'Y', true],
  ['no', yesNo, 'FALSE', false],
  ['neither', yesNo, 'perhaps', 'cell-yes-no'],
  ['a time', timeOfDay, '15:30', '15:30'],
  ['an hour of one digit', timeOfDay, '5:30', '05:30'],
  ['a milking', timeOfDay, 'Evening', 'evening'],
  ['midnight at the end', timeOfDay, '24:00', 'cell-time'],
  ['sexes of the calves', calfSexes, 'fm', 'FM'],
  ['no sexes', calfSexes, 'twins', 'cell-calf-sex'],
  ['a date', date, ' 2026-05-28 ', '2026-05-28'],
  ['29 February', date, '2028-02-29', '2028-02-29'],
  ['29 February of a common year', date, '2026-02-29', 'cell-date'],
  ['a date without zeros', date, '2026-5-8', 'cell-date'],
  ['a date with a time', date, '2026-05-28 06:10', 'cell-date'],
  ['a date with the midnight of a spreadsheet', date, '2026-05-28 00:00:00', '2026-05-28'],
  ['the same with a T', date, '2026-05-28T00:00:00', '2026-05-28'],
  ['another form', date, '28/05/2026', 'cell-date-form'],
  ['another form that is no date', date, '32/13/2026', 'cell-date'],
  ['some dates', dates, '2026-07-20  2026-08-20', ['2026-07-20', '2026-08-20']],
  ['some dates and a word', dates, '2026-07-20 soon', 'cell-date'],
])('%s', (_what, cell, typed, value) => {
  expect(read(cell, typed)).toEqual(value)
})

test.each<[DateForm, string, unknown]>([
  ['day-first', '28/05/2026', '2026-05-28'],
  ['day-first', '28.5.2026', '2026-05-28'],
  ['day-first', '28-05-2026', '2026-05-28'],
  ['day-first', '2026-05-28', '2026-05-28'],
  ['day-first', '05/28/2026', 'cell-date'],
  ['day-first', '28/05-2026', 'cell-date'],
  ['day-first', '28/05/26', 'cell-date'],
  ['month-first', '05/28/2026', '2026-05-28'],
  ['month-first', '28/05/2026', 'cell-date'],
])('%s: %s', (form, typed, value) => {
  expect(read(date, typed, form)).toBe(value)
})
