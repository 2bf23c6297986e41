/** The program on the screen: draws the frame of the session and hands keys on. Thin; what happens is in morning/. */
import { Box, Text, useWindowSize } from 'ink'
import { useRef, useSyncExternalStore } from 'react'
import { frameOf } from './frame/frame.ts'
import { useKeys } from './input/use-keys.ts'
import type { View } from './keys.ts'
import { bit, type Line, Lines } from './line.tsx'
import type { Session } from './session.ts'
import { tooSmall, usable } from './size.ts'
import type { Theme } from './theme.ts'
import { screenWords } from './words/screen.ts'

export function App({ session, theme, platform }: { session: Session; theme: Theme; platform: string }) {
  const desk = useSyncExternalStore(session.subscribe, () => session.desk)
  const size = usable(useWindowSize(), platform)
  const top = useRef(0)
  const view = useRef<View>({ rows: 1, furthest: 0 })
  useKeys({
    keys: (keys) => session.press(keys, view.current),
    paste: (text) => session.paste(text),
  })
  if (tooSmall(size)) {
    return (
      <Box height={size.rows} overflow="hidden">
        <Text wrap="truncate">{screenWords.tooSmall(size.columns, size.rows)}</Text>
      </Box>
    )
  }
  const frame = frameOf(desk, size, theme, top.current)
  top.current = frame.top
  view.current = frame.view
  const { first, second } = frame.widths
  const height = frame.body.length + (second === 0 ? 0 : frame.below.length)
  const fold: Line = [bit(` ${theme.signs.fold} `, 'rule')]
  const firstPage = second === 0 ? frame.body : [...frame.body, ...frame.below]
  return (
    // No width of its own: while a terminal is made narrower, the frame before is cut, not wrapped.
    <Box flexDirection="column" height={size.rows} overflow="hidden">
      <Lines lines={frame.head} theme={theme} width={size.columns} height={frame.head.length} />
      <Box height={height} flexShrink={0}>
        <Lines lines={firstPage} theme={theme} width={first} height={height} />
        {second === 0 ? null : (
          <>
            <Lines lines={firstPage.map(() => fold)} theme={theme} width={3} height={height} />
            <Lines lines={frame.beside} theme={theme} width={second} height={height} />
          </>
        )}
      </Box>
      {second === 0 ? (
        <Lines lines={frame.below} theme={theme} width={size.columns} height={frame.below.length} />
      ) : null}
      <Lines lines={[frame.foot]} theme={theme} width={size.columns} height={1} />
    </Box>
  )
}
