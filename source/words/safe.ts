/** Text from a file or a key press, made harmless before it reaches a terminal. */

/** Controls, unseen format characters (direction marks, zero width), lone halves of a pair, line separators. */
const harmful = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu

const code = (text: string): string =>
  `<${(text.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}>`

/**
 * Shows what a terminal would act upon, or hide, by its code in angle brackets; everything else stays.
 *
 * @example safeText('a\u001b[31mb') // 'a<001B>[31mb'
 */
export const safeText = (text: string): string => text.replace(harmful, code)
