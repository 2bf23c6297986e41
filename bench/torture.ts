/**
 * node bench/torture.ts                  everything, about half an hour
 * node bench/torture.ts -- kills model   only these
 * node bench/torture.ts --share 0.01     a hundredth of each, to see that it runs
 *
 * The long forms of the tests of the herd file; test/herd has the short ones. Prints a table as it goes; the status
 * is 1 where anything was lost, broken or written over. A trial that finds that in memory ends with an error.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fillDisk } from '../test/herd/support/full-disk.ts'
import { Judge } from '../test/herd/support/judging.ts'
import { liveAtRandom } from '../test/herd/support/model.ts'
import { mutations } from '../test/herd/support/mutations.ts'
import { cutPowerEverywhere } from '../test/herd/support/power-cut.ts'
import { killWriters, type WritersRun, writeTogether } from '../test/herd/support/writers.ts'

/** What one trial showed: a line of the table. */
interface Trial {
  readonly tried: string
  /** What must be nothing. */
  readonly wrong: string
  readonly holds: boolean
}

const shareAt = process.argv.indexOf('--share')
const share = shareAt === -1 ? 1 : Number(process.argv[shareAt + 1])
const wanted = process.argv
  .slice(2)
  .filter((word, place, all) => !word.startsWith('--') && all[place - 1] !== '--share')
const part = (whole: number): number => Math.max(1, Math.round(whole * share))
const count = (number: number): string => number.toLocaleString('en')

async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'torture-'))
  try {
    return await work(folder)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const judged = (run: WritersRun, tried: string): Trial => ({
  tried: `${tried}, ${count(run.acknowledged)} ticks acknowledged`,
  wrong: `${run.lost} lost, ${run.refused.length} refused, ${run.leftovers.length} half-written files left${run.errors}`,
  holds:
    run.acknowledged > 0 && run.lost + run.refused.length + run.leftovers.length === 0 && run.errors === '',
})

const trials: Readonly<Record<string, () => Promise<Trial>>> = {
  kills: () =>
    inFolder(async (folder) => {
      const kills = part(2000)
      return judged(await killWriters(folder, kills), `${count(kills)} kills of three writers`)
    }),
  two: () =>
    inFolder(async (folder) => judged(await writeTogether(folder, 2, part(1000)), 'two writers at once')),
  six: () =>
    inFolder(async (folder) => judged(await writeTogether(folder, 6, part(500)), 'six writers at once')),
  freezes: async () => {
    const runs: WritersRun[] = []
    for (let round = 0; round < part(20); round += 1) {
      runs.push(await inFolder((folder) => writeTogether(folder, 2, 200, 3000)))
    }
    const sum = (of: (run: WritersRun) => number): number => runs.reduce((total, run) => total + of(run), 0)
    const all = {
      ...runs[0],
      acknowledged: sum((run) => run.acknowledged),
      lost: sum((run) => run.lost),
    } as WritersRun
    const refused = runs.flatMap((run) => run.refused)
    return judged({ ...all, refused }, `${runs.length} freezes of 3 s in the middle of a save`)
  },
  power: async () => {
    const { cuts, lost, broken } = await cutPowerEverywhere(part(2000))
    return {
      tried: `${count(cuts)} power cuts`,
      wrong: `${lost} lost, ${broken} broken`,
      holds: lost + broken === 0,
    }
  },
  full: () =>
    inFolder(async (folder) => {
      const seen = await fillDisk(folder)
      if (seen === undefined) {
        return { tried: 'a full disk', wrong: 'skipped: a small disk cannot be mounted here', holds: true }
      }
      const touched = seen.rooms.filter((room) => !room.untouched).length
      const left = seen.rooms.flatMap((room) => room.left).length
      const lost = 1 + seen.rooms.length - seen.notes.length
      return {
        tried: `a disk of 1 MB, full ${seen.rooms.length} times`,
        wrong: `${touched} written over, ${left} half-written files left, ${lost} lost after there was room`,
        holds: touched + left + lost === 0,
      }
    }),
  mutations: async () => {
    const judge = await Judge.make()
    const found = await judge.tally(mutations(judge.whole, 1, part(10_000)))
    const shown = found['to be looked at'] ?? 0
    return {
      tried: `${count((found.refused ?? 0) + shown)} changed files, ${count(shown)} of them still valid`,
      wrong: `${found.accepted ?? 0} accepted, none written over`,
      holds: found.accepted === undefined,
    }
  },
  model: async () => {
    const steps = await liveAtRandom(part(100_000))
    return {
      tried: `${count(steps)} random steps of two programs and a stick`,
      wrong: '0 lost, 0 twice',
      holds: true,
    }
  },
}
process.stdout.write('| Trial | What must be none | Holds | Took |\n| --- | --- | --- | --- |\n')
for (const [name, trial] of Object.entries(trials)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue
  const start = performance.now()
  const { tried, wrong, holds } = await trial()
  if (!holds) process.exitCode = 1
  const seconds = Math.round((performance.now() - start) / 1000)
  process.stdout.write(`| ${tried} | ${wrong} | ${holds ? 'yes' : 'NO'} | ${count(seconds)} s |\n`)
}
