/** Opens a herd on the full screen and waits until the user leaves it. */
import { asFacts } from '../herd/recording.ts'
import { thisComputer } from '../herd/store/environment.ts'
import type { HerdStore } from '../herd/store.ts'
import type { Now } from '../morning/now.ts'
import type { Shell } from './command.ts'

interface OnScreen {
  readonly by: string | undefined
  /** Draw with ASCII characters only. */
  readonly ascii: boolean
  /** The moment on the farm. */
  readonly now: (zone: string) => Now
}

/**
 * Shows a herd until the user leaves; what could not be saved is told afterwards.
 *
 * @returns the exit status: 0 left, 130 after Ctrl+C
 */
export async function onScreen(herd: HerdStore, wish: OnScreen, shell: Shell): Promise<number> {
  try {
    return await shown(herd, wish, shell)
  } finally {
    await herd.close()
    if (herd.state.unsaved.length > 0) shell.tell(herd.state.trouble)
  }
}

async function shown(herd: HerdStore, wish: OnScreen, shell: Shell): Promise<number> {
  const { asciiOnly, openScreen, Session, themeFor, wantsColours, wantsReader } = await import(
    '../screens/index.ts'
  )
  const session = new Session({
    herd,
    now: wish.now,
    stamp: (facts, by) => asFacts(facts, { at: thisComputer.now(), ...(by === undefined ? {} : { by }) }),
    by: wish.by,
  })
  const { platform } = process
  return openScreen({
    session,
    theme: themeFor({ colours: wantsColours(shell.env), ascii: wish.ascii || asciiOnly(shell.env) }),
    reader: wantsReader(shell.env),
    stdin: process.stdin,
    stdout: process.stdout,
    process: {
      platform,
      kill: (pid, signal) => process.kill(pid, signal),
      once: (signal, then) => process.once(signal, then),
      off: (signal, then) => process.off(signal, then),
      // Node looks at the size of the terminal again when it is told that it changed.
      resized: () => process.kill(process.pid, 'SIGWINCH'),
    },
  })
}
