/** The program on the screen: draws the frame of the session and hands keys on. Thin; what happens is in morning/. */
import { Box, Text, useIsScreenReaderEnabled } from 'ink'
import { useRef, useSyncExternalStore } from 'react'
import { DrawnFrame } from './frame/drawn.tsx'
import { frameOf } from './frame/frame.ts'
import { readerLines } from './frame/reader.ts'
import { useKeys } from './input/use-keys.ts'
import type { View } from './keys.ts'
import { bit, Rows } from './line.tsx'
import type { Session } from './session.ts'
import { type Size, tooSmall } from './size.ts'
import type { Theme } from './theme.ts'
import { screenWords } from './words/screen.ts'

export function App({ session, theme, size }: { session: Session; theme: Theme; size: Size }) {
  const desk = useSyncExternalStore(session.subscribe, () => session.desk)
  const reader = useIsScreenReaderEnabled()
  const top = useRef(0)
  const view = useRef<View>({ rows: 1, furthest: 0 })
  useKeys({
    keys: (keys) => session.press(keys, view.current),
    paste: (text) => session.paste(text),
  })
  if (tooSmall(size)) {
    return (
      <Box height={size.rows}>
        <Rows
          rows={[[bit(screenWords.tooSmall(size.columns, size.rows))]]}
          width={size.columns}
          theme={theme}
        />
      </Box>
    )
  }
  const frame = frameOf(desk, size, theme, top.current)
  top.current = frame.top
  view.current = frame.view
  if (reader) {
    // One text: of lines that are equal, React would keep one that is gone.
    return <Text>{readerLines(desk, frame, theme).join('\n')}</Text>
  }
  return <DrawnFrame frame={frame} theme={theme} size={size} />
}
