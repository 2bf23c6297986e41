/** Opens the full screen and waits until the user leaves it. */

import { type Instance, render, useApp } from 'ink'
import { useEffect } from 'react'
import type { Leave } from '../morning/step.ts'
import { App } from './app.tsx'
import { type Suspendable, suspend } from './input/suspend.ts'
import { takeTerminal } from './input/take-terminal.ts'
import type { Session } from './session.ts'
import { type Size, usable } from './size.ts'
import type { Theme } from './theme.ts'

interface Screen {
  readonly session: Session
  readonly theme: Theme
  /** Text for a screen reader in the place of the drawn screen. */
  readonly reader?: boolean
  readonly stdin: NodeJS.ReadStream
  readonly stdout: NodeJS.WriteStream
  readonly process: Suspendable
}

/** Exit status after Ctrl+C. */
const INTERRUPTED = 130

/** Begins to draw the session on a terminal. */
export function startScreen(screen: Screen): Instance {
  const { stdin, stdout } = screen
  takeTerminal(stdin, stdout, screen.reader)
  const root = () => <Root {...screen} size={usable(sizeOf(stdout), screen.process.platform)} />
  const instance = render(root(), {
    stdin,
    stdout,
    // A screen reader reads what is appended; the other screen would hide it.
    alternateScreen: screen.reader !== true,
    isScreenReaderEnabled: screen.reader === true,
    incrementalRendering: true,
    exitOnCtrlC: false,
    interactive: true,
    patchConsole: false,
    maxFps: 120,
  })
  // Before Ink hears of a new size, which it would first draw with the rows of the old one.
  const resized = (): void => instance.rerender(root())
  stdout.prependListener('resize', resized)
  void instance
    .waitUntilExit()
    .finally(() => stdout.off('resize', resized))
    .catch(() => {})
  return instance
}

const sizeOf = ({ columns, rows }: NodeJS.WriteStream): Size => ({ columns: columns || 80, rows: rows || 24 })

/**
 * Draws the session on a terminal until the user leaves.
 *
 * @returns the exit status: 0 left, 130 after Ctrl+C
 */
export async function openScreen(screen: Screen): Promise<number> {
  const status = await startScreen(screen).waitUntilExit()
  return typeof status === 'number' ? status : 0
}

function Root({ session, theme, process, size }: Screen & { readonly size: Size }) {
  const { exit, suspendTerminal } = useApp()
  useEffect(() => {
    session.start((how: Leave) => {
      if (how === 'suspend')
        void suspend(process, suspendTerminal).then((stopped) => session.backFromSuspension(stopped))
      else exit(how === 'interrupt' ? INTERRUPTED : 0)
    })
    return () => session.stop()
  }, [session, process, exit, suspendTerminal])
  return <App session={session} theme={theme} size={size} />
}
