/** A date of the calendar in words, where a library would be too much to load. */

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

/**
 * A date with the month in words.
 *
 * @param iso `YYYY-MM-DD`; any other text stays as it is
 * @example plainDate('2026-05-28') // '28 May 2026'
 */
export function plainDate(iso: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso) ?? []
  return day === undefined ? iso : `${Number(day)} ${months[Number(month) - 1]} ${year}`
}
