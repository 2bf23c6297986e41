/** Opens the herd named by its only word, tries to record in it, and prints what happened as JSON. */
import { chmodSync, readFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { createHerdFile } from '../../../source/herd/create.ts'
import { openHerdFile } from '../../../source/herd/open.ts'
import { good, note, notesIn } from './herds.ts'

const [path = '', how = ''] = process.argv.slice(2)
const locked = how === 'folder' ? dirname(path) : path
const lock = (): void => chmodSync(locked, how === 'folder' ? 0o555 : 0o444)
const unlock = (): void => chmodSync(locked, how === 'folder' ? 0o755 : 0o644)

const openBefore = good(await openHerdFile(path))
const bytes = readFileSync(path)
lock()
const openAfter = good(await openHerdFile(path))
const seen = notesIn(openAfter.facts).length
const first = await openBefore.record([note('first')])
const second = await openAfter.record([note('second')])
const made = await createHerdFile(`${dirname(path)}/other.json`, [])
const untouched = readFileSync(path).equals(bytes)
unlock()
const retried = await openBefore.retry()
process.stdout.write(
  JSON.stringify({
    user: process.getuid?.(),
    mode: openAfter.mode,
    notices: openAfter.problems.map((problem) => problem.code),
    first: first.ok ? 'saved' : first.problems,
    second: second.ok ? 'saved' : second.problems,
    made: made.ok ? 'made' : made.problems,
    seen,
    untouched,
    retried: retried.ok,
    notes: notesIn(openBefore.facts),
  }),
)
