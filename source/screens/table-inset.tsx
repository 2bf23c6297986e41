/** A table among the rows of a page, drawn by ink-table on our paper: no lines, our tones, our widths. */
import { Box, Text } from 'ink'
import InkTable from 'ink-table'
import { createContext, type PropsWithChildren, useContext } from 'react'
import { asciiText } from './ascii.ts'
import { inColumn, type Table, tableHeight } from './table.ts'
import type { Theme, Tone } from './theme.ts'
import { fill } from './width.ts'

interface Drawn {
  readonly table: Table
  readonly theme: Theme
  /** Tone of a text in a column. */
  readonly tones: ReadonlyMap<string, Tone>
}

const DrawnTable = createContext<Drawn | undefined>(undefined)

/** Names a text in a column. ink-table tells its cells their text and column, not their row. */
const place = (column: number, text: string): string => `${column} ${text}`

/**
 * The table, exactly as wide and as high as its lines would be.
 *
 * ink-table measures texts by their length and freezes what it is given when it is mounted: it is handed texts that
 * fill their columns already, and components that read the rest from around them.
 */
export default function TableInset({ table, theme }: { table: Table; theme: Theme }) {
  const { cut } = theme.signs
  const shown = (text: string): string => (theme.ascii ? asciiText(text) : text)
  const tones = new Map<string, Tone>()
  const data = table.rows.map((row) =>
    Object.fromEntries(
      table.columns.map((column, index) => {
        const one = row[index]
        const text = shown(inColumn(one?.text ?? '', column, cut))
        if (one?.tone !== undefined) tones.set(place(index, text.trimEnd()), one.tone)
        return [String(index), text]
      }),
    ),
  )
  return (
    <DrawnTable value={{ table, theme, tones }}>
      <Box height={tableHeight(table)} flexShrink={0} overflow="hidden">
        <InkTable
          data={data}
          columns={table.columns.map((_, index) => String(index))}
          padding={1}
          header={Heading}
          cell={Cell}
          skeleton={NoLines}
        />
      </Box>
    </DrawnTable>
  )
}

/** The text after the air that ink-table puts before it; what stands behind it is as long as ink-table thinks. */
const textOf = (children: unknown): string => String(children).slice(1).trimEnd()

/** A column is known by its number; its name is ours, as wide as the column. */
function Heading({ children }: PropsWithChildren) {
  const drawn = useContext(DrawnTable)
  const column = drawn?.table.columns[Number(String(children).trim())]
  if (drawn === undefined || column === undefined) return <Text> </Text>
  const { looks, signs, ascii } = drawn.theme
  const name = inColumn(column.name, column, signs.cut)
  return <Text {...looks.faint}>{` ${ascii ? asciiText(name) : name} `}</Text>
}

function Cell({ children, column }: PropsWithChildren<{ column: number }>) {
  const drawn = useContext(DrawnTable)
  const where = drawn?.table.columns[column]
  if (drawn === undefined || where === undefined) return <Text> </Text>
  const { looks, signs } = drawn.theme
  const text = textOf(children)
  const tone = drawn.tones.get(place(column, text))
  return (
    <Text {...(tone === undefined ? {} : looks[tone])}>
      {` ${fill(text, Math.max(0, where.cells - 2), signs.cut)} `}
    </Text>
  )
}

/** Rows are told apart by their lines, columns by air. */
const NoLines = () => <></>
