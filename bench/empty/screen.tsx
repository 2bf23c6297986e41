import { Box, render, Spacer, Text, useInput } from 'ink'

/** The least an Ink program can do: two words, and leaving on Ctrl+C. */
function Empty() {
  useInput((input, key) => {
    if (key.ctrl && input === 'c') app.unmount()
  })
  return (
    <Box width={process.stdout.columns} height={process.stdout.rows} flexDirection="column" overflow="hidden">
      <Text>first</Text>
      <Spacer />
      <Text>last</Text>
    </Box>
  )
}

const app = render(<Empty />, {
  alternateScreen: true,
  incrementalRendering: true,
  exitOnCtrlC: false,
  interactive: true,
  maxFps: 120,
})
