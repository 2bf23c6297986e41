/** Official ear tags with a check digit. */

/** Country, herd mark of six digits, check digit, animal of five digits; spaces do not count. */
const britishTag = /^UK(\d{6})(\d)(\d{5})$/

/**
 * Whether the check digit of an ear tag of the United Kingdom is right: the herd mark and the animal read as one
 * number of eleven digits, its remainder by 7, plus 1. Derived from published tags.
 *
 * @param tag as it is written, spaces included
 * @returns undefined where the tag is of another sort, which cannot be judged
 * @example earTagFits('UK 123456 600001') // false
 */
export function earTagFits(tag: string): boolean | undefined {
  const found = britishTag.exec(tag.replace(/\s/g, '').toUpperCase())
  if (found === null) return undefined
  const [, herd, digit, animal] = found
  return Number(digit) === (Number(`${herd}${animal}`) % 7) + 1
}
