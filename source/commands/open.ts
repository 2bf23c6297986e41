/** `dawnlist FILE`: the full screen; without a terminal that can draw one, the morning list as text. */
import { openBook } from '../breeding/book.ts'
import { morningList } from '../breeding/morning-list.ts'
import { listText } from '../exchange/list/text.ts'
import { openHerdFile } from '../herd/open.ts'
import type { HerdStore } from '../herd/store.ts'
import type { Given, Run, Shell } from './command.ts'
import { firstScreen, lastOpened, remember } from './first-screen.ts'
import { overview } from './help-text.ts'
import { onScreen } from './on-screen.ts'
import { nowOn, today } from './today.ts'

export const run: Run = async (given, shell, commands) => {
  const ascii = given.switches.has('ascii')
  const named = given.args.FILE ?? (await lastOpened(shell))
  if (named !== undefined) return opening(named, given, shell)
  if (!shell.interactive) {
    shell.print(overview(commands))
    return 0
  }
  const end = await firstScreen(shell, ascii)
  if (end.is === 'open') return opening(end.file, given, shell)
  if (end.is === 'sample') return (await import('./demo.ts')).run(given, shell, commands)
  return end.is === 'interrupt' ? 130 : 0
}

async function opening(file: string, given: Given, shell: Shell): Promise<number> {
  const opened = await openHerdFile(file)
  if (!opened.ok) {
    shell.tell(opened.problems)
    return 1
  }
  if (!shell.interactive) return printed(opened.value, shell)
  await remember(file, shell)
  const ascii = given.switches.has('ascii')
  return onScreen(opened.value, { by: given.options.by, ascii, now: nowOn }, shell)
}

function printed(herd: HerdStore, shell: Shell): number {
  shell.tell(herd.problems)
  const book = openBook(herd.facts)
  shell.print(listText(book, morningList(book, today(book.farm.zone))))
  return 0
}
