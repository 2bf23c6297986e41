/** Values of JSON that somebody else wrote, read leniently. */

export type Loose = Readonly<Record<string, unknown>>

export const isObject = (value: unknown): value is Loose =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** A list; one thing where a list is due counts as a list of one. */
export const listOf = (value: unknown): readonly unknown[] =>
  Array.isArray(value) ? value : value === undefined || value === null ? [] : [value]

/** A text; a number where a text is due is its digits. */
export function textOf(value: unknown): string | undefined {
  if (typeof value === 'number' && Number.isFinite(value)) return String(value)
  if (typeof value !== 'string') return undefined
  const plain = value.trim()
  return plain === '' ? undefined : plain
}

/** Words of the farm's own, kept as they are; undefined where there are none. */
export const wordsOf = (value: unknown): string | undefined =>
  typeof value === 'string' && value.trim() !== '' ? value : undefined

/** A whole number, also where it was written as text. */
export function wholeOf(value: unknown): number | undefined {
  const number = typeof value === 'string' && /^\s*\d{1,9}\s*$/.test(value) ? Number(value) : value
  return typeof number === 'number' && Number.isSafeInteger(number) ? number : undefined
}

/** The id of an identifier, which is due as scheme and id; a bare text counts as the id. */
export const idOf = (value: unknown): string | undefined => textOf(isObject(value) ? value.id : value)
export const schemeOf = (value: unknown): string | undefined =>
  isObject(value) ? textOf(value.scheme) : undefined
