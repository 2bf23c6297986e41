/** Ctrl+Z: back to the shell, and the screen drawn anew when it is brought back. */
import type { SuspendTerminal } from 'ink'

/** What suspending needs of the process; tests hand in another. */
export interface Suspendable {
  readonly platform: string
  /** Sends a signal to a process, 0 for the whole job. */
  readonly kill: (pid: number, signal: 'SIGTSTP') => void
  readonly once: (signal: 'SIGCONT', then: () => void) => void
  readonly off: (signal: 'SIGCONT', then: () => void) => void
  /** Tells the terminal stream that the size may have changed. */
  readonly resized: () => void
}

/** A job that nobody can bring back (no shell above it) does not stop: after so long it goes on by itself. */
const GIVE_UP_AFTER = 300
/** A job that was brought back finds that time run out, and hears of its return only a moment later. */
const HEAR_WITHIN = 50

const canSuspend = ({ platform }: Suspendable): boolean => platform !== 'win32'

/**
 * Stops the job until the shell brings it back. The terminal is given back before and taken again after.
 *
 * @param suspendTerminal of Ink's useApp
 * @returns whether it was stopped
 */
export async function suspend(process: Suspendable, suspendTerminal: SuspendTerminal): Promise<boolean> {
  if (!canSuspend(process)) return false
  let stopped = false
  await suspendTerminal(async () => {
    stopped = await new Promise<boolean>((resolve) => {
      const back = (): void => {
        clearTimeout(timer)
        resolve(true)
      }
      let timer = setTimeout(() => {
        timer = setTimeout(() => {
          process.off('SIGCONT', back)
          resolve(false)
        }, HEAR_WITHIN)
      }, GIVE_UP_AFTER)
      process.once('SIGCONT', back)
      process.kill(0, 'SIGTSTP')
    })
    process.resized()
  })
  return stopped
}
