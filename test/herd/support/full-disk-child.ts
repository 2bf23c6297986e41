/**
 * Mounts a disk of 1 MB on the folder named by its only word, in a view of the disks of its own, fills it, and tries
 * to record. Prints what happened as JSON.
 */
import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync, rmSync, statfsSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createHerdFile } from '../../../source/herd/create.ts'
import { openHerdFile } from '../../../source/herd/open.ts'
import { factsIn, good, note, notesIn, smallHerd } from './herds.ts'

const [folder = ''] = process.argv.slice(2)
execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', folder])
const path = join(folder, 'herd.json')
const filler = join(folder, 'filler')
good(await createHerdFile(path, smallHerd))
const herd = good(await openHerdFile(path))
good(await herd.record([note('first')]))
// A herd of many pages, so that the disk is full in the middle of the file and not only at its start.
good(await herd.record(Array.from({ length: 30 }, (_, place) => note(`${place} ${'x'.repeat(3000)}`))))

/** Leaves so much room, bytes. */
function fill(room: number): void {
  rmSync(filler, { force: true })
  const { bavail, bsize } = statfsSync(folder)
  writeFileSync(filler, Buffer.alloc(bavail * bsize - room))
}

const before = readFileSync(path)
const rooms = []
for (const room of [0, 4096, 40_960, 81_920]) {
  fill(room)
  const outcome = await herd.record([note(`with ${room} left`)])
  rooms.push({
    refused: outcome.ok ? [] : outcome.problems.map((problem) => problem.code),
    untouched: readFileSync(path).equals(before),
    left: readdirSync(folder).filter((name) => name.endsWith('.temp')),
    unsaved: herd.state.unsaved.length,
  })
}
rmSync(filler)
const retried = await herd.retry()
const notes = notesIn(await factsIn(readFileSync(path))).filter((text) => !text.includes('x'))
process.stdout.write(JSON.stringify({ rooms, retried: retried.ok, notes }))
