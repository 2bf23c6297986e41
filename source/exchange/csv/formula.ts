/**
 * A cell that begins like a formula is run by a spreadsheet. Behind an apostrophe it is text, there and here.
 * Source: OWASP, CSV Injection (the first characters to look for).
 */

const begins = /^'*[=+\-@\t\r\n＝＋－＠]/

/**
 * A text as it may stand in a cell.
 *
 * @example neutral('=1+1') // "'=1+1"
 */
export const neutral = (text: string): string => (begins.test(text) ? `'${text}` : text)

/**
 * The text that `neutral` made a cell of.
 *
 * @example original("'=1+1") // '=1+1'
 */
export const original = (cell: string): string =>
  cell.startsWith("'") && begins.test(cell) ? cell.slice(1) : cell
