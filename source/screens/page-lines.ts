/** What a page is, between head and foot: its lines as seen through the window. */
import type { Desk } from '../morning/desk.ts'
import type { Line } from './line.tsx'
import { windowFrom } from './size.ts'
import type { PlacedTable } from './table.ts'
import type { Theme } from './theme.ts'

export interface PageLines {
  /** At most as many as there is room for. */
  readonly lines: readonly Line[]
  /** Furthest that the pointer (or the page, where it has none) can be moved. */
  readonly furthest: number
  /** First line of the window, to begin the next frame from. */
  readonly top: number
  /** Lines for the page beside, on a wide screen. */
  readonly beside?: readonly Line[]
  /** Lines for the strip below, on a narrow one; at most four are shown. */
  /** A table among the lines; they say the same in plain text. */
  readonly table?: PlacedTable
  readonly strip?: readonly Line[]
}

/** The room of a page. */
export interface Room {
  readonly cells: number
  readonly height: number
  /** Cells of the page beside; 0 on a narrow screen. */
  readonly beside: number
  readonly theme: Theme
  /** First line of the window of the last frame. */
  readonly before: number
}

export type DrawPage<P> = (desk: Desk, place: P, room: Room) => PageLines

/** A page without a pointer, moved as a whole: `top` is its first line. */
export function wholePage(lines: readonly Line[], room: Room, top = 0): PageLines {
  const furthest = Math.max(0, lines.length - room.height)
  const from = Math.min(top, furthest)
  return { lines: lines.slice(from, from + room.height), furthest, top: from }
}

/** One line of a page with a pointer; lines that cannot be pointed at are headings and text. */
export interface PointedLine {
  readonly line: Line
  /** The line as it looks with the pointer on it; absent where it cannot be pointed at. */
  readonly pointed?: Line
  /** So many lines after it belong to it, and are in sight with it where there is room. */
  readonly after?: number
}

/**
 * A page with a pointer on one of the lines that can be pointed at.
 *
 * @param pointer which of those lines, from 0
 * @param kept lines above the window that stay in sight
 */
export function pointedPage(
  lines: readonly PointedLine[],
  pointer: number,
  room: Room,
  kept: readonly Line[] = [],
): PageLines {
  const places = lines.flatMap((line, index) => (line.pointed === undefined ? [] : [index]))
  const at = places[Math.min(pointer, places.length - 1)] ?? -1
  const above = kept.slice(0, Math.max(0, room.height - 3))
  const height = room.height - above.length
  const after = Math.min(lines[at]?.after ?? 0, Math.max(0, height - 2))
  const top = windowFrom(room.before, Math.max(0, at) + after, lines.length, height, 1 + after)
  const shown = lines
    .slice(top, top + height)
    .map(({ line, pointed }, index) => (top + index === at ? (pointed ?? line) : line))
  return { lines: [...above, ...shown], furthest: Math.max(0, places.length - 1), top }
}
