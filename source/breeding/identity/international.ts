/** International IDs of breeding animals. */

/** The parts of an international ID. */
interface InternationalId {
  /** Three letters. */
  readonly breed: string
  /** Three letters, ISO 3166. */
  readonly country: string
  readonly sex: 'F' | 'M'
  /** Twelve letters and digits. */
  readonly number: string
}

/**
 * Takes an international ID apart: 19 characters, breed 3, country 3, sex 1, number 12.
 * Source: Interbull, File 200, format of the international animal identification.
 *
 * @returns undefined where the text is none
 * @example readInternationalId('HOLCANM000000A12345')?.country // 'CAN'
 */
export function readInternationalId(text: string): InternationalId | undefined {
  const [, breed = '', country = '', sex, number = ''] =
    /^([A-Z]{3})([A-Z]{3})([MF])([0-9A-Z]{12})$/.exec(text.trim()) ?? []
  return sex === undefined ? undefined : { breed, country, sex: sex as 'F' | 'M', number }
}
