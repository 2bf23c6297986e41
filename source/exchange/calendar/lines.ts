/** Content lines of a calendar. Source: RFC 5545, Internet Calendaring and Scheduling (iCalendar), 2009. */

/** Longest line, octets, without its line end (RFC 5545, 3.1). */
const LONGEST = 75

const encoder = new TextEncoder()
const octets = (text: string): number => encoder.encode(text).length

/**
 * A line cut into lines of at most 75 octets, the second and later ones behind a space; no letter is cut in two.
 *
 * @returns the lines with their CRLF
 * @example folded('SUMMARY:short') // 'SUMMARY:short\r\n'
 */
export function folded(line: string): string {
  let text = ''
  let width = 0
  for (const letter of line) {
    const size = octets(letter)
    if (width + size > LONGEST) {
      text += '\r\n '
      width = 1
    }
    text += letter
    width += size
  }
  return `${text}\r\n`
}

/**
 * A text as the value of a property: backslash, semicolon, comma and line ends escaped, other controls left out
 * (RFC 5545, 3.3.11).
 *
 * @example escaped('a, b; c') // 'a\\, b\\; c'
 */
export const escaped = (text: string): string =>
  text
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\r\n|\r|\n/g, '\\n')
    .replace(/\p{Cc}/gu, '')
