/**
 * Characters that a terminal or an editor acts upon, or hides, instead of showing them: DEL and the C1 controls,
 * soft hyphen, zero-width and direction marks, line and paragraph separators, annotation and tag characters.
 * JSON itself escapes the C0 controls.
 */
const unseen =
  /[\u007f-\u009f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|\udb40[\udc00-\udfff]/g

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
