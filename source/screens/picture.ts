/** Pictures made of characters: curves with a band, and bars. They read without colour, and in ASCII. */
import { type Bit, bit, type Line } from './line.tsx'
import type { Theme, Tone } from './theme.ts'
import { fill } from './width.ts'

/** A curve: a value for each x, where it is known; the ends of its band. Values are percent. */
export interface Curve {
  readonly at: (x: number) => number | undefined
  readonly band?: (x: number) => readonly [low: number, high: number] | undefined
  readonly sign: string
  readonly tone: Tone
}

/** A spot of the picture that is marked. */
interface Spot {
  readonly x: number
  readonly y: number
  readonly sign: string
  readonly tone: Tone
}

export interface Plot {
  /** First and last x. */
  readonly from: number
  readonly to: number
  /** Percent at the top. */
  readonly top: number
  readonly curves: readonly Curve[]
  readonly spots: readonly Spot[]
  /** Text below the axis, each at its x. */
  readonly marks: readonly { readonly x: number; readonly text: string }[]
}

/** Cells of the numbers at the side. */
const SIDE = 6

/**
 * A plot as lines: so many rows, an axis, and the marks below it.
 *
 * @param cells 24 or more, @param rows of the picture itself, 4 or more
 * @example plotLines(plot, 60, 10, theme).length // 12
 */
export function plotLines(plot: Plot, cells: number, rows: number, theme: Theme): readonly Line[] {
  const { from, to, top, curves, spots, marks } = plot
  const { signs } = theme
  const width = cells - SIDE - 1
  const column = (x: number): number => Math.round(((x - from) / Math.max(1, to - from)) * (width - 1))
  const row = (y: number): number => Math.round((1 - y / top) * (rows - 1))
  const grid: Bit[][] = Array.from({ length: rows }, () => Array.from({ length: width }, () => bit(' ')))
  const put = (x: number, y: number, one: Bit): void => {
    const line = grid[y]
    if (line !== undefined && x >= 0 && x < width) line[x] = one
  }
  for (let cell = 0; cell < width; cell += 1) {
    const x = from + (cell / Math.max(1, width - 1)) * (to - from)
    for (const { band } of curves) {
      const ends = band?.(x)
      if (ends === undefined) continue
      for (let y = row(ends[1]); y <= row(ends[0]); y += 1) put(cell, y, bit(signs.band, 'faint'))
    }
    for (const { at, sign, tone } of curves) {
      const y = at(x)
      if (y !== undefined) put(cell, row(y), bit(sign, tone))
    }
  }
  for (const { x, y, sign, tone } of spots) put(column(x), row(y), bit(sign, tone))
  const named = new Set([0, Math.round((rows - 1) / 2), rows - 1])
  return [
    ...grid.map((line, y): Line => {
      const label = named.has(y) ? `${Math.round(top * (1 - y / (rows - 1)))} %` : ''
      return [bit(fill(label, SIDE, signs.cut, 'right'), 'faint'), bit(signs.margin, 'rule'), ...joined(line)]
    }),
    [bit(' '.repeat(SIDE)), bit(signs.rule.repeat(width + 1), 'rule')],
    marksLine(marks, column, cells, theme),
  ]
}

/** Text at its places, left out where there is no room left. */
function marksLine(
  marks: Plot['marks'],
  column: (x: number) => number,
  cells: number,
  { signs }: Theme,
): Line {
  let text = ''
  for (const mark of marks) {
    const said = `${signs.more.above} ${mark.text}`
    const at = SIDE + 1 + column(mark.x)
    const from = at + said.length > cells ? cells - said.length : at
    if (from < text.length + (text === '' ? 0 : 1)) continue
    text = text.padEnd(from) + said
  }
  return [bit(text, 'faint')]
}

/** Neighbouring bits of one tone as one. */
function joined(line: readonly Bit[]): Line {
  const bits: { text: string; tone?: Tone }[] = []
  for (const one of line) {
    const last = bits.at(-1)
    if (last !== undefined && last.tone === one.tone) last.text += one.text
    else bits.push({ ...one })
  }
  return bits as Line
}

/** A bar of so many cells out of as many as there is room for. */
interface Bar {
  readonly value: number
  /** What is expected to follow. */
  readonly expected?: number
  /** Where it should reach. */
  readonly aim?: number
}

/**
 * A bar, filled to exactly `cells`.
 *
 * @param most the value of a bar that fills it
 * @example barOf({ value: 5, aim: 8 }, 10, 20, theme) // ten cells of bar, six of ground, the aim, three of ground
 */
export function barOf(
  { value, expected = 0, aim }: Bar,
  most: number,
  cells: number,
  { signs }: Theme,
): Line {
  const scale = (amount: number): number =>
    most <= 0 ? 0 : Math.max(0, Math.min(cells, Math.round((amount / most) * cells)))
  const [full, whole] = [scale(value), scale(value + expected)]
  const aimed = aim === undefined ? -1 : Math.min(cells - 1, scale(aim))
  return joined(
    Array.from({ length: cells }, (_, cell): Bit => {
      if (cell === aimed) return bit(signs.aim, 'strong')
      if (cell < full) return bit(signs.bar, 'light')
      if (cell < whole) return bit(signs.expected, 'light')
      return bit(' ')
    }),
  )
}
