/** `dawnlist FILE`: the full screen; without a terminal that can draw one, the morning list as text. */
import { openBook } from '../breeding/book.ts'
import { morningList } from '../breeding/morning-list.ts'
import { listText } from '../exchange/list/text.ts'
import { openHerdFile } from '../herd/open.ts'
import { asFacts } from '../herd/recording.ts'
import { thisComputer } from '../herd/store/environment.ts'
import type { HerdStore } from '../herd/store.ts'
import type { Given, Run, Shell } from './command.ts'
import { overview } from './help-text.ts'
import { nowOn, today } from './today.ts'

export const run: Run = async (given, shell) => {
  const file = given.args.FILE
  if (file === undefined) {
    shell.print(overview())
    return 0
  }
  const opened = await openHerdFile(file)
  if (!opened.ok) {
    shell.tell(opened.problems)
    return 1
  }
  if (!shell.interactive) return printed(opened.value, shell)
  const herd = opened.value
  try {
    return await onScreen(herd, given, shell)
  } finally {
    await herd.close()
    if (herd.state.unsaved.length > 0) shell.tell(herd.state.trouble)
  }
}

function printed(herd: HerdStore, shell: Shell): number {
  shell.tell(herd.problems)
  const book = openBook(herd.facts)
  shell.print(listText(book, morningList(book, today(book.farm.zone))))
  return 0
}

async function onScreen(herd: HerdStore, given: Given, shell: Shell): Promise<number> {
  const { asciiOnly, openScreen, Session, themeFor, wantsColours } = await import('../screens/index.ts')
  const session = new Session({
    herd,
    now: nowOn,
    stamp: (facts, by) => asFacts(facts, { at: thisComputer.now(), ...(by === undefined ? {} : { by }) }),
    by: given.options.by,
  })
  const { platform } = process
  return openScreen({
    session,
    theme: themeFor({
      colours: wantsColours(shell.env),
      ascii: given.switches.has('ascii') || asciiOnly(shell.env),
    }),
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
