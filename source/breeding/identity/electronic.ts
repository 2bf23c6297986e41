/** Electronic numbers. */

/** Largest animal number: 38 bits. Source: ISO 11784, Radio frequency identification of animals, code structure. */
const LARGEST = 274_877_906_943

/**
 * Whether an electronic number is one of ISO 11784: 15 digits, three for the country or maker, twelve for the
 * animal, up to 274877906943.
 *
 * @param number as it is written; spaces do not count
 * @example electronicFits('826 012345678901') // true
 */
export function electronicFits(number: string): boolean {
  const digits = number.replace(/\s/g, '')
  return /^\d{15}$/.test(digits) && Number(digits.slice(3)) <= LARGEST
}
