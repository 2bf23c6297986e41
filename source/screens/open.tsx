/** Opens the full screen and waits until the user leaves it. */
import { type Instance, render, useApp } from 'ink'
import { useEffect } from 'react'
import type { Leave } from '../morning/action.ts'
import { App } from './app.tsx'
import { type Suspendable, suspend } from './input/suspend.ts'
import type { Session } from './session.ts'
import type { Theme } from './theme.ts'

export interface Screen {
  readonly session: Session
  readonly theme: Theme
  readonly stdin: NodeJS.ReadStream
  readonly stdout: NodeJS.WriteStream
  readonly process: Suspendable
}

/** Exit status after Ctrl+C. */
const INTERRUPTED = 130

/** Begins to draw the session on a terminal. */
export const startScreen = (screen: Screen): Instance =>
  render(<Root {...screen} />, {
    stdin: screen.stdin,
    stdout: screen.stdout,
    alternateScreen: true,
    incrementalRendering: true,
    exitOnCtrlC: false,
    interactive: true,
    patchConsole: false,
    maxFps: 120,
  })

/**
 * Draws the session on a terminal until the user leaves.
 *
 * @returns the exit status: 0 left, 130 after Ctrl+C
 */
export async function openScreen(screen: Screen): Promise<number> {
  const status = await startScreen(screen).waitUntilExit()
  return typeof status === 'number' ? status : 0
}

function Root({ session, theme, process }: Screen) {
  const { exit, suspendTerminal } = useApp()
  useEffect(() => {
    session.start((how: Leave) => {
      if (how === 'suspend')
        void suspend(process, suspendTerminal).then((stopped) => session.backFromSuspension(stopped))
      else exit(how === 'interrupt' ? INTERRUPTED : 0)
    })
    return () => session.stop()
  }, [session, process, exit, suspendTerminal])
  return <App session={session} theme={theme} platform={process.platform} />
}
