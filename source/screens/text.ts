/** Small things that pages of text are made of. */
import { bit, type Line } from './line.tsx'
import type { PointedLine } from './page-lines.ts'
import type { Theme, Tone } from './theme.ts'
import { wrap } from './width.ts'

/** Text on as many lines as it needs. */
export const paragraph = (
  text: string,
  cells: number,
  theme: Theme,
  tone: Tone = 'plain',
  most = 12,
): readonly Line[] => wrap(text, cells, most, theme.signs.cut).map((line) => [bit(line, tone)])

/** A line that can be pointed at: two cells of margin for the pointer. */
export const pointable = (line: Line, theme: Theme): PointedLine => ({
  line: [bit('  '), ...line],
  pointed: [
    bit(`${theme.signs.pointer} `, 'light'),
    ...line.map((one) =>
      one.tone === undefined || one.tone === 'plain' ? { ...one, tone: 'pointed' as const } : one,
    ),
  ],
})

/** Parts of a column with a blank line between them; empty ones are left out. */
export const parted = (parts: readonly (readonly Line[])[]): readonly Line[] =>
  parts
    .filter((part) => part.length > 0)
    .flatMap((part, index) => (index === 0 ? part : [[] as Line, ...part]))

/** Lines moved in by a cell. */
export const movedIn = (lines: readonly Line[], by = 1): readonly Line[] =>
  lines.map((line) => (line.length === 0 ? line : [bit(' '.repeat(by)), ...line]))
