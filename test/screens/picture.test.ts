import fc from 'fast-check'
import { expect, test } from 'vitest'
import { lineWidth } from '../../source/screens/line.tsx'
import { barOf, type Plot, plotLines } from '../../source/screens/picture.ts'
import { themeFor } from '../../source/screens/theme.ts'

const plain = themeFor({ colours: false, ascii: true })
const drawn = themeFor({ colours: true, ascii: false })
const text = (line: readonly { readonly text: string }[]): string => line.map((one) => one.text).join('')

test('a bar fills its part, marks what is expected and the aim, and is as wide as its room', () => {
  expect(text(barOf({ value: 5 }, 10, 20, plain))).toBe('##########          ')
  expect(text(barOf({ value: 5, expected: 2.5 }, 10, 20, plain))).toBe('##########=====     ')
  expect(text(barOf({ value: 5, aim: 8 }, 10, 20, plain))).toBe('##########      +   ')
  expect(text(barOf({ value: 9, aim: 8 }, 10, 10, plain))).toBe('########+ ')
  expect(text(barOf({ value: 3 }, 0, 6, plain))).toBe('      ')
})

test('a bar never reaches over its room', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -5, max: 500, noNaN: true }),
      fc.double({ min: 0, max: 500, noNaN: true }),
      fc.double({ min: 0, max: 500, noNaN: true }),
      fc.integer({ min: 1, max: 80 }),
      (value, expected, aim, cells) => {
        expect(lineWidth(barOf({ value, expected, aim }, 100, cells, drawn))).toBe(cells)
      },
    ),
  )
})

const plot: Plot = {
  from: 0,
  to: 10,
  top: 100,
  curves: [
    {
      at: (x) => (x <= 5 ? 10 * x : undefined),
      band: (x) => (x > 5 ? [40, 60] : undefined),
      sign: 'x',
      tone: 'light',
    },
  ],
  spots: [{ x: 10, y: 100, sign: '+', tone: 'strong' }],
  marks: [
    { x: 0, text: 'start' },
    { x: 10, text: 'end' },
  ],
}

test('a plot: percent at the side, the curve, its band, the spot, the marks below the axis', () => {
  expect(plotLines(plot, 28, 5, plain).map(text)).toEqual([
    ' 100 %|                    +',
    '      |                     ',
    '  50 %|        xxx::::::::::',
    '      |   xxxxx             ',
    '   0 %|xxx                  ',
    '      ----------------------',
    '       ^ start         ^ end',
  ])
})

test('a plot is as wide and as high as it is asked to be, at any size', () => {
  fc.assert(
    fc.property(fc.integer({ min: 24, max: 120 }), fc.integer({ min: 4, max: 30 }), (cells, rows) => {
      const lines = plotLines(plot, cells, rows, drawn)
      expect(lines).toHaveLength(rows + 2)
      for (const line of lines.slice(0, rows + 1)) expect(lineWidth(line)).toBe(cells)
      expect(lineWidth(lines[rows + 1] ?? [])).toBeLessThanOrEqual(cells)
    }),
  )
})
