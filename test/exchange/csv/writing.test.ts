import fc from 'fast-check'
import { expect, test } from 'vitest'
import { neutral, original } from '../../../source/exchange/csv/formula.ts'
import { readSheet } from '../../../source/exchange/csv/reading.ts'
import { csvText } from '../../../source/exchange/csv/writing.ts'

test('a header, commas, CRLF, and quotes only where they are needed (RFC 4180)', () => {
  expect(csvText(['number', 'note'], [['412', 'lame, "left" hind\nfoot']])).toBe(
    'number,note\r\n412,"lame, ""left"" hind\nfoot"\r\n',
  )
})

// OWASP, CSV Injection: cells that begin with = + - @, tab, carriage return or line feed, and their full-width forms.
test.each(['=1+1', '+1', '-1', '@x', '\t=1', '\r=1', '\n=1', '＝1', '＋1', '－1', '＠x', "'=1"])(
  'no spreadsheet runs %j, and it is read back unharmed',
  (text) => {
    expect(neutral(text)).toBe(`'${text}`)
    expect(original(neutral(text))).toBe(text)
  },
)

test('an apostrophe before anything else stays as it is', () => {
  expect(neutral("'s Hertog")).toBe("'s Hertog")
  expect(original("'s Hertog")).toBe("'s Hertog")
})

test('whatever is written is read back, by either separator', () => {
  const text = fc.oneof(
    fc.string({ unit: 'grapheme' }),
    fc.string({ unit: fc.constantFrom('=', "'", '"', ',', ';', '\n', '\r', ' ', '\t', '-', '@', 'a') }),
  )
  fc.assert(
    fc.property(fc.array(fc.tuple(text, text), { maxLength: 8 }), (rows) => {
      const filled = rows.filter(
        (row) => row.some((cell) => cell.trim() !== '') && !row.join('').includes('\0'),
      )
      const sheet = readSheet(Buffer.from(csvText(['left', 'right'], filled)), 'x.csv')
      expect(sheet.ok && sheet.value.rows.map(({ cells }) => cells)).toEqual(filled)
    }),
    { numRuns: 500 },
  )
})
