/**
 * A number with the word for it.
 *
 * @param count as it is shown; only the number 1 is one
 * @param many the word for any other number than one; the same with an s where it is left out
 * @example counted(1, 'row') // '1 row'
 */
export const counted = (count: number | string | boolean, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`
