/**
 * Order of two texts by their characters, the same on every machine and in every language.
 *
 * @returns below 0 where the first comes first, above 0 where the second does, 0 where they are the same
 * @example ['S2', 'S17'].sort(textOrder) // ['S17', 'S2']
 */
export const textOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
