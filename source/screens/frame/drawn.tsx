/** A frame drawn: head, page, the page beside it behind the fold, keys. */
import { Box, Text } from 'ink'
import { lazy, memo, Suspense } from 'react'
import { type Line, Rows } from '../line.tsx'
import type { Size } from '../size.ts'
import { tableHeight } from '../table.ts'
import type { Theme } from '../theme.ts'
import type { Frame } from './frame.ts'

/** Draws exactly as many rows as the screen has; nothing reaches over its edges. */
export function DrawnFrame({ frame, theme, size }: { frame: Frame; theme: Theme; size: Size }) {
  const { first, second } = frame.widths
  const page = [...frame.body, ...frame.below]
  return (
    <Box flexDirection="column" width={size.columns} height={size.rows} overflowY="hidden">
      <Rows rows={frame.head} width={size.columns} theme={theme} />
      <Box height={page.length} flexShrink={0}>
        <Page rows={page} table={frame.table} width={first} theme={theme} />
        {second === 0 ? null : (
          <>
            <Fold rows={page.length} theme={theme} />
            <Rows rows={frame.beside.slice(0, page.length)} width={second} theme={theme} />
          </>
        )}
      </Box>
      <Rows rows={[frame.foot]} width={size.columns} theme={theme} />
    </Box>
  )
}

const TableInset = lazy(() => import('../table-inset.tsx'))

interface PageRows {
  readonly rows: readonly Line[]
  readonly table: Frame['table']
  readonly width: number
  readonly theme: Theme
}

/** The rows of the page; where a table stands among them it is drawn in the place of its lines. */
function Page({ rows, table, width, theme }: PageRows) {
  if (table === undefined) return <Rows rows={rows} width={width} theme={theme} />
  const end = table.at + tableHeight(table.table)
  return (
    <Box flexDirection="column" width={width} flexShrink={0}>
      <Rows rows={rows.slice(0, table.at)} width={width} theme={theme} />
      <Suspense fallback={<Rows rows={rows.slice(table.at, end)} width={width} theme={theme} />}>
        <TableInset table={table.table} theme={theme} />
      </Suspense>
      <Rows rows={rows.slice(end)} width={width} theme={theme} />
    </Box>
  )
}

/** Where the two pages meet. */
const Fold = memo(function Fold({ rows, theme }: { rows: number; theme: Theme }) {
  return (
    <Text {...theme.looks.rule}>
      {Array.from({ length: rows }, () => ` ${theme.signs.fold} `).join('\n')}
    </Text>
  )
})
