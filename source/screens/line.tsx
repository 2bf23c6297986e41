/** Lines: a screen is made of lines, a line of bits of text with a tone. Made as data, drawn by one component. */
import { Box, Text } from 'ink'
import { memo } from 'react'
import { asciiText } from './ascii.ts'
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

/** A line as it can be drawn: no wider than its room, in ASCII where there is nothing else. */
const fitted = (line: Line, width: number, theme: Theme): Line =>
  cutLine(
    theme.ascii ? line.map((one) => ({ ...one, text: asciiText(one.text) })) : line,
    width,
    theme.signs.cut,
  )

/** One line; never wraps. An empty one still takes its row. */
const DrawnLine = memo(function DrawnLine({ line, theme }: { line: Line; theme: Theme }) {
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
})

/** A block of lines of exactly this size; what does not fit is not drawn. */
export function Lines({
  lines,
  theme,
  width,
  height,
}: {
  lines: readonly Line[]
  theme: Theme
  width: number
  height: number
}) {
  return (
    <Box flexDirection="column" width={width} height={height} flexShrink={0} overflow="hidden">
      {lines.slice(0, height).map((line, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place on the screen
        <DrawnLine key={index} line={fitted(line, width, theme)} theme={theme} />
      ))}
    </Box>
  )
}
