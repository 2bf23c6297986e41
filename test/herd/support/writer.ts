/**
 * A program that records notes as fast as it can and prints each text after its save is acknowledged.
 * Words: file, name of the writer, number of the first note, how many (0: without end).
 */
import { writeSync } from 'node:fs'
import { openHerdFile } from '../../../source/herd/open.ts'
import { note } from './herds.ts'

const [path = '', name = '', first = '1', count = '0'] = process.argv.slice(2)
const opened = await openHerdFile(path)
if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
const last = count === '0' ? Number.POSITIVE_INFINITY : Number(first) + Number(count) - 1
for (let number = Number(first); number <= last; number += 1) {
  const text = `${name}-${number}`
  const outcome = await opened.value.record([note(text)])
  writeSync(1, outcome.ok ? `saved ${text}\n` : `refused ${text} ${JSON.stringify(outcome.problems)}\n`)
}
await opened.value.close()
