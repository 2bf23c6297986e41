import fc from 'fast-check'
import stringWidth from 'string-width'
import { expect, test } from 'vitest'
import { asciiText } from '../../source/screens/ascii.ts'
import { bit, cutLine, lineWidth, spread } from '../../source/screens/line.tsx'
import { pages, tooSmall, usable, windowFrom } from '../../source/screens/size.ts'
import { cut, endOf, fill, widthOf, wrap } from '../../source/screens/width.ts'
import { safeText } from '../../source/words/safe.ts'

/** Any text as it is drawn: made harmless first. */
const shownText = fc.string({ unit: 'grapheme', maxLength: 40 }).map(safeText)

test('widths are those of the library that the screen is drawn with', () => {
  fc.assert(
    fc.property(shownText, (text) => {
      expect(widthOf(text)).toBe(stringWidth(text))
    }),
  )
  for (const sign of ['─', '━', '│', '║', '○', '●', '►', '▲', '▼', '▁', '·', '–', '…', '→', '’', 'é'])
    expect(widthOf(sign)).toBe(stringWidth(sign))
  expect(['412', 'é', '牛', '👍', 'é'].map(widthOf)).toEqual([3, 1, 2, 2, 1])
})

test('a text that is cut is never wider than its room, one that is filled is exactly as wide', () => {
  fc.assert(
    fc.property(shownText, fc.integer({ min: 0, max: 30 }), (text, cells) => {
      expect(widthOf(cut(text, cells, '…'))).toBeLessThanOrEqual(cells)
      expect(widthOf(fill(text, cells, '…'))).toBe(cells)
      expect(widthOf(fill(text, cells, '…', 'right'))).toBe(cells)
    }),
  )
  expect(cut('Buttercup', 6, '…')).toBe('Butte…')
  expect(cut('Buttercup', 9, '…')).toBe('Buttercup')
  // A wide character that does not fit whole is left out.
  expect(cut('牛牛牛', 4, '…')).toBe('牛…')
  expect(fill('牛牛牛', 4, '…')).toBe('牛… ')
})

test('wrapped lines keep every word in order, and no line is too wide', () => {
  fc.assert(
    fc.property(
      fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { maxLength: 30 }),
      fc.integer({ min: 9, max: 40 }),
      (words, cells) => {
        const lines = wrap(words.join(' '), cells, 99, '…')
        expect(lines.join(' ')).toBe(words.join(' '))
        for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(cells)
      },
    ),
  )
  expect(wrap('one two three four', 9, 1, '…')).toEqual(['one two …'])
})

test('a line is cut across its bits', () => {
  const line = [bit('412 ', 'strong'), bit('Buttercup')]
  expect(cutLine(line, 8, '…')).toEqual([bit('412 ', 'strong'), bit('But…')])
  expect(cutLine(line, 20, '…')).toBe(line)
  expect(lineWidth(spread(line, [bit('right')], 30, '…'))).toBe(30)
  expect(lineWidth(spread(line, [bit('right')], 10, '…'))).toBe(10)
})

test('in ASCII a text is as wide as before and nothing but ASCII', () => {
  fc.assert(
    fc.property(shownText, (text) => {
      expect(asciiText(text)).toMatch(/^[\x20-\x7e]*$/)
    }),
  )
  expect(asciiText('Zoë’s 牛 – “Å”')).toBe('Zoe\'s ?? - "A"')
})

test('the window moves no further than the pointer makes it, and always holds it', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 200 }),
      fc.integer({ min: 0, max: 99 }),
      fc.integer({ min: 1, max: 40 }),
      (before, pointer, height) => {
        const top = windowFrom(before, pointer, 100, height, 1)
        expect(top).toBeGreaterThanOrEqual(0)
        expect(top).toBeLessThanOrEqual(Math.max(0, 100 - height))
        expect(pointer).toBeGreaterThanOrEqual(top)
        expect(pointer).toBeLessThan(top + height)
      },
    ),
  )
  expect(windowFrom(0, 12, 100, 10)).toBe(3)
  expect(windowFrom(3, 5, 100, 10)).toBe(3)
  // The heading above the pointer stays in sight.
  expect(windowFrom(50, 20, 100, 10, 1)).toBe(19)
})

test('a second page stands beside the first from 100 columns on', () => {
  expect(pages({ columns: 99, rows: 24 }).second).toBe(0)
  for (const columns of [100, 120, 200, 300]) {
    const { first, second } = pages({ columns, rows: 40 })
    expect(first + 3 + second).toBe(columns)
    expect(second).toBeGreaterThanOrEqual(30)
  }
})

test('60x16 is enough; on Windows the last row stays free', () => {
  expect(tooSmall({ columns: 60, rows: 16 })).toBe(false)
  expect(tooSmall({ columns: 59, rows: 16 })).toBe(true)
  expect(tooSmall({ columns: 60, rows: 15 })).toBe(true)
  expect(usable({ columns: 80, rows: 24 }, 'win32')).toEqual({ columns: 80, rows: 23 })
  expect(usable({ columns: 80, rows: 24 }, 'linux')).toEqual({ columns: 80, rows: 24 })
})

test('the end of a text is seen where it is typed', () => {
  expect(endOf('Buttercup', 9, '…')).toBe('Buttercup')
  expect(endOf('Buttercup', 6, '…')).toBe('…ercup')
  expect(endOf('牛牛牛', 4, '…')).toBe('…牛')
  expect(endOf('x', 0, '…')).toBe('')
  expect(endOf(`${'e\u0301'.repeat(9_999)}!`, 5, '…')).toBe(`…${'e\u0301'.repeat(3)}!`)
})
