/** Lines: a screen is made of lines, a line of bits of text with a tone. Made as data, drawn by one component. */
import { Box, Text } from 'ink'
import { memo } from 'react'
import { asciiText } from './ascii.ts'
import type { Size } from './size.ts'
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

/** One row; never wraps. An empty one still takes its place. A row that reads as before is not drawn again. */
const Row = memo(
  function Row({ line, theme }: { line: Line; theme: Theme }) {
    if (line.length === 0) return <Text> </Text>
    return (
      <Text wrap="truncate">
        {line.map((one, index) =>
          one.tone === undefined || one.tone === 'plain' ? (
            one.text
          ) : (
            // biome-ignore lint/suspicious/noArrayIndexKey: the place in the line is what a bit is
            <Text key={index} {...theme.looks[one.tone]}>
              {one.text}
            </Text>
          ),
        )}
      </Text>
    )
  },
  (before, now) => before.theme === now.theme && sameLine(before.line, now.line),
)

/** The rows of the whole screen, no more than it has; each has been cut to its width. */
export function Rows({ rows, theme, size }: { rows: readonly Line[]; theme: Theme; size: Size }) {
  return (
    <Box flexDirection="column" width={size.columns} height={size.rows} overflowY="hidden">
      {rows.slice(0, size.rows).map((line, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place on the screen
        <Row key={index} line={line} theme={theme} />
      ))}
    </Box>
  )
}
