/** The first screen on the terminal: draws it, hands keys to the reducer, and does what is wished. */
import { Box, render, useApp, useWindowSize } from 'ink'
import { useRef, useState } from 'react'
import type { Now } from '../../morning/now.ts'
import {
  actWelcome,
  openWelcome,
  type Welcome,
  type WelcomeAction,
  type Wish,
} from '../../morning/welcome.ts'
import { takeTerminal } from '../input/take-terminal.ts'
import { useKeys } from '../input/use-keys.ts'
import { Rows } from '../line.tsx'
import { usable } from '../size.ts'
import type { Theme } from '../theme.ts'
import { welcomeMeaning } from './keys.ts'
import { welcomePage } from './page.ts'

/** What the first screen can have done; sentences say what went wrong. */
interface Deeds {
  /** Makes the herd, or where tables are read tells what they would record. */
  readonly begin: (wish: Wish & { is: 'herd' }) => Promise<Begun>
  /** Records what the report told. */
  readonly record: () => Promise<Begun>
}
type Begun =
  | { readonly is: 'open'; readonly file: string }
  | { readonly is: 'report'; readonly lines: readonly string[] }
  | { readonly is: 'wrong'; readonly sentences: readonly string[] }

/** How the first screen ends: with a herd to open, the sample herd, or leaving. */
type WelcomeEnd =
  | { readonly is: 'open'; readonly file: string }
  | { readonly is: 'sample' }
  | { readonly is: 'quit' }
  | { readonly is: 'interrupt' }

interface WelcomeScreen {
  readonly now: Now
  /** Time zone of this computer. */
  readonly zone: string
  /** Tables that lie in the folder, by the name of their field. */
  readonly tables: Readonly<Record<string, string>>
  readonly theme: Theme
  readonly deeds: Deeds
  readonly stdin: NodeJS.ReadStream
  readonly stdout: NodeJS.WriteStream
  readonly platform: string
}

/** Shows the first screen until the user has chosen. */
export async function openFirstScreen(screen: WelcomeScreen): Promise<WelcomeEnd> {
  takeTerminal(screen.stdin, screen.stdout)
  const end = await render(<Root {...screen} />, {
    stdin: screen.stdin,
    stdout: screen.stdout,
    alternateScreen: true,
    exitOnCtrlC: false,
    interactive: true,
    patchConsole: false,
    maxFps: 120,
  }).waitUntilExit()
  return (end as WelcomeEnd | undefined) ?? { is: 'quit' }
}

function Root({ now, zone, tables, theme, deeds, platform }: WelcomeScreen) {
  const { exit } = useApp()
  const size = usable(useWindowSize(), platform)
  const current = useRef<Welcome>(openWelcome(now, zone, tables))
  const [, draw] = useState(0)
  const busy = useRef(false)
  const most = useRef(0)

  const act = (action: WelcomeAction): void => {
    const step = actWelcome(current.current, action)
    current.current = step.welcome
    draw((count) => count + 1)
    if (step.wish?.is === 'sample') exit({ is: 'sample' })
    else if (step.wish !== undefined) void wait(deeds.begin(step.wish))
    else if (step.record === true) void wait(deeds.record())
  }
  const wait = async (deed: Promise<Begun>): Promise<void> => {
    busy.current = true
    const begun = await deed
    busy.current = false
    if (begun.is === 'open') exit(begun)
    else if (begun.is === 'report') act({ do: 'report', lines: begun.lines })
    else act({ do: 'wrong', sentences: begun.sentences })
  }
  useKeys({
    keys: (keys) => {
      for (const key of keys) {
        const meaning = welcomeMeaning(current.current, key, most.current)
        if (meaning === 'quit' || meaning === 'interrupt') exit({ is: meaning })
        else if (meaning !== undefined && !busy.current) act(meaning)
      }
    },
    paste: (text) => act({ do: 'put', text }),
  })
  const page = welcomePage(current.current, size, theme)
  most.current = page.most
  return (
    <Box height={size.rows} overflowY="hidden">
      <Rows rows={page.lines.slice(0, size.rows)} width={size.columns} theme={theme} />
    </Box>
  )
}
