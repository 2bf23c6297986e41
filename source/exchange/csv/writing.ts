/** Rows as CSV. Source: Y. Shafranovich, RFC 4180, Common Format and MIME Type for CSV Files, 2005, section 2. */
import { neutral } from './formula.ts'

const mustQuote = /[",;\r\n]|^\s|\s$/

/** A cell, quoted where it must be; a semicolon too, so that a reader who takes it for the separator is not misled. */
function written(text: string): string {
  const cell = neutral(text)
  return mustQuote.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell
}

/**
 * CSV text: UTF-8, a header row, commas, CRLF after every row.
 *
 * @param header names of the columns
 * @param rows as many cells a row as there are names; an empty text where nothing is known
 * @example csvText(['number', 'note'], [['412', 'lame, left']]) // 'number,note\r\n412,"lame, left"\r\n'
 */
export const csvText = (header: readonly string[], rows: readonly (readonly string[])[]): string =>
  [header, ...rows].map((row) => `${row.map(written).join(',')}\r\n`).join('')
