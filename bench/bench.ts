/**
 * npm run bench              everything
 * npm run bench -- list      only what has this word in its name: list, frame, keys, rows, added, large, ticks, sql,
 *                            import, kinship, packed
 *
 * Ratios on one machine in one run; nothing here passes or fails, a figure past its bar is marked.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Day, dayIso } from '../source/breeding/day.ts'
import { today } from '../source/commands/today.ts'
import { factsAdded } from './added.ts'
import { firstFrames } from './first-frame.ts'
import { benchDay, benchHerd } from './herd.ts'
import { saveHerd } from './herd-file.ts'
import { importsOfLargeHerds } from './import.ts'
import { keysToFrames } from './keys.ts'
import { kinshipOfLargeHerd } from './kinship.ts'
import { listProcess } from './list-process.ts'
import type { Finding } from './measure.ts'
import { packed } from './packed.ts'
import { rowsBesideParsing, rowsOfLargeHerds } from './rows.ts'
import { ticks } from './ticks.ts'
import { listBesideSql } from './twin.ts'

const folder = mkdtempSync(join(tmpdir(), 'dawnlist-bench-'))

async function herdFile(cows: number, morning: Day): Promise<{ file: string; size: string }> {
  const facts = benchHerd(cows, morning)
  const file = join(folder, `herd-${cows}.json`)
  await saveHerd(file, facts)
  return { file, size: `${facts.length.toLocaleString('en')} facts` }
}

/** The screen opens on today, so that the herd is made for it. */
const now = today('Europe/Dublin')

async function ofHerds(
  morning: Day,
  measure: (file: string, size: string) => Promise<Finding>,
): Promise<Finding[]> {
  const findings: Finding[] = []
  for (const cows of [500, 1333]) {
    const { file, size } = await herdFile(cows, morning)
    findings.push(await measure(file, size))
  }
  return findings
}

const measurements: Readonly<Record<string, () => Promise<Finding[]>>> = {
  list: () => ofHerds(benchDay, (file, size) => listProcess(file, dayIso(benchDay), size)),
  frame: () => ofHerds(now, firstFrames),
  keys: keysToFrames,
  rows: async () => [await rowsBesideParsing()],
  added: factsAdded,
  large: rowsOfLargeHerds,
  ticks,
  sql: async () => [await listBesideSql()],
  import: importsOfLargeHerds,
  kinship: kinshipOfLargeHerd,
  packed: async () => [packed()],
}

function line({ what, value, against, ratio, bar, skipped }: Finding): string {
  if (skipped !== undefined) return `| ${what} | skipped: ${skipped} | | | |`
  const times = ratio === undefined ? '' : `${ratio.toFixed(2)} x`
  const judged =
    bar === undefined ? '' : ratio !== undefined && ratio > bar ? `${bar} x, PAST IT` : `${bar} x`
  return `| ${what} | ${value} | ${against ?? ''} | ${times} | ${judged} |`
}

const wanted = process.argv.slice(2)
process.stdout.write(
  `Node ${process.versions.node}, ${process.platform}, ${cpus().length} processors; medians\n\n`,
)
process.stdout.write('| What | Took | Beside | Ratio | Bar |\n| --- | --- | --- | --- | --- |\n')
try {
  for (const [name, measure] of Object.entries(measurements)) {
    if (wanted.length > 0 && !wanted.includes(name)) continue
    for (const finding of await measure()) process.stdout.write(`${line(finding)}\n`)
  }
} finally {
  rmSync(folder, { recursive: true, force: true })
}
