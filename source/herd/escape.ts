/**
 * Characters that a terminal or an editor acts upon, or hides, instead of showing them: controls, format characters
 * (direction marks, zero width, tags), line and paragraph separators. JSON itself escapes lone halves of a pair.
 */
const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu

const asEscape = (text: string): string => {
  let escaped = ''
  for (let unit = 0; unit < text.length; unit += 1) {
    escaped += `\\u${text.charCodeAt(unit).toString(16).padStart(4, '0')}`
  }
  return escaped
}

/**
 * JSON in one line that is harmless when a terminal shows it: every control, direction mark and invisible
 * character stands as a `\u` escape, and reading it gives the same value.
 *
 * @param value JSON data: no functions, no infinite numbers
 * @example harmlessJson({ note: 'a\u202eb' }) // '{"note":"a\\u202eb"}'
 */
export const harmlessJson = (value: unknown): string => JSON.stringify(value).replace(unseen, asEscape)
