/** A frame drawn: head, page, the page beside it behind the fold, keys. */
import { Box, Text } from 'ink'
import { memo } from 'react'
import { Rows } from '../line.tsx'
import type { Size } from '../size.ts'
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
        <Rows rows={page} width={first} theme={theme} />
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

/** Where the two pages meet. */
const Fold = memo(function Fold({ rows, theme }: { rows: number; theme: Theme }) {
  return (
    <Text {...theme.looks.rule}>
      {Array.from({ length: rows }, () => ` ${theme.signs.fold} `).join('\n')}
    </Text>
  )
})
