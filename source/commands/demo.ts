/** `dawnlist demo`: a copy of the sample herd, on its own day. */
import { constants, existsSync } from 'node:fs'
import { copyFile, mkdir, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { openBook } from '../breeding/book.ts'
import { isoDay } from '../breeding/day.ts'
import { morningList } from '../breeding/morning-list.ts'
import { fault } from '../breeding/problem.ts'
import { listText } from '../exchange/list/text.ts'
import { openHerdFile } from '../herd/open.ts'
import type { Run } from './command.ts'
import { dataFolder } from './folders.ts'
import { onScreen } from './on-screen.ts'
import { clockFrom } from './today.ts'

/** The sample herd's morning. */
const DEMO_DAY = isoDay('2026-05-28')
const DEMO_TIME = '05:15'
const SAMPLE = join('sample-herd', 'sample-herd.json')

export const run: Run = async (given, shell) => {
  const sample = sampleFrom(import.meta.dirname)
  if (sample === undefined) {
    shell.tell([fault('sample-missing', SAMPLE)])
    return 1
  }
  const file = join(dataFolder(shell.env, process.platform), 'sample-herd.json')
  await mkdir(dirname(file), { recursive: true })
  if (given.switches.has('fresh')) await rm(file, { force: true })
  if (!existsSync(file)) await copyFile(sample, file, constants.COPYFILE_EXCL)
  const opened = await openHerdFile(file)
  if (!opened.ok) {
    shell.tell(opened.problems)
    shell.say('dawnlist demo --fresh begins again with an untouched copy.')
    return 1
  }
  if (!shell.interactive) {
    const book = openBook(opened.value.facts)
    shell.print(listText(book, morningList(book, DEMO_DAY)))
    await opened.value.close()
    return 0
  }
  const now = clockFrom({ day: DEMO_DAY, time: DEMO_TIME })
  return onScreen(opened.value, { by: undefined, ascii: given.switches.has('ascii'), now }, shell)
}

/** The sample herd that came with the program: beside the bundle or beside the source. */
function sampleFrom(folder: string): string | undefined {
  for (let place = folder; dirname(place) !== place; place = dirname(place)) {
    const sample = join(place, SAMPLE)
    if (existsSync(sample)) return sample
  }
  return undefined
}
