import { createHerdFile } from '../../../source/herd/create.ts'
import { openHerdFile } from '../../../source/herd/open.ts'
import type { Files } from '../../../source/herd/store/files.ts'
import { factsIn, good, herdPath, note, notesIn, smallHerd } from './herds.ts'
import { intercept } from './intercept.ts'
import { MemoryFiles, systemError } from './memory-files.ts'
import { memoryWorld, seeded } from './worlds.ts'

/** What a run of power cuts found. */
interface PowerCuts {
  cuts: number
  /** Facts that were shown as saved and are not in the file afterwards. */
  lost: number
  /** Times the file was not whole afterwards, or the next tick could not be saved. */
  broken: number
}

/**
 * Cuts the power after each call of the system while three ticks are recorded, several times each with another
 * fate for what was not synced, and looks at what is left.
 *
 * @param fates how many fates a call
 * @param through the files as the program sees them; a test of the test leaves syncs out here
 */
export async function cutPowerEverywhere(
  fates: number,
  through = (files: Files): Files => files,
): Promise<PowerCuts> {
  const found: PowerCuts = { cuts: 0, lost: 0, broken: 0 }
  for (let call = 1; ; call += 1) {
    const { files, acknowledged, ended } = await recordUntil(call, through)
    for (let fate = 1; fate <= fates; fate += 1) {
      const left = files.afterPowerCut(seeded(call * 1000 + fate))
      found.cuts += 1
      try {
        const there = notesIn(await factsIn(left.peek(herdPath)))
        found.lost += acknowledged.filter((text) => !there.includes(text)).length
        const herd = good(await openHerdFile(herdPath, memoryWorld({ files: left })))
        good(await herd.record([note('after')]))
        if (left.paths().some((path) => path.endsWith('.temp'))) found.broken += 1
      } catch {
        found.broken += 1
      }
    }
    if (ended) return found
  }
}

/** Records three ticks; from a call on nothing is done any more. */
async function recordUntil(last: number, through: (files: Files) => Files) {
  const files = new MemoryFiles()
  good(await createHerdFile(herdPath, smallHerd, 'MK', memoryWorld({ files })))
  let calls = 0
  const dying = intercept(files, () => {
    calls += 1
    if (calls > last) throw systemError('EIO')
  })
  const acknowledged: string[] = []
  const opened = await openHerdFile(herdPath, memoryWorld({ files: through(dying) }))
  for (const text of opened.ok ? ['first', 'second', 'third'] : []) {
    if (opened.ok && (await opened.value.record([note(text)])).ok) acknowledged.push(text)
  }
  return { files, acknowledged, ended: calls <= last }
}
