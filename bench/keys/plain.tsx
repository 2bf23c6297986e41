/** The least that a list in Ink can do: 40 rows of 120 characters, one of them marked. The yardstick for the real one. */
import { Box, type Instance, render, Text, useInput } from 'ink'
import { memo, useState } from 'react'

const rows = 40
const text = (row: number): string =>
  `${412 + row} Buttercup    may come back                 day 22         5.8 % today   | 22 days since her service of`

const Row = memo(function Row({ row, marked }: { row: number; marked: boolean }) {
  return (
    <Text bold={marked} wrap="truncate">
      {`${marked ? '>' : ' '} o | ${text(row)}`}
    </Text>
  )
})

function PlainList() {
  const [at, move] = useState(0)
  useInput((_input, key) => {
    if (key.downArrow) move((row) => row + 1)
  })
  return (
    <Box flexDirection="column" width={120} height={rows}>
      {Array.from({ length: rows }, (_, row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
        <Row key={row} row={row} marked={row === at % rows} />
      ))}
    </Box>
  )
}

export const startPlainList = (stdin: NodeJS.ReadStream, stdout: NodeJS.WriteStream): Instance =>
  render(<PlainList />, {
    stdin,
    stdout,
    alternateScreen: true,
    incrementalRendering: true,
    exitOnCtrlC: false,
    interactive: true,
    patchConsole: false,
    maxFps: 120,
  })
