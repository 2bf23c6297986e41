/** What fits on a screen of a given size. */

/** Below this only one line is shown, which says so. */
const SMALLEST = { columns: 60, rows: 16 } as const
/** From so many columns a second page stands beside the first. */
const TWO_PAGES = 100

export interface Size {
  readonly columns: number
  readonly rows: number
}

/**
 * Rows that may be drawn. Windows consoles scroll when the last cell of the last row is written.
 *
 * @example usable({ columns: 80, rows: 24 }, 'win32').rows // 23
 */
export const usable = (size: Size, platform: string): Size =>
  platform === 'win32' ? { ...size, rows: Math.max(1, size.rows - 1) } : size

export const tooSmall = (size: Size): boolean => size.columns < SMALLEST.columns || size.rows < SMALLEST.rows

/**
 * Widths of the page and of the page beside it, with a fold of three cells between them; no second page (0) on a
 * narrow screen.
 *
 * @example pages({ columns: 120, rows: 40 }) // { first: 79, second: 38 }
 */
export function pages(size: Size): { first: number; second: number } {
  if (size.columns < TWO_PAGES) return { first: size.columns, second: 0 }
  const second = Math.min(56, Math.floor(size.columns * 0.32))
  return { first: size.columns - second - 3, second }
}

/**
 * First line of the window through which a long list is seen: moved no further than the pointer makes it.
 *
 * @param before first line of the last window
 * @param pointer line that must be seen; @param total lines; @param height of the window
 * @param above lines that should stay in sight above the pointer (a heading), where there is room
 * @example windowFrom(0, 12, 100, 10, 1) // 3
 */
export function windowFrom(
  before: number,
  pointer: number,
  total: number,
  height: number,
  above = 0,
): number {
  const last = Math.max(0, total - height)
  const highest = Math.max(0, pointer - Math.min(above, height - 1))
  const lowest = pointer - height + 1
  return Math.max(0, Math.min(last, Math.max(lowest, Math.min(before, highest))))
}
