import '../terminal/support/colours.ts'
import { render } from 'ink-testing-library'
import { afterEach, expect, test } from 'vitest'
import { bit } from '../../source/screens/line.tsx'
import { type Table, tableHeight, tableLines, tableWithin } from '../../source/screens/table.ts'
import TableInset from '../../source/screens/table-inset.tsx'
import { themeFor } from '../../source/screens/theme.ts'

const table: Table = {
  columns: [
    { name: 'kind', cells: 14 },
    { name: 'left', cells: 7, side: 'right' },
    { name: 'left', cells: 9, side: 'right' },
    { name: '', cells: 12 },
  ],
  rows: [
    [bit('conventional'), bit('72', 'strong'), bit('26 to 35'), bit('enough', 'good')],
    [bit('牛牛牛'), bit('0', 'strong'), bit(''), bit('none left: order 12 now', 'care')],
    [bit('beef'), bit('0', 'faint'), bit('é…'), bit('')],
  ],
}
const drawn = themeFor({ colours: true, ascii: false })
const text = (theme: typeof drawn): string[] =>
  tableLines(table, theme).map((line) =>
    line
      .map((one) => one.text)
      .join('')
      .trimEnd(),
  )
let close = (): void => {}
afterEach(() => close())
const shown = (theme: typeof drawn): string => {
  const { lastFrame, unmount } = render(<TableInset table={table} theme={theme} />)
  close = unmount
  return lastFrame() ?? ''
}
const ESCAPE = String.fromCharCode(27)
/** The frame without its styles. */
const bare = (frame: string): string[] =>
  frame
    .split(ESCAPE)
    .map((part, index) => (index === 0 ? part : part.replace(/^\[[\d;]*m/, '')))
    .join('')
    .split('\n')
    .map((line) => line.trimEnd())

test('ink-table draws on our paper exactly what the lines of the table say, wide characters too', () => {
  expect(bare(shown(drawn))).toEqual(text(drawn))
  expect(text(drawn)).toHaveLength(tableHeight(table))
})

test('every cell has the tone of its bit', () => {
  const frame = shown(drawn)
  const green = `${ESCAPE}[32m`
  const red = `${ESCAPE}[31m`
  expect(frame.slice(frame.indexOf(green))).toContain(`${green} enough`)
  expect(frame).toContain(red)
  expect(frame.split(`${ESCAPE}[1m`).length).toBeGreaterThanOrEqual(3)
})

test('in ASCII it is ASCII', () => {
  const ascii = themeFor({ colours: false, ascii: true })
  expect(bare(shown(ascii)).join('\n')).toMatch(/^[\x20-\x7e\n]*$/)
})

test('of a table that is too long the heading stays and as many rows as fit, from one on', () => {
  expect(tableWithin(table, 3).rows).toEqual(table.rows.slice(0, 2))
  expect(tableWithin(table, 3, 1).rows).toEqual(table.rows.slice(1, 3))
  expect(tableWithin(table, 1).rows).toEqual([])
  expect(tableWithin(table, 0).rows).toEqual([])
})
