import { expect, test } from 'vitest'
import { readSheet } from '../../../source/exchange/csv/reading.ts'

const cells = (text: string | Uint8Array): string[][] => {
  const sheet = readSheet(typeof text === 'string' ? Buffer.from(text) : text, 'x.csv')
  if (!sheet.ok) throw new Error(sheet.problems.map(({ code, path }) => `${code} ${path}`).join())
  return [sheet.value.header, ...sheet.value.rows.map((row) => row.cells)].map((row) => [...row])
}
const problem = (text: string | Uint8Array): string => {
  const sheet = readSheet(typeof text === 'string' ? Buffer.from(text) : text, 'x.csv')
  return sheet.ok ? 'none' : sheet.problems.map(({ code, path }) => `${code} ${path}`).join()
}

// Y. Shafranovich, RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files, 2005, section 2:
// the examples of its seven rules.
test.each([
  [
    '1: records end with CRLF',
    'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '2: the last may have no line end',
    'aaa,bbb,ccc\r\nzzz,yyy,xxx',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '3: a header line',
    'field_name,field_name2\r\naaa,bbb\r\n',
    [
      ['field_name', 'field_name2'],
      ['aaa', 'bbb'],
    ],
  ],
  ['4: spaces are part of a field', 'aaa, bbb ,ccc', [['aaa', ' bbb ', 'ccc']]],
  [
    '5: fields may be quoted',
    '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '6: line ends and commas in quotes',
    '"aaa","b\r\nb,b","ccc"\r\nzzz,yyy,xxx',
    [
      ['aaa', 'b\r\nb,b', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  ['7: a quote within is doubled', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
])('RFC 4180 rule %s', (_rule, text, expected) => {
  expect(cells(text)).toEqual(expected)
})

test.each([
  ['a byte order mark', '\ufeffa,b\n1,2\n'],
  ['LF', 'a,b\n1,2\n'],
  ['CR', 'a,b\r1,2\r'],
  ['semicolons', 'a;b\n1;2\n'],
  ['empty lines', '\n\na,b\n\n1,2\n,\n'],
  ['line ends of two kinds', 'a,b\r\n1,2\n'],
])('reads %s', (_what, text) => {
  expect(cells(text)).toEqual([
    ['a', 'b'],
    ['1', '2'],
  ])
})

test('a semicolon file keeps its commas, a comma file its semicolons', () => {
  expect(cells('a;b\n3,25;x')).toEqual([
    ['a', 'b'],
    ['3,25', 'x'],
  ])
  expect(cells('a,b\n3;25,x')).toEqual([
    ['a', 'b'],
    ['3;25', 'x'],
  ])
  expect(cells('"a;b;c",d\n1,2')).toEqual([
    ['a;b;c', 'd'],
    ['1', '2'],
  ])
})

test('Latin-1 and UTF-16 are recognised and named', () => {
  const of = (bytes: Uint8Array) => {
    const sheet = readSheet(bytes, 'x.csv')
    return sheet.ok ? [sheet.value.encoding, sheet.value.rows[0]?.cells[0]] : sheet.problems
  }
  expect(of(Buffer.from('name\nBläss', 'latin1'))).toEqual(['Latin-1', 'Bläss'])
  expect(of(Buffer.from('name\nBläss', 'utf8'))).toEqual(['UTF-8', 'Bläss'])
  expect(of(Buffer.from('\ufeffname\nBläss', 'utf16le'))).toEqual(['UTF-16', 'Bläss'])
  expect(of(Buffer.from('\ufeffname\nBläss', 'utf16le').swap16())).toEqual(['UTF-16', 'Bläss'])
})

test('each row knows its line, whatever stands in quotes before it', () => {
  const sheet = readSheet(Buffer.from('a,b\r\n"x\r\ny\n",1\r\n\r\n2,3\r\n'), 'x.csv')
  expect(sheet.ok && sheet.value.rows.map(({ line }) => line)).toEqual([2, 6])
})

test.each([
  ['nothing', '', 'csv-empty x.csv'],
  ['blanks', ' \n\n', 'csv-empty x.csv'],
  ['a quote that never closes', 'a,b\n1,2\n3,"4\n5,6\n', 'csv-quote-open x.csv:3'],
  ['a quote inside a text', 'a,b\n1,2\n3,4"5\n', 'csv-quote x.csv:3'],
  ['text after a quote', 'a,b\n"1"2,3\n', 'csv-quote x.csv:2'],
  ['tabs', 'a\tb\n1\t2\n', 'csv-tabs x.csv'],
  ['bytes that are no text', 'a,b\n\u0000\u0001,2\n', 'csv-not-text x.csv'],
])('refuses %s', (_what, text, expected) => {
  expect(problem(text)).toBe(expected)
})
