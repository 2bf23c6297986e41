/** Lines: a screen is made of lines, a line of bits of text with a tone. Made as data, drawn by one component. */
import { Box, Text } from 'ink'
import { memo } from 'react'
import { asciiText, isAscii } from './ascii.ts'
import type { Theme, Tone } from './theme.ts'
import { cut, widthOf } from './width.ts'

export interface Bit {
  readonly text: string
  readonly tone?: Tone
}
export type Line = readonly Bit[]

/**
 * A bit of text with its tone.
 *
 * @example bit('412', 'strong') // { text: '412', tone: 'strong' }
 */
export const bit = (text: string, tone?: Tone): Bit => (tone === undefined ? { text } : { text, tone })

/** Cells that a line takes. */
export const lineWidth = (line: Line): number => line.reduce((sum, one) => sum + widthOf(one.text), 0)

/**
 * A line cut to at most so many cells.
 *
 * @example cutLine([bit('412 '), bit('Buttercup')], 8, '…') // 412 and But…
 */
export function cutLine(line: Line, cells: number, sign: string): Line {
  if (lineWidth(line) <= cells) return line
  const kept: Bit[] = []
  let left = cells
  for (const one of line) {
    if (left <= 0) break
    const width = widthOf(one.text)
    kept.push(width <= left ? one : { ...one, text: cut(one.text, left, sign) })
    left -= width
  }
  return kept
}

/**
 * Two lines in one: the left one cut where the right one, at the right edge, needs the room.
 *
 * @param cells of the whole line
 */
export function spread(left: Line, right: Line, cells: number, sign: string): Line {
  const ending = cutLine(right, cells, sign)
  const room = cells - lineWidth(ending)
  const beginning = cutLine(left, Math.max(0, room - 1), sign)
  return [...beginning, bit(' '.repeat(Math.max(0, room - lineWidth(beginning)))), ...ending]
}

/** A line for a terminal that can draw ASCII only. */
export const asciiLine = (line: Line): Line => line.map((one) => ({ ...one, text: asciiText(one.text) }))

const sameLine = (a: Line, b: Line): boolean =>
  a === b ||
  (a.length === b.length &&
    a.every((one, index) => one.text === b[index]?.text && one.tone === b[index]?.tone))

/**
 * Stretches of a line of ASCII alone, and of other text. Ink measures every text anew for every frame, which is quick
 * for ASCII and slow for any other: kept apart, the few signs of a row do not make all of it slow (half the time of a
 * frame was spent so).
 */
export function stretches(line: Line): readonly Line[] {
  const found: Bit[][] = []
  let last: boolean | undefined
  for (const one of line) {
    const ascii = isAscii(one.text)
    const open = found.at(-1)
    if (open !== undefined && ascii === last) open.push(one)
    else found.push([one])
    last = ascii
  }
  return found
}

/** One row; never wraps. An empty one still takes its place. A row that reads as before is not drawn again. */
const Row = memo(
  function Row({ line, theme }: { line: Line; theme: Theme }) {
    if (line.length === 0) return <Text> </Text>
    return (
      <Box>
        {stretches(line).map((stretch, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the place in the row is what a stretch is
          <Stretch key={index} stretch={stretch} theme={theme} />
        ))}
      </Box>
    )
  },
  (before, now) => before.theme === now.theme && sameLine(before.line, now.line),
)

const Stretch = ({ stretch, theme }: { stretch: Line; theme: Theme }) => (
  <Text wrap="truncate">
    {stretch.map((one, index) =>
      one.tone === undefined || one.tone === 'plain' ? (
        one.text
      ) : (
        // biome-ignore lint/suspicious/noArrayIndexKey: the place in the stretch is what a bit is
        <Text key={index} {...theme.looks[one.tone]}>
          {one.text}
        </Text>
      ),
    )}
  </Text>
)

/** Rows of a page, one below the other, each cut to its width. A page is a box of its own: one that stays is not drawn again. */
export function Rows({ rows, width, theme }: { rows: readonly Line[]; width: number; theme: Theme }) {
  return (
    <Box flexDirection="column" width={width} flexShrink={0}>
      {rows.map((line, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place on the page
        <Row key={index} line={fitted(line, width, theme)} theme={theme} />
      ))}
    </Box>
  )
}

/** A line as it can be drawn: no wider than its room, in ASCII where there is nothing else. */
const fitted = (line: Line, width: number, theme: Theme): Line =>
  cutLine(theme.ascii ? asciiLine(line) : line, width, theme.signs.cut)
