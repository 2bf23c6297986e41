/**
 * The order of two texts by their characters, the same in every language of the computer.
 *
 * @returns negative, zero or positive
 * @example ['B', 'A10', 'A9'].sort(compareTexts) // ['A10', 'A9', 'B']
 */
export const compareTexts = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
